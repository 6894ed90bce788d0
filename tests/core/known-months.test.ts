import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { emptyMonthState } from "../../packages/core/src/year/month-balance.ts";
import { runOn } from "../../packages/core/src/year/run-on.ts";
import { type MonthRule, runYear, sectionYear } from "../../packages/core/src/year/section-year.ts";
import { startingMonths, yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { sections } from "../published/random-sections.ts";

const RULES: readonly MonthRule[] = ["standard", "drying inside the month"];

/** Months that are taken from what is known already are those that would have been worked out. */
describe("months that are known need not be worked out again", () => {
  it("400 random sections: months of the dry year, months up to the first that writes off, the first year of the run on", () => {
    const seen = { driesBefore: 0, apart: 0, dryMonths: 0, runOn: 0 };
    fc.assert(
      fc.property(sections, (section) => {
        const dryYear = yearFromDry(section);
        const starts = startingMonths(dryYear.wet);
        for (const rule of RULES) {
          for (const start of starts) {
            const empty = emptyMonthState(section.sd.length);
            const known = { dryYear, sameUntilWrittenOff: null };
            expect(runYear(section, start, rule, empty, known)).toEqual(runYear(section, start, rule));
          }
        }
        const standard = sectionYear(section, dryYear, "standard");
        const inside = sectionYear(section, dryYear, "drying inside the month");
        expect(sectionYear(section, dryYear, "drying inside the month", standard)).toEqual(inside);
        const known = runOn(section, inside.startMonth, inside);
        const fresh = runOn(section, inside.startMonth);
        expect(known).toEqual(fresh);
        if (standard.firstWrittenOff !== null && standard.firstWrittenOff !== standard.dryBy) seen.driesBefore += 1;
        if (standard.writtenOff > 0 && standard.startMonth === inside.startMonth) seen.apart += 1;
        if (starts.length > 0 && dryYear.adds.includes(0)) seen.dryMonths += 1;
        if (fresh.years > 1) seen.runOn += 1;
      }),
      { numRuns: 400, seed: 31, endOnFailure: true },
    );
    for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(10);
  });
});
