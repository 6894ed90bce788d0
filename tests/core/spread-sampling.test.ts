import { describe, expect, it } from "vitest";
import { latinHypercube } from "../../packages/core/src/studies/spread/latin-hypercube.ts";
import { seededNumbers } from "../../packages/core/src/studies/spread/seeded-numbers.ts";
import { factorAt, WIDTHS, widthsOf } from "../../packages/core/src/studies/spread/widths.ts";
import { material } from "../published/build-up-by-hand.ts";

function drawn(seed: number, count: number): number[] {
  const next = seededNumbers(seed);
  return Array.from({ length: count }, next);
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("seeded numbers", () => {
  it("the same seed gives the same numbers, another seed others", () => {
    expect(drawn(7, 100)).toEqual(drawn(7, 100));
    expect(drawn(8, 100)).not.toEqual(drawn(7, 100));
    expect(new Set(drawn(0, 10_000)).size).toBeGreaterThan(9_990);
  });

  it("an even spread from 0 to 1: mean, variance and every tenth as 100 000 even draws have them", () => {
    const values = drawn(1, 100_000);
    // Four standard errors each: 1/√(12 n), √(1/180 n), √(0.09/n).
    expect(Math.abs(meanOf(values) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / 100_000));
    expect(Math.abs(meanOf(values.map((value) => (value - 0.5) ** 2)) - 1 / 12)).toBeLessThan(
      4 * Math.sqrt(1 / 180 / 100_000),
    );
    for (let tenth = 0; tenth < 10; tenth += 1) {
      const share = values.filter((value) => Math.floor(10 * value) === tenth).length / values.length;
      expect(Math.abs(share - 0.1)).toBeLessThan(4 * Math.sqrt(0.09 / 100_000));
    }
  });

  it("a number tells nothing of the next: no correlation of neighbours", () => {
    const values = drawn(3, 100_000);
    const products = values.slice(1).map((value, index) => (value - 0.5) * (values[index]! - 0.5));
    expect(Math.abs(12 * meanOf(products))).toBeLessThan(4 / Math.sqrt(100_000));
  });

  it.each([-1, 0.5, 2 ** 32, Number.NaN])("seed %s is refused", (seed) => {
    expect(() => seededNumbers(seed)).toThrow(RangeError);
  });
});

describe("Latin hypercube", () => {
  it("every strip of every input holds exactly one sample", () => {
    const { values, count, dimensions } = latinHypercube(500, 7, 11);
    for (let dimension = 0; dimension < dimensions; dimension += 1) {
      const strips = Array.from({ length: count }, (_, sample) =>
        Math.floor(values[sample * dimensions + dimension]! * count),
      );
      expect([...strips].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, strip) => strip));
      expect(strips).not.toEqual([...strips].sort((a, b) => a - b));
    }
  });

  it("inputs are paired at random: no two are correlated", () => {
    const { values, count, dimensions } = latinHypercube(10_000, 5, 2);
    for (let one = 0; one < dimensions; one += 1) {
      for (let other = 0; other < one; other += 1) {
        const products = Array.from(
          { length: count },
          (_, sample) => (values[sample * dimensions + one]! - 0.5) * (values[sample * dimensions + other]! - 0.5),
        );
        expect(Math.abs(12 * meanOf(products))).toBeLessThan(4 / Math.sqrt(count));
      }
    }
  });

  it("the same seed gives the same samples; no sample is refused", () => {
    expect(latinHypercube(50, 3, 5).values).toEqual(latinHypercube(50, 3, 5).values);
    expect(latinHypercube(50, 3, 6).values).not.toEqual(latinHypercube(50, 3, 5).values);
    for (const count of [0, 1.5, Number.NaN]) expect(() => latinHypercube(count, 3, 5)).toThrow(RangeError);
  });
});

describe("widths", () => {
  const width = { low: 0.5, high: 2, origin: "" };

  it("the stated value in the middle, the ends of the width at the ends, rising in between", () => {
    expect(factorAt(width, 0)).toBeCloseTo(0.5, 12);
    expect(factorAt(width, 0.5)).toBe(1);
    expect(factorAt(width, 1)).toBeCloseTo(2, 12);
    for (let step = 1; step <= 100; step += 1)
      expect(factorAt(width, step / 100)).toBeGreaterThan(factorAt(width, (step - 1) / 100));
  });

  it("a triangle: one in eight lies in the outer half of a side, by its distribution worked by hand", () => {
    // P(position < −1/2) = (1/2)²/2 = 1/8: there the factor is √0.5.
    expect(factorAt(width, 1 / 8)).toBeCloseTo(Math.SQRT1_2, 12);
    expect(factorAt(width, 7 / 8)).toBeCloseTo(Math.SQRT2, 12);
  });

  it("by how a value came about; a table's row tells its own class; the file rules", () => {
    expect(widthsOf(material(0.1, 1, { basis: "declared" }))).toBe(WIDTHS.declared);
    expect(widthsOf(material(0.1, 1, { basis: "tabulated", source: "a table" }))).toBe(WIDTHS.tabulated);
    expect(widthsOf(material(0.1, 1, { basis: "assumed", spreadClass: "common" }))).toBe(WIDTHS.common);
    expect(widthsOf(material(0.1, 1, { basis: "assumed" }))).toBe(WIDTHS.assumed);
    const given = widthsOf(material(0.1, 1, { basis: "assumed", spread: 0.1 }));
    expect(given.conductivity).toMatchObject({ low: 0.9, high: 1.1 });
    expect(given.vapourResistance).toMatchObject({ low: 0.9, high: 1.1 });
  });

  it("what is less certain is wider", () => {
    const order = ["declared", "tabulated", "common", "assumed"] as const;
    for (let place = 1; place < order.length; place += 1) {
      const [narrow, wide] = [WIDTHS[order[place - 1]!], WIDTHS[order[place]!]];
      expect(wide.conductivity.high).toBeGreaterThan(narrow.conductivity.high);
      expect(wide.vapourResistance.low).toBeLessThan(narrow.vapourResistance.low);
    }
  });
});
