import fastCheck from "fast-check";
import { describe, expect, test } from "vitest";
import {
  alignOnPoint,
  fixed,
  grams,
  gramsPerArea,
  MINUS,
  millimetres,
  percent,
  readFigure,
  signed,
  trimmed,
} from "../../packages/report/src/numbers.ts";
import { roundFigures } from "../../packages/report/src/round-figures.ts";

describe("figures on the page", () => {
  test("have a true minus sign, thin spaces between thousands, no negative zero", () => {
    expect(fixed(-12345.678, 2)).toBe("−12\u202f345.68");
    expect(fixed(1234.5, 1)).toBe("1234.5");
    expect(fixed(-0.001, 2)).toBe("0.00");
    expect(signed(12, 0)).toBe("+12");
    expect(signed(-0.04, 1)).toBe("0.0");
    expect(trimmed(0.5, 4)).toBe("0.5");
    expect(trimmed(50, 3)).toBe("50");
    expect(trimmed(100, 0)).toBe("100");
    expect(percent(0.15, 0)).toBe("15\u00a0%");
    expect(millimetres(0.0125)).toBe("12.5");
  });

  test("water is shown in whole grams from ten on, in tenths below, and a trace as one", () => {
    expect([0.1873, 0.00996, 0.00004, 0, -0.0234].map(grams)).toEqual(["187", "10", "under 0.1", "0.0", "−23"]);
    expect(gramsPerArea(0.1873)).toBe("187\u00a0g/m²");
  });

  test("a number that is not finite is never shown", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => fixed(value, 1)).toThrow(RangeError);
      expect(() => roundFigures({ value })).toThrow(RangeError);
    }
  });

  test("reading a printed figure gives the rounded number", () => {
    fastCheck.assert(
      fastCheck.property(
        fastCheck.double({ min: -1e6, max: 1e6, noNaN: true }),
        fastCheck.integer({ min: 0, max: 5 }),
        (value, decimals) => {
          const read = readFigure(fixed(value, decimals));
          expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9 * Math.abs(value));
        },
      ),
    );
    expect(readFigure("between")).toBeNaN();
    expect(readFigure("")).toBeNaN();
    expect(readFigure(`${MINUS}3.5`)).toBe(-3.5);
  });

  test("a column is padded so that its points stand under each other", () => {
    const column = alignOnPoint(["12.5", "140", "–", "0.25"]);
    expect(column).toEqual(["12.5\u2007", "140\u2008\u2007\u2007", "–", "0.25"]);
    const afterPoint = column.filter((text) => text !== "–").map((text) => text.length - text.search(/[.\u2008]/));
    expect(new Set(afterPoint).size).toBe(1);
  });
});
