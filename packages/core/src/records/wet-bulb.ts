import { saturationPressure } from "../air/saturation-pressure.ts";

/**
 * Psychrometer coefficients of a ventilated wet bulb: over water [1/K], its relative rise with temperature [1/K], over
 * ice [1/K]. Source: WMO-No. 8, Annex 4.B (from memory).
 */
const COEFFICIENT_OVER_WATER = 6.53e-4;
const RISE_WITH_TEMPERATURE = 9.44e-4;
const COEFFICIENT_OVER_ICE = 5.75e-4;

/**
 * Standard atmosphere: pressure at sea level [Pa], fall of temperature with height over the temperature at sea level
 * [1/m], exponent [–]. Source: ISO 2533 (from memory).
 */
const PRESSURE_AT_SEA_LEVEL = 101_325;
const RELATIVE_FALL = 2.25577e-5;
const EXPONENT = 5.25588;

/**
 * Vapour pressure from dry-bulb and wet-bulb temperature.
 *
 * @param temperature - dry bulb θ [°C]
 * @param wetBulb - ventilated wet bulb [°C], at most θ; below 0 °C its wick is taken as frozen
 * @param airPressure - p [Pa], above 0
 * @returns e [Pa]; 0 or less when the two temperatures cannot occur together
 * @throws RangeError when the air pressure is not above 0
 * Source: WMO-No. 8, Annex 4.B, psychrometric formula (from memory).
 * @example vapourPressureFromWetBulb(20, 15, 101325) // 1368.90
 */
export function vapourPressureFromWetBulb(temperature: number, wetBulb: number, airPressure: number): number {
  if (!(airPressure > 0)) throw new RangeError(`air pressure must be above 0 Pa, was ${airPressure}`);
  const coefficient =
    wetBulb >= 0 ? COEFFICIENT_OVER_WATER * (1 + RISE_WITH_TEMPERATURE * wetBulb) : COEFFICIENT_OVER_ICE;
  const depression = temperature - wetBulb;
  return saturationPressure(wetBulb) - coefficient * airPressure * depression;
}

/**
 * Mean air pressure at a height.
 *
 * @param altitude - height above the sea [m], −500 to 11 000
 * @returns p [Pa]
 * @throws RangeError when the height is not in that range
 * Source: ISO 2533 standard atmosphere, lowest layer (from memory).
 * @example airPressureAt(1000) // 89874.6
 */
export function airPressureAt(altitude: number): number {
  if (!(altitude >= LOWEST && altitude <= TOP_OF_LOWEST_LAYER)) {
    throw new RangeError(`altitude must lie between ${LOWEST} and ${TOP_OF_LOWEST_LAYER} m, was ${altitude}`);
  }
  return PRESSURE_AT_SEA_LEVEL * (1 - RELATIVE_FALL * altitude) ** EXPONENT;
}

const LOWEST = -500;
const TOP_OF_LOWEST_LAYER = 11_000;
