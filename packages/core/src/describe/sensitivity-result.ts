import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { runInWords } from "../findings/words/run-in-words.ts";
import type { SensitivityResult } from "../result/types.ts";
import type { SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import { NOTHING_HELD } from "../year/section-year.ts";
import { rankOfVerdict } from "../year/verdicts.ts";
import { yearSummary } from "./moisture-result.ts";

/** A run is worse where it holds this much more water [kg/m²], a trace (this project's rule). */
const MORE_WATER = 0.01;

/**
 * A run under another assumption in the shape of the result.
 *
 * @param run - the run
 * @param reported - the figures it is held against
 * @returns verdict, peak, whether it is worse, and a sentence
 */
export function sensitivityResult(
  { name, calculation }: SensitivityRun,
  reported: BuildUpCalculation,
): SensitivityResult {
  const { year, withinMonth, repeating } = calculation.governing;
  const { verdict, peak, carriedOver } = yearSummary(year);
  const before = reported.governing.year;
  const isOnce = name === "one in ten colder year" || name === "one in ten warmer year";
  const isCleared = isOnce && repeating?.settles === true && repeating.level <= NOTHING_HELD;
  const worseVerdict = rankOfVerdict(verdict) > rankOfVerdict(before.verdict);
  return {
    name,
    verdict,
    withinMonthVerdict: withinMonth.verdict,
    peak,
    carriedOver,
    worse: worseVerdict || peak.amount - before.peak > MORE_WATER,
    message: runInWords(name, { verdict, peak: peak.amount, carriedOver, isCleared }),
  };
}
