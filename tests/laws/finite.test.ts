import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { howMany } from "../how-many.ts";
import { endsInFiniteNumbers, firstNotFinite } from "./every-number.ts";
import { situations } from "./random-build-ups.ts";

describe("random build-ups end without a number that is not finite", () => {
  it(`${howMany(400, 2000)} of them`, () => {
    fc.assert(fc.property(situations, endsInFiniteNumbers), {
      numRuns: howMany(400, 2000),
      seed: 2000,
      endOnFailure: true,
    });
  });

  it("and they are worth it: every verdict, framed and plain, slightly ventilated, ground and void, are among them", () => {
    const drawn = fc.sample(situations, { numRuns: 800, seed: 2000 });
    const calculations = drawn.map(({ buildUp, site }) => calculateBuildUp(buildUp, site));
    const part = (is: (calculation: (typeof calculations)[number]) => boolean): number =>
      calculations.filter(is).length / calculations.length;
    for (const verdict of ["dry", "dries out", "stays wet"]) {
      expect(
        part(({ governing }) => governing.year.verdict === verdict),
        verdict,
      ).toBeGreaterThan(0.03);
    }
    expect(part(({ sections }) => sections.length > 1)).toBeGreaterThan(0.2);
    expect(part(({ sections }) => sections.length > 2)).toBeGreaterThan(0.05);
    expect(part(({ slightVentilationCase }) => slightVentilationCase !== null)).toBeGreaterThan(0.05);
    expect(part(({ buildUp }) => buildUp.ground !== null)).toBeGreaterThan(0.05);
    expect(part(({ buildUp }) => buildUp.void !== null)).toBeGreaterThan(0.05);
    expect(part(({ governing }) => governing.year.writtenOff > 0)).toBeGreaterThan(0.02);
  });

  it("the search finds a number that is not finite wherever it hides", () => {
    expect(firstNotFinite({ a: [{ b: Float64Array.of(1, Number.NaN) }] })).toBe(".a.0.b.1 is NaN");
    expect(firstNotFinite(new Map([["room", { temperature: [Number.POSITIVE_INFINITY] }]]))).toBe(
      ".room.temperature.0 is Infinity",
    );
    expect(firstNotFinite({ a: 1, b: null, c: "x", d: [] })).toBeNull();
  });
});
