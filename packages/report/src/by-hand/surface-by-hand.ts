import type { MonthOfAir, SurfaceResult } from "@warmside/core";
import { CRITICAL_SURFACE_HUMIDITY, dewPoint } from "@warmside/core";
import { DECIMALS, type Printed, printed } from "./printed.ts";

/** The required temperature factor of the critical month worked step by step with rounded figures. */
export interface SurfaceByHand {
  month: string;
  indoor: { temperature: Printed; pressure: Printed };
  outdoorTemperature: Printed;
  /** psat at which the humidity on the surface is 80 % [Pa]. */
  neededSaturation: Printed;
  /** Temperature at which air is saturated with that [°C]. */
  leastSurfaceTemperature: Printed;
  required: Printed;
}

/**
 * The required factor against mould in its critical month, every figure from the printed ones.
 *
 * @param surface - the surface figures of a build-up
 * @param indoor - the room's months
 * @param farSide - the far side's months
 * @returns the steps; null where no month is critical
 * Source: ISO 13788:2012 clause 5.3 (from memory).
 */
export function surfaceByHand(
  surface: SurfaceResult,
  indoor: readonly MonthOfAir[],
  farSide: readonly MonthOfAir[],
): SurfaceByHand | null {
  const month = surface.critical.mould?.month;
  const inside = indoor.find((entry) => entry.month === month);
  const outside = farSide.find((entry) => entry.month === month);
  if (!month || !inside || !outside) return null;
  const temperature = printed(inside.temperature, DECIMALS.temperature);
  const pressure = printed(inside.vapourPressure, DECIMALS.pressure);
  const outdoorTemperature = printed(outside.temperature, DECIMALS.temperature);
  const neededSaturation = printed(pressure.value / CRITICAL_SURFACE_HUMIDITY.mould, DECIMALS.pressure);
  const leastSurfaceTemperature = printed(dewPoint(neededSaturation.value), DECIMALS.temperature);
  const rise = leastSurfaceTemperature.value - outdoorTemperature.value;
  const required = printed(Math.max(0, rise / (temperature.value - outdoorTemperature.value)), DECIMALS.factor);
  return {
    month,
    indoor: { temperature, pressure },
    outdoorTemperature,
    neededSaturation,
    leastSurfaceTemperature,
    required,
  };
}
