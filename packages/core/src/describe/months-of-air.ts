import { saturationPressure } from "../air/saturation-pressure.ts";
import { MONTH_NAMES } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { MonthOfAir } from "../result/types.ts";

/**
 * Twelve months of air in the shape of the result.
 *
 * @param months - temperature [°C] and vapour pressure [Pa], January first
 * @returns a row for each month, with relative humidity as a fraction
 */
export function monthsOfAir(months: AirMonths): MonthOfAir[] {
  return MONTH_NAMES.map((month, index) => {
    const temperature = months.temperature[index]!;
    const vapourPressure = months.vapourPressure[index]!;
    return { month, temperature, relativeHumidity: vapourPressure / saturationPressure(temperature), vapourPressure };
  });
}
