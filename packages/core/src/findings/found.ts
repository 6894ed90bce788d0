import type { FindingCode, FindingFigures } from "../result/types.ts";
import type { FindingWeight, RuledFinding } from "./types.ts";

/**
 * A finding as a rule gives it; the type of its figures follows from its code.
 *
 * @param code - the kind of finding
 * @param weight - its severity, and its effect on the judgement
 * @param figures - the data for its words
 * @returns the finding without words
 */
export function found<Code extends FindingCode>(
  code: Code,
  weight: FindingWeight,
  figures: FindingFigures[Code],
): RuledFinding {
  return { code, ...weight, figures } as RuledFinding;
}

/** A note without effect on the judgement. */
export const NOTE: FindingWeight = { severity: "note", effect: "none" };
/** A caution without effect on the judgement, and one that is a condition. */
export const CAUTION: FindingWeight = { severity: "caution", effect: "none" };
export const CONDITION: FindingWeight = { severity: "caution", effect: "condition" };
/** Faults: rejected by guidance, a number over its limit, and beyond the method. */
export const REFUSED: FindingWeight = { severity: "fault", effect: "change by guidance" };
export const OVER_LIMIT: FindingWeight = { severity: "fault", effect: "change by number" };
export const BEYOND: FindingWeight = { severity: "fault", effect: "beyond" };
