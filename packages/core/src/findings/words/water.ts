import { sectionName } from "../../heat/paths.ts";
import type { LimitReason, VerdictWord, WaterFigures, WaterFindings, YearOfWater } from "../../result/types.ts";
import { DROPS_GATHER, TRACE } from "../amount-limits.ts";
import { grams, inPlainTerms, yearsInWords } from "../figures-in-words.ts";
import { placeByLayers, sectionInBrackets } from "./places.ts";
import type { Named, Wordings } from "./wording.ts";

const AMOUNTS = "ISO 13788:2012 clause 6; amounts by DIN 4108-3 and common practice (from memory)";

const DO_NOT_CLOSE =
  "Do not close the build-up like this: take one of the remedies, where any is listed, or ask an adviser.";

/** Findings of water inside a build-up. */
export const WATER_WORDINGS: Wordings<keyof WaterFindings> = {
  "stays-dry": ({ figures: { amountInColderYear, levelInColderYear } }) => ({
    says: "No water condenses inside it in any month.",
    more: [
      levelInColderYear === null
        ? ""
        : levelInColderYear === "none"
          ? "Nor does it in a year 2 K colder than usual."
          : `In a year 2 K colder than usual a trace does (${grams(amountInColderYear)}).`,
      "That is vapour alone: not rain, leaks, moving air or built-in water.",
    ],
    source: "ISO 13788:2012 clause 6 (from memory)",
  }),
  "condensation-too-much": ({ figures }, buildUp) => ({
    says: figures.isSameWater
      ? `${OPENING[figures.year]}The ${grams(figures.amount)} ${placeOf(figures, buildUp)} are too much by themselves.`
      : `${OPENING[figures.year]}Too much water condenses ${placeOf(figures, buildUp)}: ${mostOf(figures)}.`,
    more: [limitOf(figures)],
    advice: DO_NOT_CLOSE,
    source: AMOUNTS,
  }),
  "condensation-dries-out": ({ figures }, buildUp) => {
    const left = leftOver(figures);
    const dries = left === "" ? "and dries out again" : "and nearly all of it dries out again";
    return {
      says: `${OPENING[figures.year]}Water condenses ${placeOf(figures, buildUp)} ${dries} within the year: ${mostOf(figures)}.`,
      more: [
        left,
        limitOf(figures),
        figures.runsDown ? "On a smooth upright surface drops may run down from about 50 g/m²." : "",
      ],
      advice: figures.runsDown
        ? "Keep room air away from the smooth surface, and the bottom plate clear of what runs down; closed-cell foam would have to be bonded to it."
        : "Keep the layer that limits the vapour continuous: the amount rises quickly when it is not.",
      source: AMOUNTS,
    };
  },
  "stays-wet": ({ figures }, buildUp) => ({
    says: `${OPENING[figures.year]}Water condenses ${placeOf(figures, buildUp)} and does not dry within the year: ${mostOf(figures)}.`,
    more: [
      figures.growthPerYear === 0 ? "It settles at a level and never dries." : growthInWords(figures),
      figures.isAboveGroundMembrane
        ? "It gathers above the ground's membrane, which is required, where only mineral layers and foam touch it, and nothing there rots."
        : "",
    ],
    advice: figures.isAboveGroundMembrane
      ? "Let the slab, and any screed, dry before the finish is laid, and keep the layer above the insulation that limits the vapour whole."
      : DO_NOT_CLOSE,
    source: AMOUNTS,
  }),
  trace: ({ figures }, buildUp) => ({
    says: `${OPENING[figures.year]}A trace of water condenses ${placeOf(figures, buildUp)}: ${grams(figures.amount)} at most, up to ${grams(TRACE)} is no reason to change anything.`,
    more: [
      leftOver(figures),
      figures.sitsOn === null ? "" : `It sits on ${figures.sitsOn}, where even a trace is worth knowing of.`,
    ],
    source: AMOUNTS,
  }),
  "two-verdicts": ({ figures: { section, standard, insideTheMonth } }) => ({
    says:
      `By the standard's month-end rule the build-up (${sectionName(section)}) ${verdictPhrase(standard)}; with drying inside the month, ` +
      `which loses and invents no water, it ${verdictPhrase(insideTheMonth)}.`,
    more: ["The judgement follows the second."],
    source: "ISO 13788:2012 clause 6.4 (from memory); drying inside the month is beyond the standard",
  }),
  "framing-worse": ({ figures: { governing, peak, peakBetween } }) => ({
    says: `The way ${sectionName(governing)} is worse than the one between: ${grams(peak)} against ${grams(peakBetween)} at most.`,
    more: ["It governs."],
    source: "ISO 13788:2012 clause 6, section by section (this project's rule)",
  }),
};

/** What begins a sentence of a harder year. */
const OPENING: Readonly<Record<YearOfWater, string>> = {
  reported: "",
  "one in ten colder year": "In a year 2 K colder than usual, as one in ten is: ",
  "one in ten warmer year": "In a year 2 K warmer than usual, as one in ten is: ",
};

function placeOf({ place, section }: WaterFigures, buildUp: Named): string {
  return `${placeByLayers(place, buildUp)}${sectionInBrackets(section)}`;
}

function mostOf({ amount, month, growthPerYear }: WaterFigures): string {
  const inFirst = growthPerYear !== null && growthPerYear > 0 ? " of the first year" : "";
  return `${grams(amount)} by the end of ${month}${inFirst}, ${inPlainTerms(amount)}`;
}

function limitOf({ limit, limitBy }: WaterFigures): string {
  return `The limit there is ${grams(limit)} (${limitInWords(limitBy)}).`;
}

/** Why a limit applies: "3 % of the dry mass of oriented strand board". */
export function limitInWords(by: LimitReason): string {
  switch (by.kind) {
    case "anywhere":
      return "the most that is accepted anywhere";
    case "dry mass":
      return `${by.share * 100} % of the dry mass of ${by.material}`;
    case "smooth upright surface":
      return "where drops on a smooth upright surface gather at the bottom plate";
    case "surface that takes up no water":
      return "the most that is accepted on a surface that takes up no water";
  }
}

/** What a trace or next to nothing leaves behind a year; nothing where all of it dries. */
function leftOver({ growthPerYear, yearsToGather }: WaterFigures): string {
  return yearsToGather === null
    ? ""
    : `It leaves ${grams(growthPerYear!)} a year: ${yearsInWords(yearsToGather)} until that makes 200 g/m².`;
}

function growthInWords({ growthPerYear, yearsToGather, amount }: WaterFigures): string {
  const grows = `It grows by ${grams(growthPerYear!)} a year`;
  return amount >= DROPS_GATHER
    ? `${grows}.`
    : `${grows}: ${yearsInWords(yearsToGather!)} until that makes 200 g/m², a cup on every square metre.`;
}

function verdictPhrase(verdict: VerdictWord): string {
  return verdict === "dry" ? "stays dry" : verdict;
}
