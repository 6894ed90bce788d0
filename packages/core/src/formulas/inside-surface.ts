import { MOULD_HUMIDITY } from "../constants.ts";
import { requiredTemperatureFactor, temperatureFactor } from "../heat/temperature-factor.ts";
import { requireNumber } from "../require.ts";

/**
 * Temperature factor at the inside surface, with Rsi 0.25.
 *
 * @param resistance - ΣR of the layers [m²·K/W], 0 to 50
 * @param surfaceOutside - Rse [m²·K/W], 0 to 1 (default 0.04)
 * @returns fRsi [–]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13788:2012 clause 5.3 (from memory).
 * @example surfaceTemperatureFactor(4.034) // 0.9422
 */
export function surfaceTemperatureFactor(resistance: number, surfaceOutside = 0.04): number {
  requireNumber(resistance, "resistance", "m²·K/W", 0, 50);
  requireNumber(surfaceOutside, "surfaceOutside", "m²·K/W", 0, 1);
  return temperatureFactor(resistance, surfaceOutside);
}

/**
 * Temperature factor that a month requires of the inside surface.
 *
 * @param insideTemperature - θi [°C], −60 to 60
 * @param insideVapourPressure - pi [Pa], 1 to 20 000
 * @param outsideTemperature - θe [°C], −60 to 60
 * @param criticalHumidity - φcr [–], 0.1 to 1: 0.8 mould (default), 1 condensation
 * @returns required fRsi [–]: 0 where nothing is required, over 1 where no construction can meet it; null where
 *   θi − θe is under 3 K
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13788:2012 clause 5.3 (from memory); the 3 K limit is this project's rule.
 * @example requiredSurfaceFactor(20, 1358.8, 5.8) // 0.6441
 */
export function requiredSurfaceFactor(
  insideTemperature: number,
  insideVapourPressure: number,
  outsideTemperature: number,
  criticalHumidity: number = MOULD_HUMIDITY,
): number | null {
  requireNumber(insideTemperature, "insideTemperature", "°C", -60, 60);
  requireNumber(insideVapourPressure, "insideVapourPressure", "Pa", 1, 20_000);
  requireNumber(outsideTemperature, "outsideTemperature", "°C", -60, 60);
  requireNumber(criticalHumidity, "criticalHumidity", "", 0.1, 1);
  const inside = { temperature: insideTemperature, vapourPressure: insideVapourPressure };
  return requiredTemperatureFactor(inside, outsideTemperature, criticalHumidity);
}
