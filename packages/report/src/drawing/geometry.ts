import { type BuildUpResult, type Element, METAL_CONDUCTIVITY } from "@warmside/core";
import { MILLIMETRES_PER_METRE } from "../numbers.ts";

/**
 * A drawing's own directions: across the build-up, from the room outwards, and along it. A wall stands, so that across
 * runs to the right; a roof lies with the room below it, a floor with the room above it.
 */
export type Lie = "upright" | "room below" | "room above";

/** A rectangle or line of the drawing in its own directions [px]: across from the room surface, along from one edge. */
export interface Stretch {
  across: number;
  acrossTo: number;
  along: number;
  alongTo: number;
}

/** Framing as it is drawn. */
export interface DrawnFraming {
  members: Stretch[];
  isMetal: boolean;
  /** Runs across the first framing, and is drawn dashed. */
  isCrossing: boolean;
}

/** Measures of a drawing. */
export interface Geometry {
  lie: Lie;
  pixelsPerMillimetre: number;
  /** Faces of every layer across, room surface first [px]. */
  layers: { index: number; from: number; to: number }[];
  framings: DrawnFraming[];
  /** Size of the body: across without the air beside it, and along [px]. */
  across: number;
  along: number;
  /** Place of the body's room corner in the picture, and the picture's size [px]. */
  origin: { x: number; y: number };
  size: { width: number; height: number };
}

/**
 * How a build-up is fitted into its drawing: one scale for thickness, width and spacing.
 *
 * @param buildUp - a build-up of the result
 * @returns places and sizes
 */
export function geometryOf(buildUp: BuildUpResult): Geometry {
  const lie = lieOf(buildUp.element);
  const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0) * MILLIMETRES_PER_METRE;
  const field = lie === "upright" ? UPRIGHT : LYING;
  const pixelsPerMillimetre = Math.min(field.across / Math.max(total, 1), MOST_PIXELS_PER_MILLIMETRE);
  const across = total * pixelsPerMillimetre;
  let at = 0;
  const layers = buildUp.layers.map(({ thickness }, index) => {
    const from = at;
    at += thickness * MILLIMETRES_PER_METRE * pixelsPerMillimetre;
    return { index, from, to: at };
  });
  const framings = buildUp.framings.map((framing, order) => {
    const through = layers.filter(({ index }) => framing.layers.includes(index));
    const from = Math.min(...through.map((layer) => layer.from));
    const to = Math.max(...through.map((layer) => layer.to));
    const width = framing.width
      ? framing.width * MILLIMETRES_PER_METRE * pixelsPerMillimetre
      : framing.share * field.along;
    const spacing = framing.spacing ? framing.spacing * MILLIMETRES_PER_METRE * pixelsPerMillimetre : field.along;
    return {
      members: membersOf(width, spacing, field.along, order).map(([along, alongTo]) => ({
        across: from,
        acrossTo: to,
        along,
        alongTo,
      })),
      isMetal: framing.conductivity >= METAL_CONDUCTIVITY,
      isCrossing: order > 0,
    };
  });
  const shift = (field.across - across) / 2;
  const origin =
    lie === "upright"
      ? { x: field.left + shift, y: field.top }
      : { x: field.left, y: lie === "room below" ? field.top + across : field.top };
  const size =
    lie === "upright"
      ? { width: field.width, height: field.top + field.along + field.bottom }
      : { width: field.width, height: field.top + across + field.bottom };
  return { lie, pixelsPerMillimetre, layers, framings, across, along: field.along, origin, size };
}

/**
 * A place of the drawing's own directions in the picture.
 *
 * @param geometry - the drawing's measures
 * @param across - [px] from the room surface outwards
 * @param along - [px] from the first edge
 * @returns x and y [px]
 */
export function placed({ lie, origin }: Geometry, across: number, along: number): { x: number; y: number } {
  if (lie === "upright") return { x: origin.x + across, y: origin.y + along };
  return { x: origin.x + along, y: lie === "room below" ? origin.y - across : origin.y + across };
}

/** Air shown on either side of the body [px]. */
export const AIR = 24;

const UPRIGHT = { across: 226, along: 158, left: 62, top: 42, bottom: 66, width: 350 };
const LYING = { across: 170, along: 290, left: 48, top: 56, bottom: 62, width: 410 };
const MOST_PIXELS_PER_MILLIMETRE = 2;
/** Where the first member stands along the drawing, and one that crosses it, as a share of its length. */
const FIRST_AT = 0.22;
const CROSSING_AT = 0.7;

function lieOf(element: Element): Lie {
  if (element === "floor") return "room above";
  return element === "flat roof" || element === "pitched roof" ? "room below" : "upright";
}

/** Members at their own spacing, as many as the drawing shows. */
function membersOf(width: number, spacing: number, length: number, order: number): [number, number][] {
  const start = length * (order === 0 ? FIRST_AT : CROSSING_AT) - width / 2;
  const first = start - Math.floor((start + width) / spacing) * spacing;
  const members: [number, number][] = [];
  for (let along = first; along < length; along += spacing) {
    const shown: [number, number] = [Math.max(0, along), Math.min(length, along + width)];
    if (shown[1] - shown[0] > 0.5) members.push(shown);
  }
  return members;
}
