import type { MoistureResult, SectionResult, VerdictWord, YearSummary } from "@warmside/core";
import { grams, gramsPerArea, mostGramsPerArea } from "./numbers.ts";

/** The year's water, for the head of a page. */
export interface WaterHeadline {
  /** Verdict and figures of the year that the judgement follows: with drying counted inside the month. */
  verdict: VerdictWord;
  words: string;
  /** The same by the standard's month-end rule, if it differs; otherwise null. */
  byStandard: { verdict: VerdictWord; words: string } | null;
}

/**
 * The year's water in a clause: what the first year brings, and where it stays, how it goes on.
 *
 * @param moisture - the moisture side of a build-up
 * @returns verdict and figures that the judgement follows, and the standard's where they read otherwise
 */
export function waterHeadline(moisture: MoistureResult): WaterHeadline {
  const section = moisture.governing;
  const judged = section.withinMonth;
  const words = yearWords(judged, section.repeating);
  const readsAlike =
    judged.verdict === moisture.verdict &&
    judged.peak.month === moisture.peak.month &&
    grams(judged.peak.amount) === grams(moisture.peak.amount);
  const byStandard = readsAlike ? null : { verdict: moisture.verdict, words: firstYearWords(moisture) };
  return { verdict: judged.verdict, words, byStandard };
}

function yearWords(year: YearSummary, repeating: SectionResult["repeating"]): string {
  if (year.verdict !== "stays wet") return firstYearWords(year);
  const first = `${gramsPerArea(year.peak.amount)} in the first year`;
  return repeating.settles
    ? `${first}, levelling off at ${gramsPerArea(repeating.level)} after ${repeating.years} ${repeating.years === 1 ? "year" : "years"}`
    : `${first}, ${gramsPerArea(repeating.growthPerYear)} more each year`;
}

function firstYearWords({ peak }: YearSummary): string {
  return peak.month === null ? "no water" : `${mostGramsPerArea(peak.amount)}, in ${peak.month}`;
}
