import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { DAYS_IN_MONTH, HOURS_PER_DAY } from "../constants.ts";
import type { AirMonths } from "../project/types.ts";
import type { HeatResult } from "../result/types.ts";

const WATT_HOURS_PER_KILOWATT_HOUR = 1000;

/** What is said beside every such figure. */
const NO_HEATING_LIMIT = "from monthly means without a heating limit: it overstates what is paid for";

/**
 * Heat through a square metre over the year from the monthly means.
 *
 * @param calculation - the build-up's figures
 * @param outdoor - twelve months of outdoor air
 * @returns kWh/m² and the note that belongs beside it; null where the room is never warmer
 * Source: Σ max(0, θi − θe)·24·days/1000 times U (METHOD.md, Heat over the year).
 */
export function heatOverTheYear(
  calculation: BuildUpCalculation,
  outdoor: AirMonths,
): Pick<HeatResult, "heatPerYear" | "heatPerYearNote"> {
  const { transmittance, outside, note } = wayOfHeat(calculation, outdoor);
  const degreeHours = degreeHoursOverTheYear(calculation.inside, outside);
  if (!(degreeHours > 0)) return { heatPerYear: null, heatPerYearNote: null };
  return { heatPerYear: (transmittance * degreeHours) / WATT_HOURS_PER_KILOWATT_HOUR, heatPerYearNote: note };
}

/** U [W/(m²·K)] and the air at its far end: the two belong together. */
interface WayOfHeat {
  transmittance: number;
  outside: AirMonths;
  note: string;
}

/**
 * Over a void U reaches through void and ground to outdoors (ISO 13370:2017 clause 7.3, from memory); where the void's
 * own air is stated, the floor's U ends there.
 */
function wayOfHeat({ buildUp, heat, farSide }: BuildUpCalculation, outdoor: AirMonths): WayOfHeat {
  if (buildUp.void === null) {
    return { transmittance: heat.transmittance, outside: farSide.months, note: NO_HEATING_LIMIT };
  }
  if (buildUp.voidClimate !== null) {
    const ofFloor = 1 / heat.resistance + heat.correction;
    const note = `from the floor alone to the void's stated temperature, ${NO_HEATING_LIMIT}`;
    return { transmittance: ofFloor, outside: farSide.months, note };
  }
  const note = `from the room to outdoors, as U is, by way of the void; ${NO_HEATING_LIMIT}`;
  return { transmittance: heat.transmittance, outside: outdoor, note };
}

/** Σ max(0, θi − θe)·24·days [K·h]. */
function degreeHoursOverTheYear(inside: AirMonths, outside: AirMonths): number {
  return DAYS_IN_MONTH.reduce((sum, days, month) => {
    const difference = Math.max(0, inside.temperature[month]! - outside.temperature[month]!);
    return sum + difference * HOURS_PER_DAY * days;
  }, 0);
}
