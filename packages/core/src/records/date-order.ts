import type { DateOrder } from "./types.ts";

/**
 * Finds out whether dates such as `13/04/2005` put the day or the month first, from a number over 12.
 *
 * @param dates - date cells of the records
 * @returns the order; null while no date tells (and none is needed when no date has that form)
 */
export function dateOrderOf(dates: readonly string[]): DateOrder | null {
  for (const date of dates) {
    const [, first, second] = NUMBERS_THEN_YEAR.exec(date) ?? [];
    if (first === undefined) continue;
    if (Number(first) > MONTHS) return "day first";
    if (Number(second) > MONTHS) return "month first";
  }
  return null;
}

/**
 * Whether a date needs to be told which of its numbers is the day.
 *
 * @param date - a date cell
 * @returns true for `03/04/2005`
 * @example needsDateOrder("2005-04-03") // false
 */
export function needsDateOrder(date: string): boolean {
  return NUMBERS_THEN_YEAR.test(date);
}

const MONTHS = 12;
const NUMBERS_THEN_YEAR = /^(\d{1,2})[-/](\d{1,2})[-/]\d{4}(?!\d)/;
