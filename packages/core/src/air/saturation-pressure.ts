import { exponential } from "../arithmetic/exponential.ts";
import { requireNumber } from "../require.ts";

/**
 * Saturation pressure of water vapour over water at and above 0 °C and over ice below.
 *
 * @param temperature - θ [°C], −100 to 200
 * @returns psat [Pa]
 * @throws RangeError when the temperature is not in that range or not a number
 * Source: ISO 13788:2012 equations E.7 and E.8 (from memory).
 * @example saturationPressure(20) // 2336.95
 */
export function saturationPressure(temperature: number): number {
  requireTemperature(temperature);
  return temperature >= 0 ? saturationPressureOverWater(temperature) : saturationPressureOverIce(temperature);
}

/**
 * Saturation pressure over liquid water, also below 0 °C. Weather records give relative humidity against this branch.
 *
 * @param temperature - θ [°C], above −237.3
 * @returns psat over water [Pa]
 * Source: ISO 13788:2012 equation E.7 (from memory).
 * @example saturationPressureOverWater(-10) // 285.58
 */
export function saturationPressureOverWater(temperature: number): number {
  return TRIPLE_POINT_PRESSURE * exponential((WATER_SLOPE * temperature) / (WATER_OFFSET + temperature));
}

/**
 * Saturation pressure over ice.
 *
 * @param temperature - θ [°C], below 0 and above −265.5
 * @returns psat over ice [Pa]
 * Source: ISO 13788:2012 equation E.8 (from memory).
 * @example saturationPressureOverIce(-10) // 259.33
 */
export function saturationPressureOverIce(temperature: number): number {
  return TRIPLE_POINT_PRESSURE * exponential((ICE_SLOPE * temperature) / (ICE_OFFSET + temperature));
}

/** psat at 0 °C [Pa]. Source: ISO 13788:2012 E.7 (from memory). */
export const TRIPLE_POINT_PRESSURE = 610.5;
/** Coefficients over water [–], [°C]. Source: ISO 13788:2012 E.7 (from memory). */
export const WATER_SLOPE = 17.269;
export const WATER_OFFSET = 237.3;
/** Coefficients over ice [–], [°C]. Source: ISO 13788:2012 E.8 (from memory). */
export const ICE_SLOPE = 21.875;
export const ICE_OFFSET = 265.5;

/** Range in which the formulas are used [°C]: far wider than any building needs. */
const COLDEST = -100;
const HOTTEST = 200;

function requireTemperature(temperature: number): void {
  requireNumber(temperature, "temperature", "°C", COLDEST, HOTTEST);
}
