import { isDeepStrictEqual } from "node:util";
import { expect } from "vitest";

/** Holds that two values are equal in every part: as `toEqual`, which is asked only for the words if they are not. */
export function expectSame(actual: unknown, expected: unknown, what?: string): void {
  if (!isDeepStrictEqual(actual, expected)) expect(actual, what).toEqual(expected);
}
