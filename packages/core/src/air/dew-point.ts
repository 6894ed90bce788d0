import { logarithm } from "../arithmetic/exponential.ts";
import { requireNumber } from "../require.ts";
import { ICE_OFFSET, ICE_SLOPE, TRIPLE_POINT_PRESSURE, WATER_OFFSET, WATER_SLOPE } from "./saturation-pressure.ts";

/**
 * Dew point (frost point below 0 °C): the temperature at which the vapour pressure is the saturation pressure.
 *
 * @param vapourPressure - p [Pa], 10⁻¹² to 100 000
 * @returns θ [°C]
 * @throws RangeError when the pressure is not in that range or not a number
 * Source: ISO 13788:2012 equations E.9 and E.10 (from memory), the exact inverse of E.7 and E.8.
 * @example dewPoint(1168) // 9.26
 */
export function dewPoint(vapourPressure: number): number {
  requireNumber(vapourPressure, "vapour pressure", "Pa", LOWEST_PRESSURE, HIGHEST_PRESSURE);
  const ratio = logarithm(vapourPressure / TRIPLE_POINT_PRESSURE);
  return ratio >= 0 ? (WATER_OFFSET * ratio) / (WATER_SLOPE - ratio) : (ICE_OFFSET * ratio) / (ICE_SLOPE - ratio);
}

/** Lowest vapour pressure taken [Pa]: saturation at −180 °C. */
const LOWEST_PRESSURE = 1e-12;
/** Highest vapour pressure taken [Pa]: about that of boiling water. */
const HIGHEST_PRESSURE = 100_000;
