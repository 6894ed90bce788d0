import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  FIXED_POINT_TOLERANCE,
  fixedPointOfMonth,
} from "../../packages/core/src/further-checks/variable-resistance/fixed-point.ts";
import { valueAt } from "../../packages/core/src/further-checks/variable-resistance/sd-by-humidity.ts";
import {
  humidityOfSlices,
  type VaryingSection,
  varyingSection,
} from "../../packages/core/src/further-checks/variable-resistance/varying-section.ts";
import { varyingYear } from "../../packages/core/src/further-checks/variable-resistance/varying-year.ts";
import { emptyMonthState, type MonthState } from "../../packages/core/src/year/month-balance.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { buildUp, sheet } from "../published/build-up-by-hand.ts";
import { drivenSection, plainSlices, sameMonths } from "../published/plain-section.ts";
import { byQuadraticProgramme } from "../published/quadratic-programme.ts";
import { months, sections, wetNodes } from "../published/random-sections.ts";
import { varyingSections } from "./varying-sections.ts";

const ownSd = (section: VaryingSection): Float64Array => Float64Array.from(section.slices, ({ sd }) => sd);

const stateOf = (isWet: Uint8Array): MonthState => {
  const state = emptyMonthState(isWet.length);
  isWet.forEach((wet, node) => {
    state.held[node] = wet === 1 ? 0.1 : 0;
  });
  return state;
};

const questions = fc
  .tuple(varyingSections, months)
  .chain(([section, month]) => wetNodes(section.intervalSd.length + 1).map((isWet) => ({ section, month, isWet })));

describe("second solver at the fixed point: quadratic programme by quadprog, 300 random sections with held water", () => {
  test("its pressures are ours within 0.01 Pa, and the humidity it gives asks for the sd that was used", () => {
    fc.assert(
      fc.property(questions, ({ section, month, isWet }) => {
        const state = stateOf(isWet);
        const point = fixedPointOfMonth(section, month, state, ownSd(section));
        fc.pre(point.converged);
        const { climate } = section;
        const second = byQuadraticProgramme({
          sd: point.driven.sd,
          saturation: climate.saturation[month]!,
          inside: climate.insideSurface[month]!,
          outside: climate.outsideSurface[month]!,
          isWet,
        });
        second.forEach((pressure, node) => {
          expect(Math.abs(pressure - state.pressure[node]!), `pressure of node ${node}`).toBeLessThan(0.01);
        });
        const humidity = humidityOfSlices(section, month, second);
        section.follow.forEach((rule, slice) => {
          if (rule === null) expect(point.sliceSd[slice]).toBe(section.slices[slice]!.sd);
          // 0.01 Pa of at least 50 Pa is 2·10⁻⁴ of humidity, and no rule changes sd by more than twice itself over all of it.
          else expect(Math.abs(rule(humidity[slice]!) / point.sliceSd[slice]! - 1)).toBeLessThan(0.02);
        });
      }),
      { numRuns: 300, seed: 13788 },
    );
  });
});

describe("the rounds", () => {
  test("settle in every month of 1 000 random sections, held water or not", () => {
    const points = fc
      .sample(questions, { numRuns: 1000, seed: 100 })
      .map(({ section, month, isWet }) => fixedPointOfMonth(section, month, stateOf(isWet), ownSd(section)));
    expect(points.filter(({ converged }) => !converged)).toHaveLength(0);
    expect(points.filter(({ rounds }) => rounds > 1).length / points.length).toBeGreaterThan(0.3);
  });

  test("where it settled, no sd asks to be changed by more than the tolerance", () => {
    fc.assert(
      fc.property(questions, ({ section, month, isWet }) => {
        const point = fixedPointOfMonth(section, month, stateOf(isWet), ownSd(section));
        fc.pre(point.converged);
        section.follow.forEach((rule, slice) => {
          const sd = point.sliceSd[slice]!;
          if (rule !== null)
            expect(Math.abs(rule(point.humidity[slice]!) - sd) / sd).toBeLessThanOrEqual(FIXED_POINT_TOLERANCE);
        });
      }),
      { numRuns: 300, seed: 8 },
    );
  });

  test("a rule that jumps never settles, and that is told", () => {
    const section = varying((humidity) => (humidity > 0.55 ? 0.5 : 5));
    const point = fixedPointOfMonth(section, 0, emptyMonthState(section.intervalSd.length + 1), ownSd(section));
    expect(point).toMatchObject({ converged: false, rounds: 1000 });
  });
});

/** A sheet on the outer side of a layer of sd 1 m, both at 15 °C, room at 80 %, outdoors at 40 %: nothing condenses. */
function varying(rule: (humidity: number) => number): VaryingSection {
  const layers = [
    { resistance: 0, sd: 1 },
    { resistance: 0, sd: 5 },
  ];
  const { line, climate } = drivenSection(layers, sameMonths(15, 0.8), sameMonths(15, 0.4));
  const constant = varyingSection(plainSlices(layers), line, climate, buildUp(layers.map(({ sd }) => sheet(sd))));
  return { ...constant, follow: [null, rule] };
}

describe("closed form: one membrane that varies, the same temperature throughout", () => {
  const rule = (humidity: number): number =>
    valueAt(
      [
        [0.3, 5],
        [0.8, 0.5],
      ],
      humidity,
    );

  test("its sd is the root that bisection finds", () => {
    // The mean humidity in the membrane: half of that at its inner face, 0.8 − 0.4·1/(1 + sd), and of outdoors, 0.4.
    const asked = (sd: number): number => rule((0.8 - 0.4 / (1 + sd) + 0.4) / 2);
    let least = 0.5;
    let most = 5;
    for (let round = 0; round < 100; round += 1) {
      const middle = (least + most) / 2;
      if (asked(middle) > middle) least = middle;
      else most = middle;
    }
    const section = varying(rule);
    const point = fixedPointOfMonth(section, 0, emptyMonthState(3), ownSd(section));
    expect(point.converged).toBe(true);
    expect(point.sliceSd[1]).toBeCloseTo(least, 6);
  });
});

describe("limiting case: no layer varies", () => {
  test("the year is the standard's year, 200 random sections", () => {
    fc.assert(
      fc.property(sections, ({ layers, line, climate, sd }) => {
        const section = varyingSection(
          plainSlices(layers),
          line,
          climate,
          buildUp(layers.map((layer) => sheet(layer.sd))),
        );
        const year = varyingYear(section);
        const driven = { sd, climate };
        const standard = sectionYear(driven, yearFromDry(driven), "standard");
        expect(year.verdict).toBe(standard.verdict);
        const near = (one: number, other: number): void => {
          expect(Math.abs(one - other)).toBeLessThan(1e-9 * Math.max(1, other));
        };
        near(year.carriedOver, standard.carriedOver);
        // Two starts that leave the same to the last digit are told apart by that digit alone.
        if (year.startMonth !== standard.startMonth) return;
        near(year.peak, standard.peak);
        near(year.writtenOff, standard.writtenOff);
      }),
      { numRuns: 200, seed: 200 },
    );
  });
});
