/**
 * Random numbers that are the same on every machine for the same seed.
 *
 * A counter is advanced by an odd step and its bits are mixed by shifts and multiplications (a mixing counter generator
 * of 32 bits). This is enough for some ten million draws; it is not for secrets.
 *
 * @param seed - whole number, 0 to 2³² − 1
 * @returns a function that gives the next number, at least 0 and under 1
 * @throws RangeError when the seed is out of range or not whole
 */
export function seededNumbers(seed: number): () => number {
  if (!(Number.isInteger(seed) && seed >= 0 && seed < WORDS)) {
    throw new RangeError(`the seed must be a whole number from 0 to ${WORDS - 1}, was ${seed}`);
  }
  let counter = seed >>> 0;
  return () => {
    counter = (counter + STEP) >>> 0;
    return mix(counter) / WORDS;
  };
}

/** Numbers that 32 bits can hold. */
const WORDS = 2 ** 32;
/** 2³² divided by the golden ratio, made odd: the counter then takes every value once before it repeats. */
const STEP = 0x9e3779b9;
/** Odd factors with about half their bits set, found by search for even mixing (common practice). */
const FIRST_FACTOR = 0x21f0aaad;
const SECOND_FACTOR = 0x735a2d97;

function mix(word: number): number {
  let mixed = word ^ (word >>> 16);
  mixed = Math.imul(mixed, FIRST_FACTOR);
  mixed ^= mixed >>> 15;
  mixed = Math.imul(mixed, SECOND_FACTOR);
  mixed ^= mixed >>> 15;
  return mixed >>> 0;
}
