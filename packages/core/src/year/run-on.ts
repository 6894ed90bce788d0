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

/** Years after which the question is left open [a] (this project's rule: longer than such a building stands). */
export const MOST_YEARS = 100;

/** Yearly growth of a node that repeats to within this is steady [kg/m²]. */
const SAME_GROWTH = 1e-9;

/**
 * The year repeated until it repeats itself, with drying inside the month.
 *
 * @param section - nodes and climate
 * @param startMonth - 0 to 11; null for a dry section
 * @param firstYear - the first year begun in that month with drying inside the month, where it is known
 * @returns whether it settles, after how many years and at what level [kg/m²]; otherwise the growth per year [kg/m²]
 * Source: beyond ISO 13788:2012 (this project's rule, METHOD.md, Repeated year).
 */
export function runOn(
  section: DrivenSection,
  startMonth: number | null,
  firstYear: SectionYear | null = null,
): RepeatingYear {
  if (startMonth === null) return { settles: true, years: 0, level: 0, growthPerYear: 0 };
  if (firstYear?.verdict === "dries out")
    return { settles: true, years: 1, level: firstYear.carriedOver, growthPerYear: 0 };
  const state = emptyMonthState(section.sd.length);
  const lastMonth = (startMonth + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR;
  let growthBefore: Float64Array | null = null;
  for (let year = 1; year <= MOST_YEARS; year += 1) {
    const before = copyOf(state.held);
    if (year === 1 && firstYear !== null) state.held.set(firstYear.held[lastMonth]!);
    else carryThroughYear(section, startMonth, state);
    const growth = state.held.map((held, node) => held - before[node]!);
    const level = sumOf(state.held);
    if (growth.every((amount) => Math.abs(amount) <= NOTHING_HELD)) {
      return { settles: true, years: year === 1 ? 1 : year - 1, level, growthPerYear: 0 };
    }
    const steady = growthBefore?.every((amount, node) => Math.abs(amount - growth[node]!) <= SAME_GROWTH) ?? false;
    if (steady || year === MOST_YEARS) return { settles: false, years: year, level, growthPerYear: sumOf(growth) };
    growthBefore = growth;
  }
  throw new Error("unreachable: the last year always returns");
}

function carryThroughYear(section: DrivenSection, startMonth: number, state: MonthState): void {
  for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
    carryThroughMonthDryingInside(section, (startMonth + step) % MONTHS_PER_YEAR, state);
  }
}
