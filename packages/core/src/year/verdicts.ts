import type { VerdictWord } from "../result/types.ts";

/** Verdicts of the monthly method, from best to worst: ISO 13788:2012 clause 6, cases a, b and c. */
export const VERDICTS: readonly VerdictWord[] = ["dry", "dries out", "stays wet"];

/** The worse of two verdicts. */
export function worseVerdict(one: VerdictWord, other: VerdictWord): VerdictWord {
  return rankOfVerdict(other) > rankOfVerdict(one) ? other : one;
}

/** Rank of a verdict [–]: the greater, the worse. */
export function rankOfVerdict(verdict: VerdictWord): number {
  return VERDICTS.indexOf(verdict);
}
