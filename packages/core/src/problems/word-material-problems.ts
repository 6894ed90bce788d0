import { didYouMean, type Facts, inSpeech, oneOf, onlyOne, type Said, type Wordings } from "./wording.ts";

/** Problems of materials and framing. */
export const MATERIAL_WORDINGS: Wordings = {
  "material-unknown": (facts) => ({ says: `no material is called ${facts.text("name")}`, ...whatIsMeant(facts) }),
  "material-two-sheets": ({ list }) => ({
    says: `the sheet's vapour resistance is given twice, by ${list("keys").join(" and by ")}`,
    expected: "exactly one of sd, vapour resistance, permeance and sd by humidity",
  }),
  "material-mixed": ({ text, list }) => ({
    says: `the material has ${text("sheet")} like a sheet, and ${inSpeech(list("thick"), "and")} like a material with a thickness`,
    expected: "either sd, vapour resistance or permeance, for a sheet; or conductivity and vapour resistance factor",
    likelySlip: "A board with a tight facing is written with conductivity, vapour resistance factor and `facing sd`",
  }),
  "material-incomplete": ({ list }) => ({
    says: `the material lacks its ${inSpeech(list("missing"), "and")}`,
    expected:
      "conductivity and vapour resistance factor for a material with a thickness; sd, vapour resistance or permeance for a sheet",
    likelySlip: "The data sheet has them as λ and μ (or as sd for a sheet)",
  }),
  "sd-by-humidity-order": () => ({
    says: "sd by humidity does not rise from pair to pair in its relative humidity",
    expected: "pairs from the driest to the wettest, such as [[30 %, 10 m], [80 %, 0.5 m]]",
  }),
  "framing-unknown": ({ text, list }) => ({
    says: `there is no framing called ${text("name")} in this build-up`,
    expected: list("known").length === 0 ? "a framing under `framings`, or its values in braces" : oneOf(list("known")),
    likelySlip:
      didYouMean(list("near")) ??
      "Framing is described once under `framings` of the build-up and then named by its layers",
    write: onlyOne(list("near")),
  }),
  "framing-name-and": ({ text }) => ({
    says: `a framing cannot be called ${text("name")}: a way through two framings is told with the word and`,
    expected: "a name without the word and, such as studs",
  }),
  "framing-name-twice": ({ text }) => ({
    says: `two framings are called ${text("name")}, but for their spaces`,
    expected: "names that can be told apart in print",
  }),
  "framing-two-ways": () => ({
    says: "the framing has both a fraction and a width or spacing",
    expected: "either fraction, or width and spacing",
  }),
  "framing-no-share": () => ({
    says: "the framing does not say how much of the area it takes",
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
    expected: "a width of one stud, and the spacing from centre to centre",
    likelySlip: "Width and spacing may have changed places, or one is in the wrong unit",
  }),
  "framing-fills-all": ({ text }) => ({
    says: `the framing and the other timber would take ${text("share")} of the area`,
    expected: "less than all of it",
    likelySlip: "Spacing goes from centre to centre; a layer wholly of timber is written as a layer of timber",
  }),
  "channel-has-its-own": ({ text }) => ({
    says: `a channel takes no \`${text("key")}\`: its sheet, flanges and spacing tell how it bridges`,
    expected: "channel and spacing alone, beside the material",
  }),
  "channel-not-metal": ({ text }) => ({
    says: `a channel cannot be folded from ${text("name")}`,
    expected: "a metal, such as steel",
    likelySlip: "A material given on the spot says so by `kind: metal`",
    write: "steel",
  }),
  "framing-of-sheet": ({ text }) => ({
    says: `framing cannot be made of ${text("name")}, which is a sheet`,
    expected: "a material with a conductivity, such as softwood timber",
    write: "softwood timber",
  }),
};

/** An air layer, a name of the table, or values of the material's own: those are left blank, for nobody else knows them. */
function whatIsMeant({ text, list }: Facts): Omit<Said, "says"> {
  if (text("air") !== "") return airInstead(text("air") === "battens", text("thickness") || USUAL_CAVITY);
  const near = list("near");
  const isSheet = text("isSheet") === "yes";
  const blanks = isSheet ? "{ name: …, sd: … m }" : "{ name: …, conductivity: … W/(m K), vapour resistance factor: … }";
  return {
    expected: `a name from the table, or the material's values in braces, which its data sheet has${
      isSheet ? "; all but a sheet has its thickness beside" : ""
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
    likelySlip: "A cavity open at top and bottom is `well`; one closed by timber or insulation all round is `none`",
    write: ["well", "none"]
      .map((ventilation) => `{ air: ${thickness}, ventilation: ${ventilation}${battens} }`)
      .join(" or "),
  };
}

/** As deep as a batten, where the file tells no thickness. */
const USUAL_CAVITY = "25 mm";

function inTheTable(names: readonly string[]): string | null {
  if (names.length === 0) return null;
  return names.length === 1 ? `The table has ${names[0]}` : `The table has ${inSpeech(names, "and")}, for example`;
}
