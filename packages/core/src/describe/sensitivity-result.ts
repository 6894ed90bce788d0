import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { TRACE } from "../findings/amount-limits.ts";
import { runInWords } from "../findings/words/run-in-words.ts";
import type { SensitivityResult } from "../result/types.ts";
import { isHarderYear, type SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import { NOTHING_HELD } from "../year/section-year.ts";
import { rankOfVerdict } from "../year/verdicts.ts";
import { yearSummary } from "./moisture-result.ts";

/**
 * A sensitivity run in the shape of the result.
 *
 * @param run - the run
 * @param reported - the figures it is compared with
 * @returns verdict, maximum accumulation, whether it is worse (by verdict, or by more than a trace), and a sentence
 */
export function sensitivityResult(
  { name, calculation }: SensitivityRun,
  reported: BuildUpCalculation,
): SensitivityResult {
  const { year, withinMonth, repeating } = calculation.governing;
  const { verdict, peak, carriedOver } = yearSummary(year);
  const before = reported.governing.year;
  const isCleared = isHarderYear(name) && repeating?.settles === true && repeating.level <= NOTHING_HELD;
  const worseVerdict = rankOfVerdict(verdict) > rankOfVerdict(before.verdict);
  return {
    name,
    verdict,
    withinMonthVerdict: withinMonth.verdict,
    peak,
    carriedOver,
    worse: worseVerdict || peak.amount - before.peak > TRACE,
    message: runInWords(name, { verdict, peak: peak.amount, carriedOver, isCleared }),
  };
}
