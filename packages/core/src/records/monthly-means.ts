import { saturationPressure } from "../air/saturation-pressure.ts";
import { MONTH_NAMES } from "../constants.ts";
import type { MonthSums } from "./month-sums.ts";
import type { MonthOfRecords } from "./types.ts";

/** Decimals of a monthly mean temperature. */
export const TEMPERATURE_DECIMALS = 2;

/**
 * Monthly means: the mean temperature of the readings, the mean of their own vapour pressures, and the relative
 * humidity that gives this vapour pressure at the mean temperature. Each reading counts equally, whatever its year.
 *
 * @param sums - every calendar month with at least one reading
 * @param expected - readings that each month should have, January first
 * @returns twelve months, January first
 * Source: ISO 13788:2012 clause 4.2 (from memory): monthly means of temperature and vapour pressure.
 */
export function monthlyMeans(sums: MonthSums, expected: readonly number[]): MonthOfRecords[] {
  return MONTH_NAMES.map((_, month) => {
    const years = [...sums.months.values()].filter((sum) => sum.month === month + 1);
    const used = total(years.map((sum) => sum.used));
    const meanTemperature = total(years.map((sum) => sum.temperature)) / used;
    const vapourPressure = total(years.map((sum) => sum.vapourPressure)) / used;
    const temperature = Number(meanTemperature.toFixed(TEMPERATURE_DECIMALS));
    const partOfSaturation = vapourPressure / saturationPressure(temperature);
    return {
      temperature,
      vapourPressure,
      relativeHumidity: Math.min(1, partOfSaturation),
      heldAtSaturation: partOfSaturation > 1,
      used,
      expected: expected[month]!,
    };
  });
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
