/**
 * Holds a condition, as `expect` does, where a test asks hundreds of thousands of them: a matcher takes a hundred times
 * as long.
 */
export function hold(condition: boolean, words: () => string): void {
  if (!condition) throw new Error(words());
}

/** Holds that two lists are of one length, and each number within a tolerance of its other. */
export function holdClose(actual: ArrayLike<number>, expected: ArrayLike<number>, tolerance: number): void {
  hold(actual.length === expected.length, () => `${actual.length} numbers instead of ${expected.length}`);
  for (let at = 0; at < expected.length; at += 1)
    hold(Math.abs(actual[at]! - expected[at]!) < tolerance, () => `${actual[at]} instead of ${expected[at]} at ${at}`);
}
