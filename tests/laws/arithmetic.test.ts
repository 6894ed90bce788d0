import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exponential, logarithm } from "../../packages/core/src/arithmetic/exponential.ts";

/** Units of the last place between two numbers. */
function placesApart(one: number, other: number): number {
  const bits = (number: number): bigint => new BigInt64Array(new Float64Array([number]).buffer)[0]!;
  return Math.abs(Number(bits(one) - bits(other)));
}

/** Engines are themselves within one unit of the true value; the two may lie on either side of it. */
const MOST_APART = 2;

describe("exponential and logarithm of our own", () => {
  it("are those of the engine but for its last places (ECMAScript leaves them to it)", () => {
    const power = fc.double({ min: -700, max: 700, noNaN: true });
    fc.assert(
      fc.property(power, (x) => placesApart(exponential(x), Math.exp(x)) <= MOST_APART),
      { numRuns: 5000, seed: 5000 },
    );
    const number = fc.double({ min: 1e-300, max: 1e300, noNaN: true });
    fc.assert(
      fc.property(number, (x) => placesApart(logarithm(x), Math.log(x)) <= MOST_APART),
      { numRuns: 5000, seed: 5000 },
    );
    const near = fc.double({ min: 0.5, max: 2, noNaN: true });
    fc.assert(
      fc.property(near, (x) => Math.abs(logarithm(x) - Math.log(x)) < 2e-16),
      { numRuns: 5000, seed: 5000 },
    );
  });

  it("undo one another, and keep to their ends", () => {
    for (const x of [-20, -1, -1e-9, 0, 1e-9, 1, 20]) expect(logarithm(exponential(x))).toBeCloseTo(x, 14);
    expect([exponential(0), exponential(710), exponential(-746), exponential(Number.NaN)]).toEqual([
      1,
      Infinity,
      0,
      NaN,
    ]);
    expect([logarithm(1), logarithm(0), logarithm(-1), logarithm(Infinity), logarithm(Number.NaN)]).toEqual([
      0,
      -Infinity,
      NaN,
      Infinity,
      NaN,
    ]);
  });

  it("give these bits, whatever the engine", () => {
    expect([1, -3.7, 12.34].map(exponential)).toEqual([Math.E, 0.024723526470339388, 228661.9520568098]);
    expect([10, 0.3, 1234.5].map(logarithm)).toEqual([Math.LN10, -1.2039728043259361, 7.118421308785234]);
  });
});
