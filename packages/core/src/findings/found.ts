import type { FindingCode, FindingFigures } from "../result/types.ts";
import type { FindingWeight, RuledFinding } from "./types.ts";

/**
 * A finding as a rule reports it; its figures are typed by its code.
 *
 * @param code - what is found
 * @param weight - how much it matters, and what it does to the judgement
 * @param figures - what its words are made of
 * @returns the finding without words
 */
export function found<Code extends FindingCode>(
  code: Code,
  weight: FindingWeight,
  figures: FindingFigures[Code],
): RuledFinding {
  return { code, ...weight, figures } as RuledFinding;
}

/** A note that has no say in the judgement. */
export const NOTE: FindingWeight = { severity: "note", effect: "none" };
/** A caution that has no say in the judgement, and one that is a condition of it. */
export const CAUTION: FindingWeight = { severity: "caution", effect: "none" };
export const CONDITION: FindingWeight = { severity: "caution", effect: "condition" };
/** Faults: what guidance refuses, what a number over its limit does, and what is beyond the method. */
export const REFUSED: FindingWeight = { severity: "fault", effect: "change by guidance" };
export const OVER_LIMIT: FindingWeight = { severity: "fault", effect: "change by number" };
export const BEYOND: FindingWeight = { severity: "fault", effect: "beyond" };
