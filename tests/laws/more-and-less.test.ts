import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AirMonths } from "../../packages/core/src/project/types.ts";
import { emptyMonthState, secondsOfMonth, solveMonth } from "../../packages/core/src/year/month-balance.ts";
import { drivenSection, type PlainLayer } from "../published/plain-section.ts";
import { between, months, overPowers, sections } from "../published/random-sections.ts";

/** Condensate of one month from dry [kg/m²]. */
function condensate(layers: readonly PlainLayer[], inside: AirMonths, outside: AirMonths, month: number): number {
  const section = drivenSection(layers, inside, outside);
  const state = emptyMonthState(section.line.count);
  solveMonth(section, month, state);
  return state.gain.reduce((sum, rate) => sum + rate, 0) * secondsOfMonth(month);
}

const outwards = (inside: AirMonths, outside: AirMonths, month: number): boolean =>
  inside.vapourPressure[month]! > outside.vapourPressure[month]! &&
  inside.temperature[month]! > outside.temperature[month]!;

/** Rounding of the slopes. */
const ROUNDING = 1e-10;

describe("law: more sd on the warm side never condenses more (one month from dry)", () => {
  it("500 random sections, a sheet of any sd put on the warm face", () => {
    let condensed = 0;
    fc.assert(
      fc.property(sections, months, overPowers(0.01, 1000), ({ layers, inside, outside }, month, sd) => {
        fc.pre(inside.vapourPressure[month] !== outside.vapourPressure[month]);
        const vapourSheet = { resistance: 0, sd };
        const drivenOutwards = outwards(inside, outside, month);
        fc.pre(drivenOutwards || outwards(outside, inside, month));
        const more = drivenOutwards ? [vapourSheet, ...layers] : [...layers, vapourSheet];
        const before = condensate(layers, inside, outside, month);
        if (before > 0.001) condensed += 1;
        expect(condensate(more, inside, outside, month)).toBeLessThanOrEqual(before + ROUNDING);
      }),
      { numRuns: 500, seed: 8, endOnFailure: true },
    );
    expect(condensed).toBeGreaterThan(50);
  });
});

describe("law: a drier room never condenses more while the drive is outward (one month from dry)", () => {
  it("500 random sections, the room dried part of the way to outdoors", () => {
    let condensed = 0;
    fc.assert(
      fc.property(sections, months, between(0, 1), ({ layers, inside, outside }, month, share) => {
        fc.pre(outwards(inside, outside, month));
        const vapourPressure = inside.vapourPressure.map((pressure, at) =>
          at === month ? pressure - share * (pressure - outside.vapourPressure[month]!) : pressure,
        );
        const before = condensate(layers, inside, outside, month);
        if (before > 0.001) condensed += 1;
        expect(condensate(layers, { ...inside, vapourPressure }, outside, month)).toBeLessThanOrEqual(
          before + ROUNDING,
        );
      }),
      { numRuns: 500, seed: 9, endOnFailure: true },
    );
    expect(condensed).toBeGreaterThan(50);
  });
});
