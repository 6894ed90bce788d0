import type { WaterOfYear } from "./types.ts";

/**
 * The year that counts among those begun in different months: the first that dries out, otherwise the one that leaves most.
 *
 * @param starts - months in which it may begin, 0 to 11
 * @param yearFrom - works out the year from one of them
 * @param negligible - tolerance for ties: the earlier start is kept, so that rounding never chooses [unit of the amounts]
 * @returns the year; null without a start
 * Source: ISO 13788:2012 clause 6.4, cases b and c (from memory); candidates for the start by METHOD.md, Water in the year.
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
