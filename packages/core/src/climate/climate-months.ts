import { vapourPressure } from "../air/humidity.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkClimate } from "../given/surroundings.ts";
import type { AirMonths, OutdoorClimate } from "../project/types.ts";

/**
 * Outdoor air, month by month: temperature and vapour pressure.
 *
 * @param climate - twelve monthly means of temperature [°C] and relative humidity (fraction)
 * @returns temperature [°C] and vapour pressure [Pa], January first; saturation is over ice below 0 °C
 * Source: ISO 13788:2012 clause 4.2 (from memory): pe = φe · psat(θe) of the monthly means.
 */
export function climateMonths(climate: OutdoorClimate): AirMonths {
  refuseFaults(checkClimate(climate, ["climate"]));
  const pressures = climate.temperature.map((temperature, month) =>
    vapourPressure(climate.relativeHumidity[month]!, temperature),
  );
  return { temperature: climate.temperature, vapourPressure: pressures };
}
