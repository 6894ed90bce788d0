import type { BuildUpResult, FramingResult } from "@warmside/core";
import { MILLIMETRES_PER_METRE } from "../numbers.ts";
import { spread } from "../spread.ts";

/** A layer as a rectangle of the drawing, room on the left. */
export interface DrawnLayer {
  /** Index of the layer, from 0. */
  index: number;
  left: number;
  width: number;
  /** Centre of its numbered mark above the drawing. */
  mark: number;
}

/** Framing as it is drawn: its width and spacing across the wall [px], and the layers it runs through. */
export interface DrawnFraming {
  framing: FramingResult;
  width: number;
  spacing: number;
  left: number;
  right: number;
  /** How far from the top edge the first member begins [px]. */
  start: number;
  /** False when only its share is known and one member stands for all. */
  spaced: boolean;
}

/** Measures of a drawing, in pixels of its own grid. */
export interface Scale {
  pixelsPerMillimetre: number;
  layers: DrawnLayer[];
  framings: DrawnFraming[];
  /** The body: left, right, top, bottom. */
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/**
 * How a build-up is fitted into its drawing: one scale for thickness, width and spacing.
 *
 * @param buildUp - a build-up of the result
 * @returns places and sizes
 */
export function scaleOf(buildUp: BuildUpResult): Scale {
  const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0) * MILLIMETRES_PER_METRE;
  const spacings = buildUp.framings.map(spacingOf).filter((spacing) => spacing !== null);
  const span = Math.min(Math.max(...spacings.map(({ width, spacing }) => spacing + 2.2 * width), 0), LONGEST_SPAN);
  const byWidth = BODY_WIDTH / Math.max(total, 1);
  const byHeight = span > 0 ? BODY_HEIGHT / span : byWidth;
  const pixelsPerMillimetre = Math.min(byWidth, byHeight, MOST_PIXELS_PER_MILLIMETRE);
  const width = total * pixelsPerMillimetre;
  const left = (DRAWING_WIDTH - width) / 2;
  const top = TOP;
  const bottom = top + (span > 0 ? span * pixelsPerMillimetre : PLAIN_HEIGHT);
  const layers = placedLayers(buildUp, left, pixelsPerMillimetre);
  return {
    pixelsPerMillimetre,
    layers,
    framings: buildUp.framings.map((framing, order) =>
      placedFraming(framing, order, layers, pixelsPerMillimetre, bottom - top),
    ),
    left,
    right: left + width,
    top,
    bottom,
  };
}

/** Width of every drawing's grid [px]. */
export const DRAWING_WIDTH = 460;
const BODY_WIDTH = 330;
const BODY_HEIGHT = 330;
const PLAIN_HEIGHT = 190;
const TOP = 62;
const MOST_PIXELS_PER_MILLIMETRE = 2;
const MARK_DISTANCE = 25;
/** Longest stretch along the wall that is drawn [mm]; wider spacing is cut off. */
const LONGEST_SPAN = 1300;

function placedLayers(buildUp: BuildUpResult, left: number, perMillimetre: number): DrawnLayer[] {
  let at = left;
  const placed = buildUp.layers.map(({ thickness }, index) => {
    const width = thickness * MILLIMETRES_PER_METRE * perMillimetre;
    at += width;
    return { index, left: at - width, width };
  });
  const marks = spread(
    placed.map((layer) => layer.left + layer.width / 2),
    MARK_DISTANCE,
    MARK_DISTANCE / 2,
    DRAWING_WIDTH - MARK_DISTANCE / 2,
  );
  return placed.map((layer, index) => ({ ...layer, mark: marks[index]! }));
}

function placedFraming(
  framing: FramingResult,
  order: number,
  layers: readonly DrawnLayer[],
  perMillimetre: number,
  height: number,
): DrawnFraming {
  const through = layers.filter(({ index }) => framing.layers.includes(index));
  const given = spacingOf(framing);
  const width = given ? given.width * perMillimetre : framing.share * height;
  const spacing = given ? given.spacing * perMillimetre : Number.POSITIVE_INFINITY;
  const offset = order === 0 ? FIRST_MEMBER_AT * width : spacing / 2;
  return {
    framing,
    width,
    spacing,
    left: Math.min(...through.map((layer) => layer.left)),
    right: Math.max(...through.map((layer) => layer.left + layer.width)),
    start: given ? offset : (height - width) / 2,
    spaced: given !== null,
  };
}

const FIRST_MEMBER_AT = 0.6;

/** Width and spacing [mm], when the framing was given by them. */
function spacingOf(framing: FramingResult): { width: number; spacing: number } | null {
  const { width, spacing } = framing;
  return width && spacing ? { width: width * MILLIMETRES_PER_METRE, spacing: spacing * MILLIMETRES_PER_METRE } : null;
}
