import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { VAPOUR_PERMEABILITY_OF_AIR } from "../../packages/core/src/constants.ts";
import type { VaryingSection } from "../../packages/core/src/further-checks/variable-resistance/varying-section.ts";
import { varyingYear } from "../../packages/core/src/further-checks/variable-resistance/varying-year.ts";
import {
  carryThroughMonth,
  carryThroughMonthDryingInside,
  type DrivenSection,
  emptyMonthState,
  secondsOfMonth,
} from "../../packages/core/src/year/month-balance.ts";
import { sumOf } from "../../packages/core/src/year/section-year.ts";
import { type DryingRun, followTrappedWater } from "../../packages/core/src/year/trapped-water.ts";
import { drivenSection } from "../published/plain-section.ts";
import { between, months, sections } from "../published/random-sections.ts";
import { varyingSections } from "./varying-sections.ts";

/** Water may be lost or made by this part of what moved, no more (the project's own bar). */
const CONSERVED = 1e-9;

const trapped = fc
  .tuple(sections, between(0.01, 5), months, between(0, 1))
  .filter(([section]) => section.sd.length > 2)
  .map(([section, amount, startMonth, place]) => {
    const inner = section.sd.length - 2;
    return { section, amount, startMonth, node: 1 + Math.min(inner - 1, Math.floor(place * inner)) };
  });

const follow = ({
  section,
  node,
  amount,
  startMonth,
}: {
  section: DrivenSection;
  node: number;
  amount: number;
  startMonth: number;
}): DryingRun => followTrappedWater(section, node, amount, startMonth);

describe("trapped water, 400 random sections, places and months", () => {
  test("what was put in is what left to both sides and what is still there", () => {
    fc.assert(
      fc.property(trapped, (given) => {
        const run = follow(given);
        const left = sumOf(run.held[run.held.length - 1]!);
        const moved = Math.max(given.amount, Math.abs(run.toRoom), Math.abs(run.toFarSide));
        expect(Math.abs(given.amount - run.toRoom - run.toFarSide - left)).toBeLessThan(CONSERVED * moved);
      }),
      { numRuns: 400, seed: 7 },
    );
  });

  test("the day it is dry is the first: a second before some node holds 1 g/m², a second after none does", () => {
    fc.assert(
      fc.property(trapped, (given) => {
        const { daysToDry } = follow(given);
        fc.pre(daysToDry !== null && daysToDry > 1);
        const seconds = daysToDry! * 86_400;
        expect(fullestAfter(given, seconds - 1)).toBeGreaterThanOrEqual(0.001);
        expect(fullestAfter(given, seconds + 1)).toBeLessThanOrEqual(0.001 * (1 + 1e-3));
      }),
      { numRuns: 200, seed: 77 },
    );
  });

  test("mirrored, room and far side change places", () => {
    fc.assert(
      fc.property(trapped, (given) => {
        const { layers, inside, outside } = given.section;
        const mirrored = drivenSection([...layers].reverse(), outside, inside, 0.04, 0.13);
        const last = given.section.sd.length - 1;
        fc.pre(mirrored.sd.length === last + 1);
        const run = follow(given);
        const other = follow({ ...given, section: mirrored, node: last - given.node });
        const moved = Math.max(given.amount, Math.abs(run.toRoom), Math.abs(run.toFarSide));
        expect(Math.abs(run.toRoom - other.toFarSide) / moved).toBeLessThan(1e-6);
        expect(Math.abs(run.mostHeldElsewhere - other.mostHeldElsewhere)).toBeLessThan(1e-6);
        if (run.daysToDry !== null)
          expect(other.daysToDry! / Math.max(run.daysToDry, 1)).toBeCloseTo(
            run.daysToDry / Math.max(run.daysToDry, 1),
            5,
          );
      }),
      { numRuns: 200, seed: 777 },
    );
  });

  test("most held elsewhere is at least what stands at any other node at any month's end", () => {
    fc.assert(
      fc.property(trapped, (given) => {
        const run = follow(given);
        const most = Math.max(...run.held.flatMap((held) => [...held].filter((_, node) => node !== given.node)));
        expect(run.mostHeldElsewhere).toBeGreaterThanOrEqual(most - 1e-12);
      }),
      { numRuns: 200, seed: 7777 },
    );
  });

  test("and they are worth it: some dry, some do not, some condense elsewhere", () => {
    const runs = fc.sample(trapped, { numRuns: 400, seed: 7 }).map(follow);
    const part = (is: (run: DryingRun) => boolean): number => runs.filter(is).length / runs.length;
    expect(part(({ daysToDry }) => daysToDry === null)).toBeGreaterThan(0.05);
    expect(part(({ daysToDry }) => daysToDry !== null)).toBeGreaterThan(0.1);
    expect(part(({ mostHeldElsewhere }) => mostHeldElsewhere > 0.01)).toBeGreaterThan(0.1);
  });
});

/** The most that any node holds after so many seconds, month by month without any watching. */
function fullestAfter(
  given: { section: DrivenSection; node: number; amount: number; startMonth: number },
  seconds: number,
): number {
  const state = emptyMonthState(given.section.sd.length);
  state.held[given.node] = given.amount;
  let left = seconds;
  for (let month = given.startMonth; left > 0; month = (month + 1) % 12) {
    const stretch = Math.min(left, secondsOfMonth(month));
    carryThroughMonthDryingInside(given.section, month, state, stretch);
    left -= stretch;
  }
  return Math.max(...state.held);
}

describe("resistance by humidity, 200 random sections", () => {
  test("every month of the year gains what flowed in, what was written off at its end counted", () => {
    fc.assert(
      fc.property(varyingSections, (section: VaryingSection) => {
        const year = varyingYear(section);
        fc.pre(year.startMonth !== null);
        let writtenOff = 0;
        for (let step = 0; step < 12; step += 1) {
          const month = (year.startMonth! + step) % 12;
          const { driven } = year.months[month]!;
          const before = year.held[(month + 11) % 12]!;
          const state = emptyMonthState(driven.sd.length);
          if (step > 0) state.held.set(before);
          const heldBefore = sumOf(state.held);
          carryThroughMonth(driven, month, state);
          const { pressure } = state;
          const last = driven.sd.length - 1;
          const flowIn = (pressure[0]! - pressure[1]!) / (driven.sd[1]! - driven.sd[0]!);
          const flowOut = (pressure[last - 1]! - pressure[last]!) / (driven.sd[last]! - driven.sd[last - 1]!);
          const gained = VAPOUR_PERMEABILITY_OF_AIR * (flowIn - flowOut) * secondsOfMonth(month);
          const moved = VAPOUR_PERMEABILITY_OF_AIR * (Math.abs(flowIn) + Math.abs(flowOut)) * secondsOfMonth(month);
          expect(sumOf(year.held[month]!)).toBeCloseTo(sumOf(state.held), 12);
          expect(Math.abs(sumOf(state.held) - heldBefore - gained - state.writtenOff)).toBeLessThan(
            CONSERVED * Math.max(1e-3, moved),
          );
          writtenOff += state.writtenOff;
        }
        expect(Math.abs(writtenOff - year.writtenOff)).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 70 },
    );
  });
});
