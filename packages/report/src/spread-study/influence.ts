import type { SampleTable } from "@warmside/core";
import { sampleCorrelation } from "simple-statistics";

/**
 * Rank correlation (Spearman's) of every input with several outcomes.
 *
 * An input's strip in the Latin hypercube is its rank; only the outcomes have to be ranked, once for all inputs.
 *
 * @param outcomes - for each, one number a sample
 * @param samples - quantiles of the inputs
 * @returns for each outcome −1 to 1 an input; 0 where the outcome is the same in every sample, or there are too few samples
 */
export function influencesOn(outcomes: readonly Float64Array[], samples: SampleTable): number[][] {
  const { count, dimensions, values } = samples;
  const influences = outcomes.map(() => new Array<number>(dimensions).fill(0));
  if (count < FEWEST_SAMPLES) return influences;
  const ranks = outcomes.map(ranksOf);
  const column = new Array<number>(count).fill(0);
  for (let dimension = 0; dimension < dimensions; dimension += 1) {
    for (let sample = 0; sample < count; sample += 1) column[sample] = values[sample * dimensions + dimension]!;
    ranks.forEach((rank, outcome) => {
      if (varies(rank)) influences[outcome]![dimension] = sampleCorrelation(column, rank);
    });
  }
  return influences;
}

/** Fewer samples than this tell nothing of influence. */
const FEWEST_SAMPLES = 3;

function varies(ranks: readonly number[]): boolean {
  return ranks.some((rank) => rank !== ranks[0]);
}

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
  const sorted = Float64Array.from(values).sort();
  return Array.from(values, (value) => {
    const smaller = countUnder(sorted, value, false);
    const notGreater = countUnder(sorted, value, true);
    return (smaller + notGreater - 1) / 2;
  });
}

/** How many of the sorted values are smaller than a value, or not greater: found by halving. */
function countUnder(sorted: Float64Array, value: number, orEqual: boolean): number {
  let from = 0;
  let until = sorted.length;
  while (from < until) {
    const middle = (from + until) >>> 1;
    if (sorted[middle]! < value || (orEqual && sorted[middle] === value)) from = middle + 1;
    else until = middle;
  }
  return from;
}
