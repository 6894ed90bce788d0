import { emptyScene, type Scene, surround } from "../scene.ts";
import type { Side } from "./side.ts";

/** The drawing of a junction: outdoors is below and to the left, the room above and to the right. */
export interface JunctionCell {
  scene: Scene;
  /** Lengths of the sides in the drawing, by external dimensions [m]. */
  levelLength: number;
  uprightLength: number;
  /** Surfaces to the left of this place belong to the frame of a window, not to the construction [m]. */
  surfacesFrom: number;
  /** The room's corner [m]. */
  corner: { x: number; y: number };
}

/** Surface resistances of the level and the upright side of a drawing [m²·K/W]. */
export interface JunctionSurfaces {
  inside: { level: number; upright: number };
  outside: { level: number; upright: number };
}

/** Depth of the air drawn around a junction [m]; no figure depends on it. */
const AIR_STRIP = 0.02;

/**
 * Drawn length of a side [m]: three times its thickness, and at least 1 m.
 * Source: ISO 10211:2017 clause 5.2 (from memory).
 */
const REACH = { least: 1, thicknesses: 3 };

/**
 * A junction without any rectangles yet, with its lengths and the room's corner.
 *
 * @param level - the side along x
 * @param upright - the side along y
 * @returns the scene and its dimensions [m]
 */
export function emptyJunction(level: Side, upright: Side): JunctionCell {
  const reach = reachOf(Math.max(level.thickness, upright.thickness));
  return {
    scene: emptyScene(),
    levelLength: upright.thickness + reach,
    uprightLength: level.thickness + reach,
    surfacesFrom: Number.NEGATIVE_INFINITY,
    corner: { x: upright.thickness, y: level.thickness },
  };
}

/** Drawn length of a junction from the inner faces of its sides [m]. */
export function reachOf(thickness: number): number {
  return Math.max(REACH.least, REACH.thicknesses * thickness);
}

/**
 * Draws the two airs of a junction; the room comes first in the scene's list.
 *
 * @param cell - the junction, its scene changed in place
 * @param surfaces - surface resistances [m²·K/W]
 */
export function surroundJunction(cell: JunctionCell, { inside, outside }: JunctionSurfaces): void {
  const { scene, levelLength, uprightLength, corner } = cell;
  surround(scene, { name: "inside", ...inside }, { x0: corner.x, x1: levelLength, y0: corner.y, y1: uprightLength });
  const outdoors = { name: "outside", ...outside };
  surround(scene, outdoors, { x0: -AIR_STRIP, x1: levelLength, y0: -AIR_STRIP, y1: 0 });
  surround(scene, outdoors, { x0: -AIR_STRIP, x1: 0, y0: 0, y1: uprightLength });
}
