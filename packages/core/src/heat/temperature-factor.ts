import { dewPoint } from "../air/dew-point.ts";
import { MOULD_HUMIDITY } from "../constants.ts";
import { combinedResistance, resistanceOfPath } from "./combined-resistance.ts";
import type { CountedLayer, Path } from "./types.ts";

/** Rsi for assessing surface humidity [m²·K/W]. Source: ISO 13788:2012 Table 2 (from memory). */
export const SURFACE_RESISTANCE_FOR_HUMIDITY = 0.25;

/** Critical surface humidity, by the damage to be avoided [–]. Source: ISO 13788:2012 clause 5.2 (from memory). */
export const CRITICAL_SURFACE_HUMIDITY: Readonly<Record<"mould" | "condensation" | "corrosion", number>> = {
  mould: MOULD_HUMIDITY,
  condensation: 1,
  corrosion: 0.6,
};

/** Least temperature difference for a month to count [K] (this project's rule: below it the factor means nothing). */
export const SMALLEST_DIFFERENCE = 3;

/**
 * Temperature factor at the inside surface for a resistance between the surface and the outer air.
 *
 * @param resistance - ΣR of the layers [m²·K/W], ≥ 0
 * @param surfaceOutside - Rse and what lies outside [m²·K/W]
 * @returns fRsi [–], 0 to 1
 * Source: ISO 13788:2012 clause 5.3 with Rsi 0.25 (from memory).
 * @example temperatureFactor(4.034, 0.04) // 0.9422
 */
export function temperatureFactor(resistance: number, surfaceOutside: number): number {
  return 1 - SURFACE_RESISTANCE_FOR_HUMIDITY / (SURFACE_RESISTANCE_FOR_HUMIDITY + resistance + surfaceOutside);
}

/**
 * Temperature factor with framing, by the combined method.
 *
 * @param counted - counted layers
 * @param paths - heat-flow paths
 * @param surfaceOutside - Rse and what lies outside [m²·K/W]
 * @returns fRsi [–], 0 to 1
 * Source: ISO 13788:2012 clause 5.3 with the total resistance of ISO 6946:2017 clause 6.7.2 for Rsi 0.25 (from memory).
 */
export function combinedTemperatureFactor(
  counted: readonly CountedLayer[],
  paths: readonly Path[],
  surfaceOutside: number,
): number {
  const { resistance } = combinedResistance(counted, paths, SURFACE_RESISTANCE_FOR_HUMIDITY, surfaceOutside);
  return 1 - SURFACE_RESISTANCE_FOR_HUMIDITY / resistance;
}

/** Temperature factor along one heat-flow path [–]. */
export function pathTemperatureFactor(counted: readonly CountedLayer[], path: Path, surfaceOutside: number): number {
  return temperatureFactor(resistanceOfPath(counted, path), surfaceOutside);
}

/**
 * Temperature factor that a month requires of the inside surface.
 *
 * @param inside - room air: θi [°C] and pi [Pa]
 * @param outsideTemperature - θe [°C]
 * @param criticalHumidity - φcr [–]: 0.8 mould, 1.0 condensation, 0.6 corrosion
 * @returns required fRsi [–] (0 where nothing is required, over 1 where no construction can meet it); null where the
 *   difference is under 3 K
 * Source: ISO 13788:2012 clause 5.3 (from memory); the 3 K limit is this project's rule.
 * @example requiredTemperatureFactor({ temperature: 20, vapourPressure: 1358.8 }, 5.8, 0.8) // 0.6441
 */
export function requiredTemperatureFactor(
  inside: { temperature: number; vapourPressure: number },
  outsideTemperature: number,
  criticalHumidity: number,
): number | null {
  const difference = inside.temperature - outsideTemperature;
  if (!(difference >= SMALLEST_DIFFERENCE)) return null;
  const leastSurfaceTemperature = dewPoint(inside.vapourPressure / criticalHumidity);
  return Math.max(0, (leastSurfaceTemperature - outsideTemperature) / difference);
}
