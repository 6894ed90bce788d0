import { DAYS_IN_MONTH } from "../constants.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp } from "../project/types.ts";
import type { HeatFlowDirection } from "../result/types.ts";

/**
 * Direction of heat flow, fixed for the year: horizontal through walls and partitions; through roofs and floors it
 * follows the sign of the year's temperature difference.
 *
 * @param buildUp - the build-up; a roof steeper than 60° counts as a wall
 * @param inside - twelve room temperatures [°C]
 * @param outside - twelve temperatures of the outer side [°C]
 * @returns "upward", "horizontal" or "downward"
 * Source: ISO 6946:2017 clause 6.8 for the three directions (from memory); the yearly sign is this project's rule.
 */
export function heatFlowDirection(
  buildUp: Pick<BuildUp, "element" | "pitch">,
  inside: readonly number[],
  outside: readonly number[],
): HeatFlowDirection {
  if (isUpright(buildUp)) return "horizontal";
  const degreeDays = DAYS_IN_MONTH.reduce((sum, days, month) => sum + days * (inside[month]! - outside[month]!), 0);
  const outwards = degreeDays >= 0;
  const outwardsIsUp = buildUp.element !== "floor";
  return outwards === outwardsIsUp ? "upward" : "downward";
}
