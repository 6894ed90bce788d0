import type { LayerResult } from "@warmside/core";
import { DRAWING_FONT, PALETTE } from "../palette.ts";

/** The pattern of a layer. The marks are this project's own; they also differ without colour. */
export type Hatch =
  | "timber"
  | "wood board"
  | "soft insulation"
  | "stiff insulation"
  | "mineral"
  | "skin"
  | "metal"
  | "sheet"
  | "air";

/**
 * What a layer is drawn as.
 *
 * @param layer - a layer of the result
 * @returns the hatch
 */
export function hatchOf(layer: Pick<LayerResult, "type" | "kind" | "group" | "conductivity" | "density">): Hatch {
  if (layer.type === "air") return "air";
  if (layer.type === "sheet") return "sheet";
  if (layer.kind === "metal") return "metal";
  if (isDrawnAsInsulation(layer))
    return layer.kind === "plastic" || layer.kind === "board" ? "stiff insulation" : "soft insulation";
  if (layer.kind === "plastic") return "skin";
  if (layer.group === "timber" || layer.kind === "wood") return "timber";
  if (layer.kind === "board" || layer.group === "wood-based board") return "wood board";
  return "mineral";
}

/**
 * The fill patterns of a drawing.
 *
 * @param id - prefix that makes their names unique in the page
 * @param used - the hatches that occur
 * @returns SVG `defs`
 */
export function patternDefinitions(id: string, used: readonly Hatch[]): string {
  const patterns = [...new Set(used)].map((hatch) => {
    const { size, ground, marks } = TILES[hatch];
    const rectangle = `<rect width="${size}" height="${size}" fill="${ground}"/>`;
    return `<pattern id="${patternId(id, hatch)}" width="${size}" height="${size}" patternUnits="userSpaceOnUse">${rectangle}${marks}</pattern>`;
  });
  return `<defs>${patterns.join("")}</defs>`;
}

/**
 * The name of a pattern.
 *
 * @param id - prefix of the drawing
 * @param hatch - which one
 * @returns the id to refer to
 */
export function patternId(id: string, hatch: Hatch): string {
  return `${id}-${hatch.replace(" ", "-")}`;
}

/** Size of every text of a drawing [px]: at the size at which it is printed no less than 8 pt. */
export const LETTERING = 11.5;

/** Font of every text of a drawing. */
export const FONT: string = `font-family='${DRAWING_FONT}'`;

interface Tile {
  size: number;
  ground: string;
  marks: string;
}

const line = PALETTE.faintInk.light;
const thin = `fill="none" stroke="${line}" stroke-width="0.8"`;
const dot = (x: number, y: number): string => `<circle cx="${x}" cy="${y}" r="0.9" fill="${line}"/>`;

const TILES: Readonly<Record<Hatch, Tile>> = {
  timber: {
    size: 14,
    ground: PALETTE.timber.light,
    marks: `<path d="M0 4q3.5 -3 7 0t7 0M0 11q3.5 3 7 0t7 0" ${thin}/>`,
  },
  "wood board": {
    size: 6,
    ground: PALETTE.timber.light,
    marks: `<path d="M1.5 0v3M4.5 3v3" ${thin}/>`,
  },
  "soft insulation": {
    size: 16,
    ground: PALETTE.insulation.light,
    marks: `<path d="M2 5l4 4l4 -4M10 13l4 4M10 13l-4 4M6 -3l-0 0M6 1l4 -4M14 1l-4 -4" ${thin}/>`,
  },
  "stiff insulation": {
    size: 12,
    ground: PALETTE.insulation.light,
    marks: `<circle cx="3" cy="3" r="1.6" ${thin}/><circle cx="9" cy="9" r="1.6" ${thin}/>`,
  },
  mineral: {
    size: 10,
    ground: PALETTE.lining.light,
    marks: dot(2, 2) + dot(7, 4) + dot(3.5, 8),
  },
  skin: { size: 5, ground: PALETTE.lining.light, marks: `<path d="M0 1.5h5M0 4h5" ${thin}/>` },
  metal: { size: 4, ground: line, marks: "" },
  sheet: { size: 4, ground: PALETTE.ink.light, marks: "" },
  air: { size: 10, ground: PALETTE.air.light, marks: "" },
};

/** Conductivity up to which a material is drawn as insulation [W/(m·K)]. Source: common practice. */
const INSULATES_UP_TO = 0.065;

function isDrawnAsInsulation({ group, conductivity }: Pick<LayerResult, "group" | "conductivity">): boolean {
  return group === "insulation" || (conductivity !== null && conductivity <= INSULATES_UP_TO);
}
