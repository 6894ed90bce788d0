import { requireNumber } from "../../require.ts";
import { seededNumbers } from "./seeded-numbers.ts";

/** Samples of several inputs: `dimensions` numbers for each sample, one sample after the other, each 0 to 1. */
export interface SampleTable {
  /** Number of samples. */
  count: number;
  /** Number of inputs. */
  dimensions: number;
  /** [–] */
  values: Float64Array;
}

/**
 * A Latin hypercube. Each input's range from 0 to 1 is divided into as many equal strips as there are samples, and each
 * strip holds exactly one sample, at a random place. The strips of different inputs are paired at random.
 *
 * @param count - number of samples [–], whole, 1 to 10 000 000
 * @param dimensions - number of inputs [–], 0 to 10 000
 * @param seed - whole number [–], 0 to 2³² − 1
 * @returns the samples
 * @throws RangeError when a value is out of range, or the count or the seed is not whole
 * Source: the design of McKay, Beckman and Conover 1979, named after the Latin square.
 */
export function latinHypercube(count: number, dimensions: number, seed: number): SampleTable {
  requireNumber(dimensions, "dimensions", "", 0, MOST_DIMENSIONS);
  requireNumber(seed, "seed", "", 0, 2 ** 32 - 1);
  if (!(Number.isInteger(count) && count >= 1 && count <= MOST_SAMPLES))
    throw new RangeError(`the samples must be a whole number from 1 to ${MOST_SAMPLES}, were ${String(count)}`);
  const next = seededNumbers(seed);
  const values = new Float64Array(count * dimensions);
  const strips = new Uint32Array(count);
  for (let dimension = 0; dimension < dimensions; dimension += 1) {
    shuffle(strips, next);
    for (let sample = 0; sample < count; sample += 1) {
      values[sample * dimensions + dimension] = (strips[sample]! + next()) / count;
    }
  }
  return { count, dimensions, values };
}

/** Fills the list with the numbers from 0 in random order; every order is equally likely. */
function shuffle(strips: Uint32Array, next: () => number): void {
  for (let index = 0; index < strips.length; index += 1) strips[index] = index;
  for (let last = strips.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    const kept = strips[last]!;
    strips[last] = strips[other]!;
    strips[other] = kept;
  }
}

/** Most inputs: more than any build-up has. */
const MOST_DIMENSIONS = 10_000;
/** Most samples. */
const MOST_SAMPLES = 10_000_000;
