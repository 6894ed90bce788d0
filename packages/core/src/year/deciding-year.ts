import type { WaterOfYear } from "./types.ts";

/**
 * The governing year among several starting months: the first that dries out, else the one that leaves most.
 *
 * @param starts - possible starting months, 0 to 11
 * @param yearFrom - calculates the year from one of them
 * @param negligible - tolerance for ties [unit of the amounts]: the earlier start is kept, so rounding never decides
 * @returns the year; null without a starting month
 * Source: ISO 13788:2012 clause 6.4, cases b and c (from memory); starting months by METHOD.md, Water in the year.
 */
export function decidingYear<Year extends Pick<WaterOfYear, "verdict" | "carriedOver">>(
  starts: readonly number[],
  yearFrom: (start: number) => Year,
  negligible: number,
): Year | null {
  let wettest: Year | null = null;
  for (const start of starts) {
    const year = yearFrom(start);
    if (year.verdict === "dries out") return year;
    if (wettest === null || year.carriedOver > wettest.carriedOver + negligible) wettest = year;
  }
  return wettest;
}
