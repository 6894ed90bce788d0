import type { Element } from "./types.ts";

/** Rails, plates, noggins and corners besides the studs, as a share of the area [–]. Common practice. */
export const OTHER_TIMBER_IN_WALLS = 0.075;
/** Noggins and trimmers besides joists and rafters, as a share of the area [–]. Common practice. */
export const OTHER_TIMBER_IN_ROOFS_AND_FLOORS = 0.01;

/**
 * The share of timber besides studs, joists or rafters, where the file does not give it.
 *
 * @param element - what the build-up is
 * @returns its share of the area [–]
 * Source: common practice; METHOD.md, Framing.
 * @example usualOtherTimber("wall") // 0.075
 */
export function usualOtherTimber(element: Element): number {
  return element === "wall" || element === "partition" ? OTHER_TIMBER_IN_WALLS : OTHER_TIMBER_IN_ROOFS_AND_FLOORS;
}
