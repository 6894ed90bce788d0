import { growthLimit } from "../further-checks/mould/growth-limit.ts";
import { equilibriumMoisture } from "../further-checks/wood/equilibrium-moisture.ts";
import { requireNumber } from "../require.ts";

/**
 * Equilibrium moisture content of wood.
 *
 * @param temperature - T [°C], −60 to 100
 * @param relativeHumidity - φ as a fraction [–], 0 to 1
 * @returns moisture content as a fraction of dry mass [–]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: Hailwood and Horrobin two-hydrate form, FPL Wood Handbook chapter 4 (from memory).
 * @example equilibriumMoistureOfWood(10, 0.85) // 0.1836
 */
export function equilibriumMoistureOfWood(temperature: number, relativeHumidity: number): number {
  requireNumber(temperature, "temperature", "°C", -60, 100);
  requireNumber(relativeHumidity, "relativeHumidity", "", 0, 1);
  return equilibriumMoisture(temperature, relativeHumidity);
}

/**
 * Relative humidity above which mould can grow on material that feeds it.
 *
 * @param temperature - θ [°C], −60 to 100
 * @returns φcr as a fraction [–]; 1 at and below 0 °C
 * @throws TypeError or RangeError when the input is not a number or is out of range
 * Source: Hukka and Viitanen 1999 (from memory).
 * @example mouldGrowthLimit(10) // 0.8203
 */
export function mouldGrowthLimit(temperature: number): number {
  requireNumber(temperature, "temperature", "°C", -60, 100);
  return growthLimit(temperature);
}
