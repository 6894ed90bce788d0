import type { Material } from "../project/types.ts";
import { requireList, requireObject } from "../require.ts";
import type { PictureBox } from "../result/plane-picture.ts";

/** A property in the two directions of the plane. */
export interface Directions {
  x: number;
  y: number;
}

/** The filling of a part of the plane. Properties along x and y differ for sheets and air layers. */
export interface Stuff {
  name: string;
  /** The material it represents; null for air, sheets, and fillings without a material in the file. */
  material: Material | null;
  /** Whether it is air: water can lie on its boundaries, not in it. */
  isAir: boolean;
  /** λ [W/(m·K)], above 0. */
  conductivity: Directions;
  /** δ0/μ [kg/(m·s·Pa)], above 0. */
  permeability: Directions;
}

/** Air around the construction, with its surface resistances [m²·K/W], above 0. */
export interface SurroundingAir {
  name: string;
  /** Of faces that run along y [m²·K/W]. */
  upright: number;
  /** Of faces that run along x [m²·K/W]. */
  level: number;
}

/** Place of a rectangle in the plane [m]. */
export type Box = PictureBox;

/** A rectangle filled with a stuff, or open to an air: an index into the scene's list. */
export interface Rectangle extends Box {
  filling: "stuff" | "air";
  index: number;
}

/**
 * A section through a construction: rectangles of stuff and air, per metre of length into the paper.
 * A later rectangle covers earlier ones. Without a rectangle, no heat or vapour passes.
 */
export interface Scene {
  stuffs: Stuff[];
  airs: SurroundingAir[];
  rectangles: Rectangle[];
}

/** A piece of a drawing: a rectangle of stuff, or of air that surrounds the construction. */
export type Piece = ({ stuff: Stuff } | { air: SurroundingAir }) & { box: Box };

/**
 * A section drawn piece by piece.
 *
 * @param pieces - rectangles of stuff and air [m], later ones over earlier ones; the room's air first
 * @returns the scene
 * @throws TypeError when a piece has no box, or neither stuff nor air
 * Source: none; no calculation.
 */
export function drawnScene(pieces: readonly Piece[]): Scene {
  requireList(pieces, "pieces");
  const scene = emptyScene();
  for (const piece of pieces) {
    requireObject(piece, "each of pieces", ["box"]);
    requireObject(piece.box, "box", ["x0", "x1", "y0", "y1"]);
    if ("stuff" in piece) fill(scene, piece.stuff, piece.box);
    else if ("air" in piece) surround(scene, piece.air, piece.box);
    else throw new TypeError("each of pieces must have stuff or air");
  }
  return scene;
}

/**
 * A scene to draw in.
 *
 * @returns an empty scene
 * Source: none; no calculation.
 */
export function emptyScene(): Scene {
  return { stuffs: [], airs: [], rectangles: [] };
}

/**
 * Draws a rectangle of stuff. One without width or height is left out.
 *
 * @param scene - the scene, changed in place
 * @param stuff - its filling
 * @param box - its place [m]
 * Source: none; no calculation.
 */
export function fill(scene: Scene, stuff: Stuff, box: Box): void {
  draw(scene, "stuff", placeIn(scene.stuffs, stuff), box);
}

/**
 * Draws a rectangle of surrounding air. One without width or height is left out.
 *
 * @param scene - the scene, changed in place
 * @param air - the air
 * @param box - its place [m]
 * Source: none; no calculation.
 */
export function surround(scene: Scene, air: SurroundingAir, box: Box): void {
  draw(scene, "air", placeIn(scene.airs, air), box);
}

function draw(scene: Scene, filling: Rectangle["filling"], index: number, { x0, x1, y0, y1 }: Box): void {
  if (x1 > x0 && y1 > y0) scene.rectangles.push({ filling, index, x0, x1, y0, y1 });
}

/** Index of an entry, which is added if new. */
function placeIn<T>(list: T[], entry: T): number {
  const known = list.indexOf(entry);
  return known >= 0 ? known : list.push(entry) - 1;
}
