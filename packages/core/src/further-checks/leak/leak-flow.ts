import { saturationPressure } from "../../air/saturation-pressure.ts";
import { GAS_CONSTANT_OF_VAPOUR, ZERO_CELSIUS_IN_KELVIN } from "../../constants.ts";

/** Discharge coefficient of a sharp-edged gap [–]. Source: common practice, orifice flow. */
export const DISCHARGE_FACTOR = 0.6;

/** Density of air ρ [kg/m³] (this project's rule, METHOD.md, Air leakage; about 20 °C). */
export const DENSITY_OF_AIR = 1.2;

/**
 * Air that flows through a gap.
 *
 * @param area - A of the gap per m² of build-up [m²/m²], ≥ 0
 * @param pressure - Δp across it [Pa], ≥ 0
 * @returns V̇ = 0.6·A·√(2Δp/ρ) [m³/s per m²]
 * @throws RangeError when an input is out of range or not a number
 * Source: orifice flow (METHOD.md, Air leakage).
 * @example leakAirFlow(0.0001, 2) // 0.00010954
 */
export function leakAirFlow(area: number, pressure: number): number {
  if (!(area >= 0)) throw new RangeError(`the area of a gap must be 0 m² or more, was ${area}`);
  if (!(pressure >= 0)) throw new RangeError(`the pressure across a gap must be 0 Pa or more, was ${pressure}`);
  const velocity = Math.sqrt((2 * pressure) / DENSITY_OF_AIR);
  return DISCHARGE_FACTOR * area * velocity;
}

/**
 * Water that room air deposits at a cold plane as it flows past.
 *
 * @param airFlow - V̇ [m³/s per m²]
 * @param roomPressure - pi [Pa], ≥ 0
 * @param roomTemperature - θi [°C]
 * @param planeTemperature - θ of the cold plane [°C]
 * @returns g = V̇·(pi − psat)/(461.5·Ti) [kg/(m²·s)]; 0 where the plane is too warm for condensation
 * Source: ideal gas (METHOD.md, Air leakage): all the air is assumed to cool to the plane, an upper bound.
 * @example leakWaterFlow(leakAirFlow(0.0001, 2), 1168.47, 20, 0) * 1e7 // 4.518
 */
export function leakWaterFlow(
  airFlow: number,
  roomPressure: number,
  roomTemperature: number,
  planeTemperature: number,
): number {
  const surplus = Math.max(0, roomPressure - saturationPressure(planeTemperature));
  const kelvin = roomTemperature + ZERO_CELSIUS_IN_KELVIN;
  return (airFlow * surplus) / (GAS_CONSTANT_OF_VAPOUR * kelvin);
}
