import type { SectionCalculation } from "../calculate-build-up.ts";
import { NOTHING_HELD } from "../year/section-year.ts";

/**
 * Water that framing on a way through, or beside it, could take up: the most that a year brings, and without bound where
 * some of it stays from year to year and adds up.
 *
 * @param section - a way through
 * @returns [kg/m²]
 * Source: this project's rule (METHOD.md, Wood moisture).
 */
export function waterThatWets({ withinMonth, repeating }: SectionCalculation): number {
  const clears = repeating?.settles === true && repeating.level <= NOTHING_HELD;
  return withinMonth.verdict === "stays wet" && !clears ? Number.POSITIVE_INFINITY : withinMonth.peak;
}
