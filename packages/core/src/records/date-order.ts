import { MOST_ROWS_BEFORE_ORDER } from "./record-limits.ts";
import type { DateOrder } from "./types.ts";

/** Finds out whether dates such as `13/04/2005` put the day or the month first. */
export interface OrderFinder {
  /** Takes the date cells of the next rows. */
  take(dates: readonly string[]): void;
  /** Whether rows need wait no longer: the order is known, is not needed, or is so late that the user must be asked. */
  settled(): boolean;
  /** The order; null if no date showed it. */
  order(): DateOrder | null;
}

/**
 * Makes a finder.
 *
 * @param stated - the order, if the user states it
 * @returns the finder
 */
export function createOrderFinder(stated: DateOrder | null): OrderFinder {
  let order = stated;
  let needed = false;
  let seen = 0;
  return {
    take(dates): void {
      for (const date of dates) {
        const [, first, second] = NUMBERS_THEN_YEAR.exec(date) ?? [];
        seen += 1;
        if (first === undefined) continue;
        needed = true;
        if (Number(first) > MONTHS) order ??= "day first";
        else if (Number(second) > MONTHS) order ??= "month first";
        if (order !== null) return;
      }
    },
    settled: () => order !== null || (seen > 0 && !needed) || seen >= MOST_ROWS_BEFORE_ORDER,
    order: () => order,
  };
}

const MONTHS = 12;
const NUMBERS_THEN_YEAR = /^(\d{1,2})[-/](\d{1,2})[-/]\d{4}(?!\d)/;
