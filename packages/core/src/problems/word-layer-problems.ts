import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of layers, materials and framing. */
export const LAYER_WORDINGS = {
  "layer-both": () => ({
    says: "the layer is both a material and air",
    expected: "exactly one of `material` and `air`",
    likelySlip: "An air space is a layer of its own",
  }),
  "layer-neither": () => ({
    says: "the layer has neither a material nor air",
    expected:
      "exactly one of `material` and `air`, for example `{ material: gypsum plasterboard, thickness: 12.5 mm }`",
  }),
  "key-not-for-air": ({ text }) => ({
    says: `${text("key")} is not a key of an air layer`,
    expected: "air, ventilation, ventilation area, open, resistance, emissivity, framing or name",
    likelySlip:
      text("key") === "thickness" ? "Write the thickness as the value of `air`, for example `air: 25 mm`" : null,
  }),
  "key-not-for-material": ({ text }) => ({
    says: `${text("key")} is a key of air layers only`,
    expected: "the keys of a material layer",
    likelySlip:
      text("key") === "emissivity"
        ? "The emissivity of a face is `facing emissivity inner` or `facing emissivity outer`"
        : "An air space is a layer of its own, for example `{ air: 25 mm, ventilation: well }`",
  }),
  "ventilation-missing": () => ({
    says: "the air layer does not say how it is ventilated",
    expected: "`ventilation`: none, slight or well (required: a wrong value here hides rot)",
    likelySlip: "A cavity open at top and bottom is `well`, one closed all round is `none`",
    write: ["ventilation: none", "ventilation: slight", "ventilation: well"],
  }),
  "ventilation-contradicts": ({ received, text }) => ({
    says: `openings of ${received} contradict \`ventilation: ${text("ventilation")}\``,
    expected: "none up to 500 mm2, slight between 500 and 1500 mm2, well from 1500 mm2",
    likelySlip: "Openings count per metre of length in walls, per square metre in roofs and floors",
    write: `ventilation: ${text("meant")}`,
  }),
  "open-contradicts": ({ received, text }) => ({
    says: `\`open: ${received}\` contradicts \`ventilation: ${text("ventilation")}\``,
    expected:
      text("ventilation") === "none"
        ? "closed, or no `open`, for an unventilated air layer"
        : "both ends or one end for a well-ventilated air layer",
    likelySlip: "A cavity open at top and bottom is `well`, one closed all round is `none`",
  }),
  "key-not-for-sheet": ({ text }) => ({
    says: `${text("name")} is a sheet and takes no \`${text("key")}\``,
    expected: `\`${text("key")}\` on the insulation, or nowhere`,
    likelySlip: text("key") === "fit" ? "For holes and open laps in a sheet use `gaps`" : null,
  }),
  "laps-too-wide": ({ received }) => ({
    says: `the open laps are ${received} wide, as wide as their spacing or wider`,
    expected: "the width of one gap, and the spacing from gap to gap",
    likelySlip: "Width and spacing may be swapped, or one has the wrong unit",
  }),
  "gaps-one-form": () => ({
    says: "gaps are told in one of three ways",
    expected: "a share such as 0.1 %, or `width` and `spacing` of open laps, or `diameter` and `per area` of holes",
    write: "gaps: { width: 1 mm, spacing: 1.2 m }",
  }),
  "holes-too-many": () => ({
    says: "the holes take up the whole sheet",
    expected: "the diameter of one hole, and how many there are on a square metre",
    likelySlip: "The diameter may be in the wrong unit",
  }),
  "air-too-deep": ({ received, text }) => ({
    says: `an air layer of ${received} is too deep: the formula for still air ends at ${text("deepest")}`,
    expected: "a stated resistance, or `ventilation: well`",
    likelySlip: "Use `roof space` for a loft above a ceiling, and `faces: void` for a void under a floor",
    write: "resistance: 0.18 m2 K/W",
  }),
  "recess-too-deep": ({ received, text }) => ({
    says: `fasteners recessed by ${received} do not reach into the layer, which is ${text("thickness")} thick`,
    expected: "a recess smaller than the thickness of the layer, or no fasteners",
    likelySlip: "The recess is the insulation between the end of the fastener and the face of the layer",
  }),
  "thickness-missing": () => ({
    says: "thickness is missing; only sheets have none",
    expected: "a length, for example 140 mm",
    write: "thickness: 140 mm",
  }),
  "sheet-with-thickness": ({ received, text }) => ({
    says: `a sheet takes no thickness, but this one has ${received}`,
    expected: "the name of the sheet alone; its sd includes the thickness",
    likelySlip:
      text("isPolythene") === "yes"
        ? "For another thickness of polythene write `material: polyethylene low density` with that thickness"
        : "Another thickness has another sd: give the sd from its data sheet",
    write: text("write") === "" ? null : `material: ${text("write")}`,
  }),
  "thinner-than-made": ({ received, text }) => ({
    says: `thickness cannot be ${received}: ${text("name")} is at least ${text("least")} thick`,
    expected: "the thickness of the layer, for example 140 mm",
    likelySlip: text("write") === "" ? null : "The figure may be in metres",
    write: text("write") === "" ? null : text("write"),
  }),
  "gauge-not-polythene": ({ received }) => ({
    says: `thickness cannot be ${received}: gauge is a measure of polythene sheet only`,
    expected: "a length, for example 0.5 mm",
    likelySlip: "Gauges of metal are another scale",
  }),
  "taped-unread": ({ received }) => ({
    says: `taped cannot be ${received}`,
    expected:
      "no, yes (over the framing, from board to board), or `onto the framing` with a length, for example `onto the framing 20 mm`",
  }),
  "layer-not-there": ({ received, text }) => ({
    says: `there is no layer ${received}; the build-up has ${text("count")}`,
    expected: "a layer: its number from 1, its name or its material",
  }),
  "layer-unknown": ({ text, list }) => ({
    says: `no layer is called ${text("name")}`,
    expected: `${oneOf(list("known"))}, or a number from 1`,
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "layer-not-one": ({ text, list }) => ({
    says: `layers ${inSpeech(list("numbers"), "and")} are both called ${text("name")}`,
    expected: "one layer: its number, or a name of its own",
    write: list("numbers"),
  }),
  "trapped-water-nowhere": ({ text }) => ({
    says: `${text("name")} cannot hold water`,
    expected: "a layer of a material with a thickness",
  }),
  "trapped-water-twice": () => ({
    says: "both an amount and a reading are given",
    expected: "either amount, for example 1 kg/m2, or reading, for example 28 %",
  }),
  "reading-not-timber": ({ text }) => ({
    says: `a reading needs wood or wooden framing, and ${text("name")} has neither`,
    expected: "amount, for example 1 kg/m2, for anything but timber",
    write: "amount: 1 kg/m2",
  }),
  "reading-needs-density": ({ text }) => ({
    says: `a reading needs the density of the timber, and no timber in ${text("name")} has one`,
    expected: "a density for its wood, wood-based board or wooden framing, or amount instead of the reading",
    likelySlip: "A material described in braces has no density unless they give one",
    write: ["density: 500 kg/m3", "amount: 1 kg/m2"],
  }),
  "resists-too-much": ({ text }) => ({
    says: `the layers together have a resistance of ${text("resistance")}, most of it in ${text("layer")}: ${text("reason")}`,
    expected: `${text("most")} or less for all layers together`,
    likelySlip: "A thickness probably has the wrong unit, or a conductivity a misplaced decimal point",
  }),
} satisfies Wordings;
