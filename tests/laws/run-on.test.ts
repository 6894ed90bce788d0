import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { emptyMonthState, markWetNodes } from "../../packages/core/src/year/month-balance.ts";
import { MOST_YEARS, runOn } from "../../packages/core/src/year/run-on.ts";
import { runYear, sectionYear, sumOf } from "../../packages/core/src/year/section-year.ts";
import { yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { sections } from "../published/random-sections.ts";

/** 1 mg/m²: what counts as nothing. */
const NOTHING = 1e-6;

describe("law: a year that settles repeats itself, one that does not grows by the same every year", () => {
  it("1 000 random sections, the years carried on here one by one", () => {
    const seen = { settledWet: 0, settledLater: 0, growing: 0 };
    fc.assert(
      fc.property(sections, (section) => {
        const first = sectionYear(section, yearFromDry(section), "drying inside the month");
        const repeating = runOn(section, first.startMonth, first);
        if (first.startMonth === null) {
          expect(repeating).toEqual({ settles: true, years: 0, level: 0, growthPerYear: 0 });
          return;
        }
        const state = emptyMonthState(section.sd.length);
        const totals = [0];
        for (let year = 1; year <= repeating.years; year += 1) {
          markWetNodes(state);
          runYear(section, first.startMonth, "drying inside the month", state);
          totals.push(sumOf(state.held));
        }
        const before = state.held.slice();
        runYear(section, first.startMonth, "drying inside the month", state);
        const growth = state.held.map((held, node) => held - before[node]!);
        if (repeating.settles) {
          if (repeating.level > 1e-3) seen.settledWet += 1;
          if (repeating.years > 1) seen.settledLater += 1;
          expect(repeating.growthPerYear).toBe(0);
          expect(Math.max(...growth.map(Math.abs))).toBeLessThanOrEqual(NOTHING * 1.001);
          expect(Math.abs(repeating.level - totals.at(-1)!)).toBeLessThanOrEqual(NOTHING * section.sd.length);
        } else {
          seen.growing += 1;
          // Left open after the most years that are tried: it may still slow down, and has not yet settled.
          if (repeating.years === MOST_YEARS) expect(Math.max(...growth.map(Math.abs))).toBeGreaterThan(0);
          else expect(sumOf(growth)).toBeCloseTo(repeating.growthPerYear, 8);
          expect(Math.abs(totals.at(-1)! - repeating.level)).toBeLessThan(1e-9 * repeating.level);
        }
      }),
      { numRuns: 1000, seed: 11, endOnFailure: true },
    );
    expect(seen.settledWet).toBeGreaterThan(3);
    expect(seen.settledLater).toBeGreaterThan(3);
    expect(seen.growing).toBeGreaterThan(20);
  });

  it("a year that comes once, then drier ones: what it left is carried on through those alone, year by year", () => {
    const seen = { cleared: 0, settledWet: 0, growing: 0 };
    fc.assert(
      fc.property(sections, fc.double({ min: 0.5, max: 1, noNaN: true }), (section, drier) => {
        const { climate } = section;
        const after = {
          ...section,
          climate: { ...climate, insideSurface: climate.insideSurface.map((p) => drier * p) },
        };
        const first = sectionYear(section, yearFromDry(section), "drying inside the month");
        if (first.verdict !== "stays wet") return;
        const repeating = runOn(section, first.startMonth, first, after);
        const state = emptyMonthState(section.sd.length);
        runYear(section, first.startMonth!, "drying inside the month", state);
        let last = sumOf(state.held);
        let growth = 0;
        let least = last;
        for (let year = 2; year <= repeating.years; year += 1) {
          markWetNodes(state);
          const { held } = runYear(after, first.startMonth!, "drying inside the month", state);
          least = Math.min(...held.map(sumOf));
          growth = sumOf(state.held) - last;
          last += growth;
          if (year < repeating.years) expect(least).toBeGreaterThan(NOTHING);
        }
        if (!repeating.settles) {
          seen.growing += 1;
          if (repeating.years < MOST_YEARS) expect(growth).toBeCloseTo(repeating.growthPerYear, 8);
        } else if (repeating.level === 0) {
          seen.cleared += 1;
          expect(least).toBeLessThanOrEqual(NOTHING);
        } else {
          seen.settledWet += 1;
          expect(Math.abs(last - repeating.level)).toBeLessThanOrEqual(NOTHING * section.sd.length);
        }
      }),
      { numRuns: 1000, seed: 12, endOnFailure: true },
    );
    expect(seen.cleared).toBeGreaterThan(10);
    expect(seen.growing).toBeGreaterThan(10);
  });
});
