import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { SectionYear } from "../../packages/core/src/year/types.ts";
import { situations } from "./random-build-ups.ts";

/** A plane: a node whose water changes by more than 1 mg/m² in a month, or that holds water at its end. */
const hasPlane = ({ change, held }: SectionYear): boolean =>
  change.some((nodes, month) => nodes.some((amount, node) => Math.abs(amount) > 1e-6 || held[month]![node]! > 0));

describe("law: dry, and only it, has no plane in any month", () => {
  it("1 000 random build-ups, every section, both ways of carrying water through a month", () => {
    fc.assert(
      fc.property(situations, ({ buildUp, site }) => {
        for (const { year, withinMonth, dryYear } of calculateBuildUp(buildUp, site, { runOn: false }).sections) {
          for (const each of [year, withinMonth]) {
            expect(hasPlane(each)).toBe(each.verdict !== "dry");
            expect(each.peak > 0).toBe(each.verdict !== "dry");
            expect(each.startMonth === null).toBe(each.verdict === "dry");
            expect(each.peakMonth === null).toBe(each.verdict === "dry");
            expect(each.dryBy === null).toBe(each.verdict !== "dries out");
          }
          expect(dryYear.wet.includes(1)).toBe(year.verdict !== "dry");
          expect(withinMonth.verdict === "dry").toBe(year.verdict === "dry");
        }
      }),
      { numRuns: 1000, seed: 10, endOnFailure: true },
    );
  });
});
