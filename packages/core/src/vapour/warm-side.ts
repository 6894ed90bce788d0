import { DAYS_IN_MONTH } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { WarmSide } from "../result/types.ts";

/** Below this in every month, neither side is the warm side [Pa] (this project's rule, METHOD.md, Vapour layer). */
export const SMALLEST_DRIVE = 10;

/** The vapour drive over the year and month by month. */
export interface VapourDrive {
  year: WarmSide;
  months: { from: WarmSide; pressure: number }[];
}

/**
 * The side that vapour comes from, over the year and month by month.
 *
 * @param inside - room air, vapour pressure [Pa]
 * @param outside - air on the outer side, vapour pressure [Pa]
 * @returns the side by the sign of Σ days·(pi − pe), and each month's side and pi − pe [Pa]
 * Source: this project's rule (METHOD.md, Vapour layer).
 */
export function vapourDrive(inside: AirMonths, outside: AirMonths): VapourDrive {
  const pressures = inside.vapourPressure.map((pressure, month) => pressure - outside.vapourPressure[month]!);
  const sum = pressures.reduce((total, pressure, month) => total + DAYS_IN_MONTH[month]! * pressure, 0);
  const months = pressures.map((pressure) => ({ from: sideOf(pressure), pressure }));
  const idle = pressures.every((pressure) => Math.abs(pressure) < SMALLEST_DRIVE);
  return { year: idle ? "neither" : sum >= 0 ? "inside" : "outside", months };
}

function sideOf(pressure: number): WarmSide {
  if (Math.abs(pressure) < SMALLEST_DRIVE) return "neither";
  return pressure > 0 ? "inside" : "outside";
}
