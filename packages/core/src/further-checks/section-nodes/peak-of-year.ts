import { MONTH_NAMES } from "../../constants.ts";
import type { Peak } from "../../result/types.ts";
import type { SectionYear } from "../../year/types.ts";

/** The greatest month-end total of a year, with its month's name. */
export function peakOfYear(year: Pick<SectionYear, "peak" | "peakMonth">): Peak {
  return { amount: year.peak, month: year.peakMonth === null ? null : MONTH_NAMES[year.peakMonth]! };
}
