import { GAS_CONSTANT_OF_VAPOUR, ZERO_CELSIUS_IN_KELVIN } from "../constants.ts";
import { requireNumber } from "../require.ts";
import { saturationPressure } from "./saturation-pressure.ts";

/**
 * Relative humidity of air.
 *
 * @param vapourPressure - p [Pa], 0 to 10⁷
 * @param temperature - θ [°C], −100 to 200
 * @returns φ as a fraction [–]; above 1 no such air can exist
 * @throws RangeError when an input is out of range or not a number
 * Source: definition, φ = p / psat(θ).
 * @example relativeHumidity(1168.47, 20) // 0.5
 */
export function relativeHumidity(vapourPressure: number, temperature: number): number {
  requireNumber(vapourPressure, "vapour pressure", "Pa", 0, HIGHEST_PRESSURE);
  return vapourPressure / saturationPressure(temperature);
}

/**
 * Vapour pressure of air.
 *
 * @param humidity - φ as a fraction [–], 0 to 1
 * @param temperature - θ [°C], −100 to 200
 * @returns p [Pa]
 * @throws RangeError when an input is out of range or not a number
 * Source: definition, p = φ · psat(θ).
 * @example vapourPressure(0.5, 20) // 1168.48
 */
export function vapourPressure(humidity: number, temperature: number): number {
  requireNumber(humidity, "relative humidity", "", 0, 1);
  return humidity * saturationPressure(temperature);
}

/**
 * Humidity by volume: mass of vapour in a cubic metre of air.
 *
 * @param vapourPressure - p [Pa], 0 to 10⁷
 * @param temperature - θ [°C], −273 to 1000
 * @returns v [kg/m³]
 * @throws RangeError when an input is out of range or not a number
 * Source: ideal gas, v = p / (461.5 · T); ISO 13788:2012 Annex E (from memory).
 * @example humidityByVolume(1168.47, 20) // 0.008637
 */
export function humidityByVolume(vapourPressure: number, temperature: number): number {
  requireNumber(vapourPressure, "vapour pressure", "Pa", 0, HIGHEST_PRESSURE);
  requireNumber(temperature, "temperature", "°C", COLDEST, HOTTEST);
  const kelvin = temperature + ZERO_CELSIUS_IN_KELVIN;
  return vapourPressure / (GAS_CONSTANT_OF_VAPOUR * kelvin);
}

/** Highest vapour pressure taken [Pa]: a hundred atmospheres. */
const HIGHEST_PRESSURE = 1e7;
/** Lowest and highest temperature taken [°C]; the lowest is just above absolute zero. */
const COLDEST = -273;
const HOTTEST = 1000;
