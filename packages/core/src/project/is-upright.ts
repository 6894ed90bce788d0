import type { BuildUp } from "./types.ts";

/** A roof steeper than this is a wall [degrees from level]. Source: ISO 6946:2017 clause 6.8 (from memory). */
export const STEEPEST_ROOF = 60;

/**
 * Whether a build-up stands upright: walls, partitions and roofs steeper than 60°.
 *
 * @param buildUp - element and pitch [degrees from level]
 * @returns true when upright
 * Source: ISO 6946:2017 clause 6.8 (from memory): heat flow counts as horizontal within 30° of upright.
 * @example isUpright({ element: "wall", pitch: null }) // true
 */
export function isUpright({ element, pitch }: Pick<BuildUp, "element" | "pitch">): boolean {
  return element === "wall" || element === "partition" || (pitch !== null && pitch > STEEPEST_ROOF);
}
