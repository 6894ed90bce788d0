import type { SpreadQuantiles } from "@warmside/core";
import { quantileSorted } from "simple-statistics";

/**
 * Quantiles of a list.
 *
 * @param values - finite numbers, at least one, in any order
 * @returns what one, five, fifty, ninety-five and ninety-nine of a hundred lie below, linear between neighbours
 */
export function quantilesOf(values: Float64Array): SpreadQuantiles {
  const sorted = Array.from(Float64Array.from(values).sort());
  const below = (share: number): number => quantileSorted(sorted, share);
  return {
    one: below(0.01),
    five: below(0.05),
    fifty: below(0.5),
    ninetyFive: below(0.95),
    ninetyNine: below(0.99),
  };
}
