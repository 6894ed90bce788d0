import { DAYS_IN_MONTH } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { WarmSide } from "../result/types.ts";

/** A difference below this in every month drives no vapour [Pa] (this project's rule, METHOD.md, Vapour layer). */
export const SMALLEST_DRIVE = 10;

/** The drive over the year and month by month. */
export interface VapourDrive {
  year: WarmSide;
  months: { from: WarmSide; pressure: number }[];
}

/**
 * Which side vapour is pushed from, over the year and month by month.
 *
 * @param inside - room air, vapour pressure [Pa]
 * @param outside - air of the far side, vapour pressure [Pa]
 * @returns the side by the sign of Σ days·(pi − pe), and each month's side and pressure [Pa, positive from the room]
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
