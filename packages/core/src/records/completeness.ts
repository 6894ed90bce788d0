import { DAYS_IN_MONTH, MONTHS_PER_YEAR, SECONDS_PER_DAY } from "../constants.ts";
import { daysInMonth } from "./moment.ts";
import { type MonthSums, secondsFromEpoch } from "./month-sums.ts";

/** What a complete file of records would hold. */
export interface Completeness {
  /** Time between readings [s]. */
  interval: number;
  /** Readings that each calendar month should have, January first. */
  expected: number[];
  typicalYear: boolean;
}

/**
 * The time between readings: the most frequent step between rows; of equally frequent steps, the shorter.
 *
 * @param steps - how often each step [s] occurred
 * @returns the time [s]; null when there are no two rows
 */
export function intervalOf(steps: ReadonlyMap<number, number>): number | null {
  const ordered = [...steps].sort(([one, oneCount], [other, otherCount]) => otherCount - oneCount || one - other);
  return ordered[0]?.[0] ?? null;
}

/**
 * How many readings each calendar month should have in the period of the records. Every month from the first reading
 * to the last counts in full, except that the first counts from the first reading and the last up to the last one. But
 * at least one whole month is expected of each calendar month. A typical year (each month once, from different years,
 * or no year named) should have twelve whole months.
 *
 * @param sums - what was read
 * @param interval - time between readings [s]
 * @returns the readings expected
 */
export function completenessOf(sums: MonthSums, interval: number): Completeness {
  const readingsPerDay = SECONDS_PER_DAY / interval;
  const typicalYear = isTypicalYear(sums);
  const wholeMonths = DAYS_IN_MONTH.map((days) => Math.floor(days * readingsPerDay));
  if (typicalYear) return { interval, expected: wholeMonths, typicalYear };
  const expected = Array<number>(MONTHS_PER_YEAR).fill(0);
  const first = sums.first!;
  const last = sums.last!;
  const firstMonth = first.year! * MONTHS_PER_YEAR + first.month - 1;
  const lastMonth = last.year! * MONTHS_PER_YEAR + last.month - 1;
  for (let index = firstMonth; index <= lastMonth; index += 1) {
    const year = Math.floor(index / MONTHS_PER_YEAR);
    const month = index % MONTHS_PER_YEAR;
    const begin = secondsFromEpoch({ year, month: month + 1, day: 1, second: 0 });
    const end = begin + daysInMonth(year, month + 1) * SECONDS_PER_DAY;
    const from = index === firstMonth ? secondsFromEpoch(first) : begin;
    const upTo = index === lastMonth ? Math.min(end, secondsFromEpoch(last) + interval) : end;
    expected[month] = expected[month]! + Math.round((upTo - from) / interval);
  }
  return { interval, expected: expected.map((count, month) => Math.max(count, wholeMonths[month]!)), typicalYear };
}

/** Whether each month comes from one year only, but not all from the same twelve months; or no year is named. */
function isTypicalYear(sums: MonthSums): boolean {
  if (sums.first!.year === null) return true;
  const months = [...sums.months.keys()];
  const calendarMonths = new Set(months.map((key) => key % MONTHS_PER_YEAR));
  const once = months.length === MONTHS_PER_YEAR && calendarMonths.size === MONTHS_PER_YEAR;
  return once && Math.max(...months) - Math.min(...months) >= MONTHS_PER_YEAR;
}
