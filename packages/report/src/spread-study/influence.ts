import type { SampleTable } from "@warmside/core";
import { sampleCorrelation } from "simple-statistics";

/**
 * Rank correlation (Spearman's) of every input with an outcome.
 *
 * An input's strip in the Latin hypercube is its rank; only the outcome has to be ranked, once for all inputs.
 *
 * @param outcome - one number a sample
 * @param samples - quantiles of the inputs
 * @returns −1 to 1 an input; 0 where the outcome is the same in every sample, or there are too few samples
 */
export function influencesOn(outcome: Float64Array, samples: SampleTable): number[] {
  const { count, dimensions, values } = samples;
  const ranks = ranksOf(outcome);
  const varies = ranks.some((rank) => rank !== ranks[0]);
  return Array.from({ length: dimensions }, (_, dimension) => {
    if (!varies || count < FEWEST_SAMPLES) return 0;
    const column = Array.from({ length: count }, (_, sample) => values[sample * dimensions + dimension]!);
    return sampleCorrelation(column, ranks);
  });
}

/** Fewer samples than this tell nothing of influence. */
const FEWEST_SAMPLES = 3;

/** The place of the strongest influence, of whichever sign; null where there is none. */
export function strongest(influences: readonly number[]): number | null {
  let place: number | null = null;
  influences.forEach((influence, index) => {
    if (Math.abs(influence) > Math.abs(place === null ? 0 : influences[place]!)) place = index;
  });
  return place;
}

/**
 * Ranks from 0; equal values share the mean of their ranks.
 *
 * @param values - finite numbers
 * @returns ranks in the order of the values
 * @example ranksOf(Float64Array.of(5, 1, 5)) // [1.5, 0, 1.5]
 */
export function ranksOf(values: Float64Array): number[] {
  const order = Uint32Array.from(values, (_, index) => index).sort((one, other) => values[one]! - values[other]!);
  const ranks = new Array<number>(values.length);
  for (let first = 0; first < order.length; ) {
    let last = first;
    while (last + 1 < order.length && values[order[last + 1]!] === values[order[first]!]) last += 1;
    for (let place = first; place <= last; place += 1) ranks[order[place]!] = (first + last) / 2;
    first = last + 1;
  }
  return ranks;
}
