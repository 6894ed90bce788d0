import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { LimitReason, VerdictWord, WaterFigures, WaterFindings, YearOfWater } from "../../result/types.ts";
import { DROPS_GATHER, TRACE } from "../amount-limits.ts";
import { atMost, grams, inPlainTerms, yearsInWords } from "../figures-in-words.ts";
import { keepDry } from "./keep-dry.ts";
import { placeInWords, sectionInWords, sectionPhrase } from "./places.ts";
import type { Named, Wordings } from "./wording.ts";

const AMOUNTS = "ISO 13788:2012 clause 6; amounts by DIN 4108-3 and common practice";

const DO_NOT_CLOSE = "Do not build it like this: take one of the remedies, or ask an adviser if none is listed.";

/** Findings on interstitial condensation. */
export const WATER_WORDINGS: Wordings<keyof WaterFindings> = {
  "stays-dry": ({ figures: { amountInColderYear, levelInColderYear } }) => ({
    says: "No condensation in any month.",
    more: [
      levelInColderYear === null
        ? ""
        : levelInColderYear === "none"
          ? "None in a cold year (1 in 10) either."
          : `In a cold year (1 in 10) there is a trace (${grams(amountInColderYear)}).`,
    ],
    source: "ISO 13788:2012 clause 6",
  }),
  "condensation-too-much": ({ figures }, buildUp) => ({
    says: figures.isSameWater
      ? `${opened(figures.year, "The")} ${grams(figures.amount)} ${placeOf(figures, buildUp)} alone exceed the limit.`
      : `${opened(figures.year, "Too")} much water condenses ${placeOf(figures, buildUp)}: ${mostOf(figures)}.`,
    more: [limitOf(figures)],
    advice: DO_NOT_CLOSE,
    source: AMOUNTS,
  }),
  "condensation-dries-out": ({ figures }, buildUp) => {
    const left = leftOver(figures);
    const dries = left === "" ? "and is gone" : "and nearly all of it is gone";
    return {
      says: `${opened(figures.year, "Water")} condenses ${placeOf(figures, buildUp)} ${dries} within the year: ${mostOf(figures)}.`,
      more: [
        left,
        limitOf(figures),
        figures.runsDown ? "On a smooth upright surface drops may run from about 50 g/m²." : "",
      ],
      advice: figures.runsDown
        ? "Keep room air away from the smooth surface, and let water drain clear of the bottom plate. Closed-cell foam must be bonded to the surface."
        : figures.restsOnLayer
          ? "Keep the layer that holds back the vapour unbroken: gaps raise the amount quickly."
          : keepDry(buildUp),
      source: AMOUNTS,
    };
  },
  "stays-wet": ({ figures }, buildUp) => ({
    says: `${opened(figures.year, "Water")} condenses ${placeOf(figures, buildUp)} and does not evaporate within the year: ${mostOf(figures)}.`,
    more: [
      figures.growthPerYear === 0 ? "It settles at a level and never dries." : growthInWords(figures),
      figures.isAboveGroundMembrane
        ? "It gathers above the required ground membrane, among mineral layers and foam, where nothing rots."
        : "",
    ],
    advice: figures.isAboveGroundMembrane
      ? "Let the slab and any screed dry before the finish is laid, and keep the vapour layer above the insulation unbroken."
      : DO_NOT_CLOSE,
    source: AMOUNTS,
  }),
  trace: ({ figures }, buildUp) => ({
    says: `${opened(figures.year, "A")} trace of water condenses ${placeOf(figures, buildUp)}: ${atMost(figures.amount)} (up to ${grams(TRACE)} needs no change).`,
    more: [
      leftOver(figures),
      figures.sitsOn === null ? "" : `It is on ${figures.sitsOn}, where even a trace is worth knowing about.`,
    ],
    source: AMOUNTS,
  }),
  "standard-not-passed": ({ figures }) => ({
    says: "ISO 13788 does not pass it: by its monthly step not all of the water evaporates within the year.",
    more: whyJudgedAllTheSame(figures),
    source: "ISO 13788:2012 clause 6.4, case c; the judgement is this project's rule",
  }),
  "bonded-foam": ({ figures: { layer, margin } }, { layers }) => ({
    says: `The room side of ${layers[layer]!.name} stays ${formatQuantity(Math.abs(margin), "temperature difference")} ${margin >= 0 ? "above" : "below"} the room's dew point in the worst month.`,
    more: ["Bonded foam has no face on its skin for drops to run on: it is held to what its cells may take up."],
    source: "this project's rule (METHOD.md, Foam bonded to a skin)",
  }),
  "bonded-foam-grows": ({ figures: { layer, growthPerYear } }, { layers }) => ({
    says: `The water in ${layers[layer]!.name} grows by ${grams(growthPerYear)} a year even in mean years: whether sun on the skin dries it, no monthly mean can say.`,
    advice: "Ask for a transient assessment to EN 15026 with sun on the skin, or give the room side a vapour layer.",
    source: "this project's rule (METHOD.md, Foam bonded to a skin)",
  }),
  "two-verdicts": ({ figures: { section, standard, insideTheMonth } }) => ({
    says:
      `By the standard's monthly step the build-up${sectionPhrase(section)} ${verdictPhrase(standard)}; ` +
      `with drying within the month it ${verdictPhrase(insideTheMonth)}.`,
    more: ["The second conserves water, and the judgement follows it."],
    source: "ISO 13788:2012 clause 6.4; drying within the month is beyond the standard",
  }),
  "framing-worse": ({ figures: { governing, peak, peakBetween } }) => ({
    says: `The path ${sectionInWords(governing)} is worse than the one between: ${atMost(peak)} against ${grams(peakBetween)}.`,
    more: ["It governs."],
    source: "ISO 13788:2012 clause 6, section by section (this project's rule)",
  }),
};

/** The first word of a sentence, after the name of the 1-in-10 year if it is about one. */
function opened(year: YearOfWater, word: string): string {
  const opening = OPENING[year];
  return opening === "" ? word : `${opening}${word.toLowerCase()}`;
}

/** The opening of a sentence about each year. */
const OPENING: Readonly<Record<YearOfWater, string>> = {
  reported: "",
  "one in ten colder year": "In a cold year (1 in 10), ",
  "one in ten warmer year": "In a warm year (1 in 10), ",
};

function placeOf({ place, section }: WaterFigures, buildUp: Named): string {
  return `${placeInWords(place, buildUp)}${sectionPhrase(section)}`;
}

function mostOf({ amount, month, growthPerYear }: WaterFigures): string {
  const inFirst = growthPerYear !== null && growthPerYear > 0 ? " of the first year" : "";
  return `${atMost(amount)}, at the end of ${month}${inFirst} (${inPlainTerms(amount)})`;
}

function limitOf({ limit, limitBy }: WaterFigures): string {
  return `The limit there is ${grams(limit)} (${limitInWords(limitBy)}).`;
}

/** Why a limit applies: "3 % of the dry mass of oriented strand board". */
export function limitInWords(by: LimitReason): string {
  switch (by.kind) {
    case "anywhere":
      return "the general limit";
    case "dry mass":
      return `${by.share * 100} % of the dry mass of ${by.material}`;
    case "bonded foam":
      return `${by.share * 100} % of the foam's volume, bonded to its skin, and 500 g/m² at most`;
    case "smooth upright surface":
      return "above it drops gather at the bottom plate";
    case "surface that takes up no water":
      return "for surfaces that absorb no water";
  }
}

/** The yearly growth of a small amount of water; empty where it does not grow. */
function leftOver({ growthPerYear, yearsToGather }: WaterFigures): string {
  return yearsToGather === null
    ? ""
    : `${grams(growthPerYear!)} remains each year and would reach 200 g/m² in ${yearsInWords(yearsToGather)}.`;
}

function growthInWords({ growthPerYear, yearsToGather, amount }: WaterFigures): string {
  const grows = `It grows by ${grams(growthPerYear!)} a year`;
  return amount >= DROPS_GATHER
    ? `${grows}.`
    : `${grows} and reaches 200 g/m², a cup on every square metre, in ${yearsInWords(yearsToGather!)}.`;
}

/** Why the judgement may pass what the standard does not: no water stays, or too little. */
function whyJudgedAllTheSame({
  amount,
  growthPerYear,
  yearsToGather,
  driesWithinMonth,
}: WaterFindings["standard-not-passed"]): readonly string[] {
  if (growthPerYear === null)
    return [
      driesWithinMonth
        ? "With drying within the month, which conserves water, all of it does, and the judgement goes by that."
        : "The ordinary years that follow clear all of it, and the judgement goes by that.",
    ];
  const stays =
    yearsToGather === null
      ? `What stays is ${grams(amount)} at most, and it does not grow.`
      : `What stays is ${grams(growthPerYear)} a year, so that ${decadesInWords(yearsToGather)} pass before it makes 200 g/m².`;
  return [stays, "So the judgement goes by the amount."];
}

/** Years rounded to tens: the result is no more precise. */
function decadesInWords(years: number): string {
  const decades = Math.round(years / 10);
  return decades < 1 ? yearsInWords(years) : decades > 20 ? "centuries" : `about ${decades * 10} years`;
}

function verdictPhrase(verdict: VerdictWord): string {
  return verdict === "dry" ? "stays dry" : verdict;
}
