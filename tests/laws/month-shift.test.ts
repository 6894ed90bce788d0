import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DAYS_IN_MONTH } from "../../packages/core/src/constants.ts";
import type { AirMonths } from "../../packages/core/src/project/types.ts";
import { nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import { sectionClimate } from "../../packages/core/src/vapour/section-climate.ts";
import { secondsOfMonth } from "../../packages/core/src/year/month-balance.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { startingMonths, yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { type PlainLayer, plainSlices } from "../published/plain-section.ts";
import { sections } from "../published/random-sections.ts";

// Twelve equal months of 30 days: with calendar months the law cannot hold.
const days = DAYS_IN_MONTH as number[];
const ofTheCalendar = [...days];
beforeAll(() => {
  days.fill(30);
});
afterAll(() => {
  days.splice(0, days.length, ...ofTheCalendar);
});

const shifted = <Value>(values: ArrayLike<Value>, by: number): Value[] =>
  Array.from({ length: 12 }, (_, month) => values[(month - by + 12) % 12]!);
const shiftedAir = (air: AirMonths, by: number): AirMonths => ({
  temperature: shifted(air.temperature, by),
  vapourPressure: shifted(air.vapourPressure, by),
});

function yearsOf(layers: readonly PlainLayer[], inside: AirMonths, outside: AirMonths) {
  const line = nodeLine(plainSlices(layers));
  const driven = { sd: line.sd, climate: sectionClimate(line, inside, outside, 0.13, 0.04, 0) };
  const dryYear = yearFromDry(driven);
  return {
    wet: dryYear.wet,
    starts: startingMonths(dryYear.wet),
    standard: sectionYear(driven, dryYear, "standard"),
    withinMonth: sectionYear(driven, dryYear, "drying inside the month"),
  };
}

describe("law: with twelve equal months, climates shifted by n months shift the result by n", () => {
  it("the months are equal here", () => {
    expect(new Set(Array.from({ length: 12 }, (_, month) => secondsOfMonth(month)))).toEqual(new Set([30 * 86_400]));
  });

  it("400 random sections: which months are wet; and with one wet season the whole year, month by month", () => {
    let oneSeason = 0;
    fc.assert(
      fc.property(sections, fc.integer({ min: 1, max: 11 }), ({ layers, inside, outside }, by) => {
        const own = yearsOf(layers, inside, outside);
        const later = yearsOf(layers, shiftedAir(inside, by), shiftedAir(outside, by));
        expect(Array.from(later.wet)).toEqual(shifted(own.wet, by));
        const allWet = own.wet.every((mark) => mark === 1);
        if (allWet) return; // begun in January whatever the climate: no law
        for (const rule of ["standard", "withinMonth"] as const) {
          // Whichever candidate comes first in the calendar, the verdict is the same.
          expect(later[rule].verdict).toBe(own[rule].verdict);
          if (own.starts.length !== 1) continue;
          oneSeason += 1;
          expect(later[rule].startMonth).toBe((own.starts[0]! + by) % 12);
          expect(later[rule].peak).toBe(own[rule].peak);
          expect(later[rule].peakMonth).toBe((own[rule].peakMonth! + by) % 12);
          expect(later[rule].carriedOver).toBe(own[rule].carriedOver);
          expect(later[rule].writtenOff).toBe(own[rule].writtenOff);
          expect(later[rule].dryBy).toBe(own[rule].dryBy === null ? null : (own[rule].dryBy! + by) % 12);
          expect(later[rule].held).toEqual(shifted(own[rule].held, by));
          expect(later[rule].pressure).toEqual(shifted(own[rule].pressure, by));
        }
      }),
      { numRuns: 400, seed: 4, endOnFailure: true },
    );
    expect(oneSeason).toBeGreaterThan(40);
  });
});
