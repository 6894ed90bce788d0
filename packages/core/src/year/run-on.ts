import { MONTHS_PER_YEAR } from "../constants.ts";
import { copyOf } from "../vapour/number-lists.ts";
import {
  carryThroughMonthDryingInside,
  type DrivenSection,
  emptyMonthState,
  type MonthState,
} from "./month-balance.ts";
import { NOTHING_HELD, sumOf } from "./section-year.ts";
import type { RepeatingYear, SectionYear } from "./types.ts";

/** Most years calculated [a] (this project's rule: longer than such a building stands). */
export const MOST_YEARS = 100;

/** Mean years between two 1-in-10 years: water still there after them counts as staying [a] (this project's rule). */
const YEARS_BETWEEN = 10;

/** A node's yearly growth is steady when it repeats to within this [kg/m²]. */
const SAME_GROWTH = 1e-9;

/**
 * Repeats the year, with drying within the month, until its water no longer changes. A 1-in-10 year is not repeated:
 * its residual moisture is carried through the given years that follow it.
 *
 * @param section - nodes and climate of the first year
 * @param startMonth - 0 to 11; null for a dry section
 * @param firstYear - the first year from that month with drying within the month, where it is known
 * @param after - nodes and climate of the years that follow (default: the same year again)
 * @returns whether it settles, after how many years and at what level [kg/m²], 0 once a following year has dried all;
 *   otherwise the growth per year [kg/m²], always that of a repeated year
 * Source: METHOD.md, Repeated year and One-in-ten years (beyond ISO 13788:2012).
 */
export function runOn(
  section: DrivenSection,
  startMonth: number | null,
  firstYear: SectionYear | null = null,
  after: DrivenSection = section,
): RepeatingYear {
  if (startMonth === null) return { settles: true, years: 0, level: 0, growthPerYear: 0 };
  if (firstYear?.verdict === "dries out")
    return { settles: true, years: 1, level: firstYear.carriedOver, growthPerYear: 0 };
  const state = emptyMonthState(section.sd.length);
  const lastMonth = (startMonth + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR;
  let growthBefore: Float64Array | null = null;
  for (let year = 1; year <= MOST_YEARS; year += 1) {
    const before = copyOf(state.held);
    const isOfItsOwn = year === 1 && after !== section;
    if (year === 1 && firstYear !== null) state.held.set(firstYear.held[lastMonth]!);
    else {
      const least = carryThroughYear(year === 1 ? section : after, startMonth, state);
      const isCleared = !isOfItsOwn && after !== section && least <= NOTHING_HELD;
      if (isCleared) return { settles: true, years: year, level: 0, growthPerYear: 0 };
    }
    const growth = state.held.map((held, node) => held - before[node]!);
    const level = sumOf(state.held);
    if (growth.every((amount) => Math.abs(amount) <= NOTHING_HELD)) {
      return { settles: true, years: year === 1 ? 1 : year - 1, level, growthPerYear: 0 };
    }
    if (isOfItsOwn) continue;
    const steady = growthBefore?.every((amount, node) => Math.abs(amount - growth[node]!) <= SAME_GROWTH) ?? false;
    const isStillDrying = after !== section && sumOf(growth) < 0;
    if (isStillDrying && year > YEARS_BETWEEN) return { settles: true, years: year, level, growthPerYear: 0 };
    if ((steady && !isStillDrying) || year === MOST_YEARS)
      return { settles: false, years: year, level, growthPerYear: sumOf(growth) };
    growthBefore = growth;
  }
  throw new Error("unreachable: the last year always returns");
}

/** Carries the water through a year; returns the least total at a month's end [kg/m²]. */
function carryThroughYear(section: DrivenSection, startMonth: number, state: MonthState): number {
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
    carryThroughMonthDryingInside(section, (startMonth + step) % MONTHS_PER_YEAR, state);
    least = Math.min(least, sumOf(state.held));
  }
  return least;
}
