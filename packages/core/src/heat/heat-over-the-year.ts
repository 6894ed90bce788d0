import { DAYS_IN_MONTH, HOURS_PER_DAY } from "../constants.ts";
import type { AirMonths, BuildUp } from "../project/types.ts";
import type { HeatCalculation } from "./types.ts";

const WATT_HOURS_PER_KILOWATT_HOUR = 1000;

/** Where the heat goes: to the outer side, through a void to outdoors, or to a void whose air is stated. */
export type EndOfHeat = "far side" | "outdoors past the void" | "stated void";

/** Twelve months of air in the room, on the outer side and outdoors. */
export interface AirOfHeat {
  inside: AirMonths;
  farSide: AirMonths;
  outdoor: AirMonths;
}

/** Heat loss over the year [kWh/m²], and where it goes. */
export interface HeatOverTheYear {
  amount: number;
  to: EndOfHeat;
}

/**
 * Heat loss through a square metre over the year, from monthly means.
 *
 * @param buildUp - the build-up
 * @param heat - its heat figures
 * @param air - twelve months of air [°C]
 * @returns kWh/m² and where it goes; null where the room is never the warmer side
 * Source: Σ max(0, θi − θe)·24·days/1000 times U (METHOD.md, Heat over the year).
 */
export function heatOverTheYear(buildUp: BuildUp, heat: HeatCalculation, air: AirOfHeat): HeatOverTheYear | null {
  const { transmittance, outside, to } = wayOfHeat(buildUp, heat, air);
  const degreeHours = degreeHoursOverTheYear(air.inside, outside);
  return degreeHours > 0 ? { amount: (transmittance * degreeHours) / WATT_HOURS_PER_KILOWATT_HOUR, to } : null;
}

/** U [W/(m²·K)] and the air at its outer end: the two belong together. */
interface WayOfHeat {
  transmittance: number;
  outside: AirMonths;
  to: EndOfHeat;
}

/**
 * Over a void, U includes the void and the ground and ends outdoors (ISO 13370:2017 clause 7.3, from memory). Where the
 * void's own air is stated, the floor's U ends in the void.
 */
function wayOfHeat(buildUp: BuildUp, heat: HeatCalculation, { farSide, outdoor }: AirOfHeat): WayOfHeat {
  const { transmittance } = heat;
  if (buildUp.void === null) return { transmittance, outside: farSide, to: "far side" };
  if (buildUp.voidClimate === null) return { transmittance, outside: outdoor, to: "outdoors past the void" };
  return { transmittance: 1 / heat.resistance + heat.correction, outside: farSide, to: "stated void" };
}

/** Σ max(0, θi − θe)·24·days [K·h]. */
function degreeHoursOverTheYear(inside: AirMonths, outside: AirMonths): number {
  return DAYS_IN_MONTH.reduce((sum, days, month) => {
    const difference = Math.max(0, inside.temperature[month]! - outside.temperature[month]!);
    return sum + difference * HOURS_PER_DAY * days;
  }, 0);
}
