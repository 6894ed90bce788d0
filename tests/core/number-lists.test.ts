import { describe, expect, test } from "vitest";
import { wholeZeros, zeroMarks, zeros } from "../../packages/core/src/vapour/number-lists.ts";

describe("lists cut from larger blocks", () => {
  test("begin with zeros and share nothing, wherever a block ends", () => {
    const lists = Array.from({ length: 6000 }, (_, index) => {
      const length = (index * 7) % 61;
      const list = [zeros(length), wholeZeros(length), zeroMarks(length)][index % 3]!;
      expect(list).toHaveLength(length);
      expect(list.every((value) => value === 0)).toBe(true);
      return list.fill((index % 250) + 1);
    });
    for (const [index, list] of lists.entries())
      expect(list.every((value: number) => value === (index % 250) + 1)).toBe(true);
  });
  test("are of any length", () => {
    for (const list of [zeros, wholeZeros, zeroMarks]) {
      expect(list(0)).toHaveLength(0);
      expect(list(200_000)).toHaveLength(200_000);
      expect(() => list(-1)).toThrow(RangeError);
      expect(() => list(1.5)).toThrow(RangeError);
    }
  });
});
