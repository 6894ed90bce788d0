import type { TimeColumns } from "./choose-columns.ts";
import { calendarDay, type Moment, type MomentFault, readMoment, secondOfDay } from "./moment.ts";
import type { DateOrder } from "./types.ts";

/** A row's time, or what is wrong with it and in which cell. */
export type TimeOfRow = { moment: Moment } | { fault: MomentFault; cell: string };

/**
 * Reads the time of a row's reading.
 *
 * @param cells - the row
 * @param columns - the columns of date and time
 * @param order - which number comes first in `03/04/2005`; null when not known
 * @returns the moment, or what is wrong
 */
export function readTime(cells: readonly string[], columns: TimeColumns, order: DateOrder | null): TimeOfRow {
  return columns.kind === "date" ? fromDate(cells, columns, order) : fromParts(cells, columns);
}

function fromDate(
  cells: readonly string[],
  columns: TimeColumns & { kind: "date" },
  order: DateOrder | null,
): TimeOfRow {
  const cell = cells[columns.date]!;
  const moment = readMoment(cell, order);
  if (typeof moment === "string") return { fault: moment, cell };
  if (columns.time === null) return { moment };
  const timeCell = cells[columns.time]!;
  const second = secondOfDay(timeCell);
  return second === null ? { fault: "time", cell: timeCell } : { moment: { ...moment, second } };
}

function fromParts(cells: readonly string[], columns: TimeColumns & { kind: "parts" }): TimeOfRow {
  const yearCell = columns.year === null ? null : cells[columns.year]!;
  const cell = [yearCell, cells[columns.month]!, cells[columns.day]!].filter((part) => part !== null).join(" ");
  if (yearCell !== null && !FOUR_DIGITS.test(yearCell)) {
    return { fault: TWO_DIGITS.test(yearCell) ? "two-digit year" : "date", cell };
  }
  if (!ONE_OR_TWO_DIGITS.test(cells[columns.month]!) || !ONE_OR_TWO_DIGITS.test(cells[columns.day]!)) {
    return { fault: "date", cell };
  }
  const year = yearCell === null ? null : Number(yearCell);
  const day = calendarDay(year, Number(cells[columns.month]!), Number(cells[columns.day]!));
  if (day === null) return { fault: "day of month", cell };
  const hour = columns.hour === null ? "0" : cells[columns.hour]!;
  const clock = columns.minute === null ? hour : `${hour}:${cells[columns.minute]!.padStart(2, "0")}`;
  const second = secondOfDay(clock);
  return second === null ? { fault: "time", cell: clock } : { moment: { ...day, second } };
}

const FOUR_DIGITS = /^\d{4}$/;
const TWO_DIGITS = /^\d{2}$/;
const ONE_OR_TWO_DIGITS = /^\d{1,2}$/;
