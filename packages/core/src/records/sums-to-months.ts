import { MONTH_NAMES, SECONDS_PER_DAY } from "../constants.ts";
import type { Reading } from "../problems/types.ts";
import type { RecordColumns } from "./choose-columns.ts";
import { completenessOf, intervalOf } from "./completeness.ts";
import type { Moment } from "./moment.ts";
import type { MonthSums } from "./month-sums.ts";
import { monthlyMeans } from "./monthly-means.ts";
import {
  LEAST_COMPLETE,
  LONGEST_INTERVAL,
  MOST_CONTRADICTING,
  MOST_SURPLUS,
  SENSOR_OVERSHOOT,
} from "./record-limits.ts";
import type { RecordProblems } from "./record-problems.ts";
import type { RecordMonths } from "./types.ts";

/**
 * Turns the sums of records into twelve months, or says why they cannot represent a place's climate.
 *
 * @param sums - what was read
 * @param columns - the columns, for the check of the humidity's unit
 * @param columnsRead - the columns in words
 * @param problems - problems of single rows, to which those of the whole are added
 * @returns the months, or every problem
 */
export function sumsToMonths(
  sums: MonthSums,
  columns: RecordColumns,
  columnsRead: string,
  problems: RecordProblems,
): Reading<RecordMonths> {
  const refused = (): Reading<RecordMonths> => ({ ok: false, problems: problems.list() });
  const used = [...sums.months.values()].reduce((total, month) => total + month.used, 0);
  if (used === 0) {
    if (problems.none()) problems.note("records-no-readings", null, null, { rows: sums.rows });
    return refused();
  }
  noteFractions(sums, columns, problems);
  noteContradictions(sums, problems);
  const interval = intervalOf(sums.steps);
  if (interval === null) problems.note("records-one-reading", null, null);
  else if (interval > LONGEST_INTERVAL) {
    problems.note("records-interval", null, null, { days: Number((interval / SECONDS_PER_DAY).toFixed(1)) });
  }
  if (interval === null || interval > LONGEST_INTERVAL) return refused();
  const { expected, typicalYear } = completenessOf(sums, interval);
  const present = MONTH_NAMES.map((_, month) => usedIn(sums, month + 1) + sums.refused[month]!);
  noteIncompleteMonths(present, expected, problems);
  noteSurplus(present, expected, interval, problems);
  if (!problems.none()) return refused();
  const months = monthlyMeans(sums, expected);
  const missing = months.reduce((total, month) => total + Math.max(0, month.expected - month.used), 0);
  const value: RecordMonths = {
    months,
    firstDay: dayInWords(sums.first!),
    lastDay: dayInWords(sums.last!),
    typicalYear,
    interval,
    rows: sums.rows,
    used,
    missing,
    repeated: sums.repeated,
    contradicting: sums.contradicting,
    countedAsSaturated: sums.countedAsSaturated,
    columnsRead,
  };
  return { ok: true, value };
}

function noteFractions(sums: MonthSums, columns: RecordColumns, problems: RecordProblems): void {
  const greatest = sums.greatestWrittenHumidity;
  const inPercent = columns.humidity.role === "relative humidity" && columns.humidity.unit === "%";
  if (inPercent && greatest <= 1 + SENSOR_OVERSHOOT)
    problems.note("records-humidity-fraction", null, null, { greatest });
}

function noteContradictions(sums: MonthSums, problems: RecordProblems): void {
  if (sums.contradicting <= MOST_CONTRADICTING * sums.rows) return;
  problems.note("records-contradicting", null, null, { contradicting: sums.contradicting, rows: sums.rows });
}

function noteIncompleteMonths(present: readonly number[], expected: readonly number[], problems: RecordProblems): void {
  const months = MONTH_NAMES.flatMap((name, month) => {
    const share = present[month]! / expected[month]!;
    return share < LEAST_COMPLETE ? [`${name} ${present[month]!} of ${expected[month]!}`] : [];
  });
  if (months.length > 0)
    problems.note("records-incomplete", null, null, { months, leastPercent: LEAST_COMPLETE * 100 });
}

function noteSurplus(
  present: readonly number[],
  expected: readonly number[],
  interval: number,
  problems: RecordProblems,
): void {
  const month = present.findIndex((count, index) => count > expected[index]! * (1 + MOST_SURPLUS));
  if (month === -1) return;
  const details = { month: MONTH_NAMES[month]!, present: present[month]!, expected: expected[month]!, interval };
  problems.note("records-interval-changes", null, null, details);
}

function usedIn(sums: MonthSums, month: number): number {
  return [...sums.months.values()].reduce((total, sum) => total + (sum.month === month ? sum.used : 0), 0);
}

/** A day as `2000-01-31`, or as `01-31` if the records do not give the year. */
function dayInWords({ year, month, day }: Moment): string {
  const monthAndDay = `${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return year === null ? monthAndDay : `${String(year).padStart(4, "0")}-${monthAndDay}`;
}
