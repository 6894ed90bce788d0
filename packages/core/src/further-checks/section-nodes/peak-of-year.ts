import { MONTH_NAMES } from "../../constants.ts";
import type { Peak } from "../../result/types.ts";
import type { SectionYear } from "../../year/types.ts";

/** The maximum accumulation at a month's end in a year, with the month's name. */
export function peakOfYear(year: Pick<SectionYear, "peak" | "peakMonth">): Peak {
  return { amount: year.peak, month: year.peakMonth === null ? null : MONTH_NAMES[year.peakMonth]! };
}
