import { DAYS_IN_MONTH } from "../constants.ts";
import type { BuildUp } from "../project/types.ts";
import type { HeatFlowDirection } from "./types.ts";

/**
 * The way heat flows over the year: horizontal through walls and partitions; through roofs and floors by the sign of
 * the year's temperature difference, and fixed for the year.
 *
 * @param buildUp - the build-up; a roof steeper than 60° counts as a wall
 * @param inside - twelve room temperatures [°C]
 * @param outside - twelve temperatures of the far side [°C]
 * @returns "upward", "horizontal" or "downward"
 * Source: ISO 6946:2017 clause 6.8 gives the three directions (from memory); the yearly sign is this project's rule.
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

/**
 * Whether a build-up stands upright: walls, partitions and roofs steeper than 60°.
 *
 * @param buildUp - element and pitch [degrees from level]
 * @returns true when upright
 * Source: ISO 6946:2017 clause 6.8 (from memory): horizontal flow holds for surfaces within 30° of upright.
 * @example isUpright({ element: "wall", pitch: null }) // true
 */
export function isUpright(buildUp: Pick<BuildUp, "element" | "pitch">): boolean {
  if (buildUp.element === "wall" || buildUp.element === "partition") return true;
  return buildUp.pitch !== null && buildUp.pitch > STEEPEST_ROOF;
}

/** A roof steeper than this is a wall [degrees from level]. Source: ISO 6946:2017 clause 6.8 (from memory). */
export const STEEPEST_ROOF = 60;
