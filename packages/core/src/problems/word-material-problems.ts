import { didYouMean, type Facts, inSpeech, oneOf, onlyOne, type Said, type Wordings } from "./wording.ts";

/** Problems of materials and framing. */
export const MATERIAL_WORDINGS = {
  "material-unknown": (facts) => ({ says: `no material is called ${facts.text("name")}`, ...whatIsMeant(facts) }),
  "material-two-sheets": ({ list }) => ({
    says: `the vapour resistance of the sheet is given twice, as ${list("keys").join(" and as ")}`,
    expected: "exactly one of sd, vapour resistance, permeance and sd by humidity",
  }),
  "material-told-twice": ({ list }) => ({
    says: `the material has both ${inSpeech(list("keys"), "and")}, which tell the same`,
    expected: `one of ${inSpeech(list("keys"), "and")}`,
  }),
  "resistance-without-thickness": ({ text }) => ({
    says: `${text("name")} is told by its resistance, which is that of one thickness, and none stands beside it`,
    expected: "the thickness of the layer, or conductivity in place of resistance",
    write: "conductivity: … W/(m K)",
  }),
  "resistance-impossible": ({ received, text }) => ({
    says: `a resistance of ${received} in ${text("thickness")} makes ${text("conductivity")}, which no material has`,
    expected: "the resistance of the material in the thickness of its layer",
    likelySlip: "R 20 is the R-value of North America; 3.5 m2 K/W is its like in Europe",
  }),
  "transmission-test-alike": () => ({
    says: "both sides of the test have the same humidity, so that nothing passes",
    expected: "the humidity on the dry and on the damp side, for example [0 %, 85 %]",
  }),
  "material-mixed": ({ text, list }) => ({
    says: `the material has ${text("sheet")}, as sheets have, and ${inSpeech(list("thick"), "and")}, as materials with a thickness have`,
    expected: "either sd, vapour resistance or permeance, for a sheet; or conductivity and vapour resistance factor",
    likelySlip: "For a board with a tight facing give conductivity, vapour resistance factor and `facing sd`",
  }),
  "material-incomplete": ({ list }) => ({
    says: `the material lacks ${inSpeech(list("missing"), "and")}`,
    expected:
      "conductivity and vapour resistance factor for a material with a thickness; sd, vapour resistance or permeance for a sheet",
    likelySlip: "Data sheets call them λ and μ (sd for a sheet)",
  }),
  "sd-by-humidity-order": () => ({
    says: "sd by humidity is not in order of relative humidity",
    expected: "pairs from the driest to the wettest, for example [[30 %, 10 m], [80 %, 0.5 m]]",
  }),
  "framing-unknown": ({ text, list }) => ({
    says: `no framing of this build-up is called ${text("name")}`,
    expected: list("known").length === 0 ? "a framing under `framings`, or its values in braces" : oneOf(list("known")),
    likelySlip:
      didYouMean(list("near")) ??
      "Describe a framing once under `framings` of the build-up, for example `framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }`; its layers then name it",
    write: onlyOne(list("near")),
  }),
  "framing-name-and": ({ text }) => ({
    says: `a framing cannot be called ${text("name")}: the word “and” joins the names of two framings`,
    expected: "a name without “and”, for example studs",
  }),
  "framing-name-twice": ({ text }) => ({
    says: `two framings are called ${text("name")}, apart from spaces`,
    expected: "names that differ in more than spaces",
  }),
  "framing-two-ways": () => ({
    says: "the framing has both a fraction and a width or spacing",
    expected: "either fraction, or width and spacing",
  }),
  "framing-no-share": () => ({
    says: "the framing does not say which share of the area it takes",
    expected: "width and spacing, or fraction",
    write: "width: 45 mm, spacing: 600 mm",
  }),
  "framing-half": ({ text }) => ({
    says: `${text("missing")} is missing`,
    expected: "width and spacing together",
    write: text("missing") === "width" ? "width: 45 mm" : "spacing: 600 mm",
  }),
  "framing-too-wide": ({ received }) => ({
    says: `width is ${received}, as wide as the spacing or wider`,
    expected: "the width of one stud, and the spacing between centres",
    likelySlip: "Width and spacing may be swapped, or one has the wrong unit",
  }),
  "framing-fills-all": ({ text }) => ({
    says: `the framing and the other timber would take ${text("share")} of the area`,
    expected: "less than 100 %",
    likelySlip: "Spacing is measured between centres; solid timber is a layer of timber",
  }),
  "too-many-ways": ({ text, list }) => ({
    says: `${text("framings")} framings cross here, which is more than ${text("most")} ways through`,
    expected: "at most six framings of different names in one build-up",
    likelySlip:
      list("alike").length > 0
        ? `Layers ${inSpeech(list("alike"), "and")} have the same ${text("material")} in them: where it is one timber, describe it once under \`framings\` and write its name at each of these layers`
        : "Timber that runs through several layers is described once under `framings` and named at each of them",
  }),
  "channel-has-its-own": ({ text }) => ({
    says: `a channel takes no \`${text("key")}\`: its sheet, flanges and spacing describe it`,
    expected: "material, channel and spacing only",
  }),
  "channel-not-metal": ({ text }) => ({
    says: `a channel cannot be made of ${text("name")}`,
    expected: "a metal, for example steel",
    likelySlip: "For a metal described in braces add `kind: metal`",
    write: "steel",
  }),
  "framing-of-sheet": ({ text }) => ({
    says: `framing cannot be made of ${text("name")}, which is a sheet`,
    expected: "a material with a conductivity, for example softwood timber",
    write: "softwood timber",
  }),
} satisfies Wordings;

/** Suggests an air layer, a name from the table, or a material in braces, with its values left blank for the user. */
function whatIsMeant({ text, list }: Facts): Omit<Said, "says"> {
  if (text("air") !== "") return airInstead(text("air") === "battens", text("thickness") || USUAL_CAVITY);
  const near = list("near");
  const isSheet = text("isSheet") === "yes";
  const blanks = isSheet ? "{ name: …, sd: … m }" : "{ name: …, conductivity: … W/(m K), vapour resistance factor: … }";
  return {
    expected: `a name from the table, or the values from its data sheet in braces${
      isSheet ? "; all but a sheet also has a thickness" : ""
    }`,
    likelySlip: [text("question"), didYouMean(near) ?? inTheTable(list("alike"))].filter(Boolean).join(" ") || null,
    write: near.length > 0 ? onlyOne(near) : text("question") === "" ? blanks : null,
  };
}

function airInstead(hasBattens: boolean, thickness: string): Omit<Said, "says"> {
  const battens = hasBattens ? ", framing: { material: softwood timber, width: 50 mm, spacing: 600 mm }" : "";
  return {
    expected: hasBattens
      ? "a layer of air with the battens as its framing"
      : "air as a layer of its own, without a material",
    likelySlip: "A cavity open at top and bottom is `well`, one closed all round is `none`",
    write: ["well", "none"].map((ventilation) => `{ air: ${thickness}, ventilation: ${ventilation}${battens} }`),
  };
}

/** Depth of an air layer where the file gives none: that of a batten. */
const USUAL_CAVITY = "25 mm";

function inTheTable(names: readonly string[]): string | null {
  return names.length === 0 ? null : `The table has ${inSpeech(names, "and")}`;
}
