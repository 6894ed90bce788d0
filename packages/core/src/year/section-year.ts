import { MONTHS_PER_YEAR } from "../constants.ts";
import { copyOf, zeros } from "../vapour/number-lists.ts";
import { decidingYear } from "./deciding-year.ts";
import {
  carryThroughMonth,
  carryThroughMonthDryingInside,
  type DrivenSection,
  emptyMonthState,
  type MonthState,
  WET_NODE,
} from "./month-balance.ts";
import { NO_WATER, type SectionYear } from "./types.ts";
import { type DryYear, startingMonths } from "./wet-months.ts";

/** Amounts below this count as zero [kg/m²]: 1 mg/m² (this project's rule). */
export const NOTHING_HELD = 1e-6;

/** How water is carried through a month: as in the standard, or with drying within the month. */
export type MonthRule = "standard" | "drying inside the month";

/**
 * The year of a section: dry, or begun in the first month that lets it dry out, or else in the one that leaves most.
 *
 * @param section - nodes and climate
 * @param dryYear - which months add water to a dry section
 * @param rule - how water is carried through a month
 * @param standard - the standard's year, where it is known: the year with drying within the month is the same until the
 *   standard's monthly step first ignores drying
 * @returns verdict, peak, residual moisture and every month's water
 * Source: ISO 13788:2012 clause 6.4, cases a, b, c (from memory); starting months by METHOD.md, Water in the year.
 */
export function sectionYear(
  section: DrivenSection,
  dryYear: DryYear,
  rule: MonthRule,
  standard: SectionYear | null = null,
): SectionYear {
  const starts = startingMonths(dryYear.wet);
  const yearFrom = (start: number): SectionYear => {
    const known = { dryYear, sameUntilWrittenOff: standard?.startMonth === start ? standard : null };
    return runYear(section, start, rule, emptyMonthState(section.sd.length), known);
  };
  return decidingYear(starts, yearFrom, NOTHING_HELD) ?? dryResult(section.sd.length, dryYear);
}

/**
 * Twelve months from empty, beginning in a given month.
 *
 * @param section - nodes and climate
 * @param startMonth - 0 to 11
 * @param rule - how water is carried through a month
 * @param state - water held at the start; changed in place (default: none)
 * @param known - months that need not be calculated again
 * @returns the year, its lists in calendar order
 * Source: ISO 13788:2012 clause 6.4 (from memory).
 */
export function runYear(
  section: DrivenSection,
  startMonth: number,
  rule: MonthRule,
  state: MonthState = emptyMonthState(section.sd.length),
  known: KnownMonths = NOTHING_KNOWN,
): SectionYear {
  const nodes = section.sd.length;
  const nothing = zeros(nodes);
  const held: Float64Array[] = new Array(MONTHS_PER_YEAR);
  const change: Float64Array[] = new Array(MONTHS_PER_YEAR);
  const pressure: Float64Array[] = new Array(MONTHS_PER_YEAR);
  const carry = rule === "standard" ? carryThroughMonth : carryThroughMonthDryingInside;
  const { dryYear } = known;
  let same = known.sameUntilWrittenOff;
  let before = copyOf(state.held);
  let peak = 0;
  let peakMonth: number | null = null;
  let lastWet = -1;
  let total = 0;
  let firstWrittenOff: number | null = null;
  for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
    const month = (startMonth + step) % MONTHS_PER_YEAR;
    if (same?.firstWrittenOff === month) same = null;
    if (same !== null) {
      held[month] = same.held[month]!;
      change[month] = same.change[month]!;
      pressure[month] = same.pressure[month]!;
      before = held[month]!;
      state.held.set(before);
      total = sumOf(before);
    } else if (dryYear?.adds[month] === 0 && !anyWet(before)) {
      held[month] = before;
      change[month] = nothing;
      pressure[month] = dryYear.pressure[month]!;
    } else {
      state.pressure = zeros(nodes);
      carry(section, month, state);
      const after = zeros(nodes);
      const changed = zeros(nodes);
      const now = state.held;
      total = 0;
      for (let node = 0; node < nodes; node += 1) {
        const amount = now[node]!;
        after[node] = amount;
        changed[node] = amount - before[node]!;
        total += amount;
      }
      held[month] = after;
      change[month] = changed;
      pressure[month] = state.pressure;
      before = after;
    }
    if (firstWrittenOff === null && state.writtenOff > 0) firstWrittenOff = month;
    if (total > peak) {
      peak = total;
      peakMonth = month;
    }
    if (total > NOTHING_HELD) lastWet = step;
  }
  const driesOut = total <= NOTHING_HELD;
  return {
    verdict: driesOut ? "dries out" : "stays wet",
    startMonth,
    peak,
    peakMonth,
    carriedOver: total,
    dryBy: driesOut ? (startMonth + lastWet + 1) % MONTHS_PER_YEAR : null,
    writtenOff: state.writtenOff,
    firstWrittenOff,
    held,
    change,
    pressure,
  };
}

/** Months that need not be calculated again. */
interface KnownMonths {
  /** The months of the dry section, used where a month finds the section dry and adds no water. */
  dryYear: DryYear | null;
  /** A year from the same start, used up to the month before it first sets a node to zero. */
  sameUntilWrittenOff: SectionYear | null;
}

const NOTHING_KNOWN: KnownMonths = { dryYear: null, sameUntilWrittenOff: null };

function anyWet(held: Float64Array): boolean {
  for (let node = 0; node < held.length; node += 1) if (held[node]! > WET_NODE) return true;
  return false;
}

function dryResult(nodes: number, { pressure }: DryYear): SectionYear {
  const none = new Array<Float64Array>(MONTHS_PER_YEAR).fill(zeros(nodes));
  const { verdict, startMonth, peak, peakMonth, carriedOver, dryBy } = NO_WATER;
  return {
    verdict, startMonth, peak, peakMonth, carriedOver, dryBy, writtenOff: 0, firstWrittenOff: null,
    held: none, change: none, pressure,
  }; // biome-ignore format: one row a thing
}

/** Sum of a list [unit of its values]. */
export function sumOf(values: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < values.length; index += 1) sum += values[index]!;
  return sum;
}
