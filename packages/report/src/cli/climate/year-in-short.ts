import { DAYS_IN_MONTH, MONTH_NAMES, type OutdoorClimate } from "@warmside/core";

/** A climate's year in three figures. */
export interface YearInShort {
  coldest: MonthInShort;
  warmest: MonthInShort;
  /** Mean of the year by days [°C]. */
  mean: number;
}

export interface MonthInShort {
  month: string;
  /** [°C] */
  temperature: number;
  /** Fraction. */
  relativeHumidity: number;
}

/**
 * The coldest and the warmest month of a climate and its annual mean.
 *
 * @param climate - twelve monthly means
 * @returns the first of equal months; the mean weighted by the days of the months
 */
export function yearInShort(climate: OutdoorClimate): YearInShort {
  const { temperature } = climate;
  const monthOf = (degrees: number): MonthInShort => {
    const index = temperature.indexOf(degrees);
    return { month: MONTH_NAMES[index]!, temperature: degrees, relativeHumidity: climate.relativeHumidity[index]! };
  };
  const days = DAYS_IN_MONTH.reduce((sum, month) => sum + month, 0);
  const degreeDays = temperature.reduce((sum, degrees, month) => sum + degrees * DAYS_IN_MONTH[month]!, 0);
  return {
    coldest: monthOf(Math.min(...temperature)),
    warmest: monthOf(Math.max(...temperature)),
    mean: degreeDays / days,
  };
}
