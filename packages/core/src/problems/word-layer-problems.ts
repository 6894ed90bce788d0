import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of layers, materials and framing. */
export const LAYER_WORDINGS: Wordings = {
  "layer-both": () => ({
    says: "the layer is both a material and air",
    expected: "exactly one of `material` and `air`",
    likelySlip: "Two layers are written as one: an air space is a layer of its own",
  }),
  "layer-neither": () => ({
    says: "the layer has neither a material nor air",
    expected: "exactly one of `material` and `air`, such as `{ material: gypsum plasterboard, thickness: 12.5 mm }`",
  }),
  "key-not-for-air": ({ text }) => ({
    says: `${text("key")} does not belong to an air layer`,
    expected: "air, ventilation, ventilation area, open, resistance, emissivity, framing or name",
    likelySlip:
      text("key") === "thickness" ? "The thickness of an air layer is the value of `air`, such as `air: 25 mm`" : null,
  }),
  "key-not-for-material": ({ text }) => ({
    says: `${text("key")} belongs to air layers only`,
    expected: "the keys of a layer of a material",
    likelySlip:
      text("key") === "emissivity"
        ? "The emissivity of a face is `facing emissivity inner` or `facing emissivity outer`"
        : "An air space is a layer of its own, such as `{ air: 25 mm, ventilation: well }`",
  }),
  "ventilation-missing": () => ({
    says: "the air layer does not say how it is ventilated",
    expected: "`ventilation`, one of none, slight or well; nothing is assumed, because a mistake here hides rot",
    likelySlip: "A cavity open at top and bottom is `well`; one closed by timber or insulation all round is `none`",
    write: "ventilation: none or ventilation: slight or ventilation: well",
  }),
  "ventilation-contradicts": ({ received, text }) => ({
    says: `openings of ${received} do not go with \`ventilation: ${text("ventilation")}\``,
    expected: "up to 500 mm2 for none, between 500 and 1500 mm2 for slight, 1500 mm2 and more for well",
    likelySlip: "Openings are counted for each metre of length in walls, and for each square metre in roofs and floors",
    write: `ventilation: ${text("meant")}`,
  }),
  "open-contradicts": ({ received, text }) => ({
    says: `\`open: ${received}\` does not go with \`ventilation: ${text("ventilation")}\``,
    expected:
      text("ventilation") === "none"
        ? "closed, or no `open`, for an air layer that is not ventilated"
        : "both ends or one end for a well-ventilated air layer",
    likelySlip: "A cavity open at top and bottom is `well`; one closed by timber or insulation all round is `none`",
  }),
  "key-not-for-sheet": ({ text }) => ({
    says: `${text("name")} is a sheet and no insulation, and takes no \`${text("key")}\``,
    expected: `\`${text("key")}\` on the layer of insulation, or left out`,
    likelySlip: text("key") === "fit" ? "What is missing of a sheet is told by `gaps`" : null,
  }),
  "laps-too-wide": ({ received }) => ({
    says: `the open laps are ${received} wide, as wide as their spacing or wider`,
    expected: "the width of one gap, and the spacing from gap to gap",
    likelySlip: "Width and spacing may have changed places, or one is in the wrong unit",
  }),
  "air-too-deep": ({ received, text }) => ({
    says: `an air layer of ${received} is deeper than the ${text("deepest")} up to which still air has a resistance by formula`,
    expected: "a stated resistance, or `ventilation: well`",
    likelySlip: "A loft above a ceiling is described by `roof space`, a void under a floor by `faces: void`",
    write: "resistance: 0.18 m2 K/W",
  }),
  "recess-too-deep": ({ received, text }) => ({
    says: `fasteners recessed by ${received} do not reach into the layer, which is ${text("thickness")} thick`,
    expected: "a recess less than the thickness of the layer, or no fasteners",
    likelySlip: "The recess is what of the insulation lies between the fastener's end and the layer's face",
  }),
  "thickness-missing": () => ({
    says: "thickness is missing; only sheets go without",
    expected: "a length such as 140 mm",
    write: "thickness: 140 mm",
  }),
  "sheet-with-thickness": ({ received, text }) => ({
    says: `a sheet takes no thickness, but this one has ${received}`,
    expected: "a sheet's name alone; its sd already stands for its thickness",
    likelySlip:
      text("isPolythene") === "yes"
        ? "For polythene of a thickness that the table has not, write `material: polyethylene low density` with that thickness"
        : "A sheet of another thickness has another sd, which its data sheet has: give that on the spot",
    write: text("write") === "" ? null : `material: ${text("write")}`,
  }),
  "thinner-than-made": ({ received, text }) => ({
    says: `thickness cannot be ${received}: ${text("name")} is at least ${text("least")} thick`,
    expected: "the thickness of the layer, such as 140 mm",
    likelySlip: text("write") === "" ? null : "The figure may be in metres",
    write: text("write") === "" ? null : text("write"),
  }),
  "gauge-not-polythene": ({ received }) => ({
    says: `thickness cannot be ${received}: gauge is read as that of polythene sheet`,
    expected: "a length such as 0.5 mm",
    likelySlip: "Gauges of metal are counted in another way",
  }),
  "taped-unread": ({ received }) => ({
    says: `taped cannot be ${received}`,
    expected: "no, yes (over the framing, from board to board), or a length such as `onto the framing 20 mm`",
  }),
  "layer-not-there": ({ received, text }) => ({
    says: `there is no layer ${received}; the build-up has ${text("count")}`,
    expected: "a layer's number counted from 1, its name or its material",
  }),
  "layer-unknown": ({ text, list }) => ({
    says: `no layer is called ${text("name")}`,
    expected: `${oneOf(list("known"))}, or a number counted from 1`,
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "layer-not-one": ({ text, list }) => ({
    says: `layers ${inSpeech(list("numbers"), "and")} are both called ${text("name")}`,
    expected: "one layer: its number, or a name of its own",
    write: list("numbers").join(" or "),
  }),
  "trapped-water-nowhere": ({ text }) => ({
    says: `water cannot be trapped in ${text("name")}, which has no substance to hold it`,
    expected: "a layer of a material with a thickness",
  }),
  "trapped-water-twice": () => ({
    says: "both an amount and a reading are given",
    expected: "either amount, such as 1 kg/m2, or reading, such as 28 %",
  }),
  "reading-not-timber": ({ text }) => ({
    says: `a reading needs a layer of wood, or one with wooden framing, and ${text("name")} is neither`,
    expected: "amount, such as 1 kg/m2, for everything that is not timber",
    write: "amount: 1 kg/m2",
  }),
  "reading-needs-density": ({ text }) => ({
    says: `a reading tells water by the mass of the timber, and no timber in ${text("name")} has a density`,
    expected: "the density of its wood, wood-based board or wooden framing, or amount in place of the reading",
    likelySlip: "A material given on the spot has no density unless its braces state one",
    write: "density: 500 kg/m3 or amount: 1 kg/m2",
  }),
  "resists-too-much": ({ text }) => ({
    says: `the layers together resist ${text("resistance")}, most of it ${text("layer")}: ${text("reason")}`,
    expected: `layers that together resist ${text("most")} or less`,
    likelySlip: "Probably a thickness is in the wrong unit, or the point of a conductivity in the wrong place",
  }),
};
