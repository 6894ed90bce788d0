import { countsForVapour } from "../heat/bridging.ts";
import { distinctFramings } from "../heat/paths.ts";
import type { CountedLayer } from "../heat/types.ts";
import type { Framing } from "../project/types.ts";
import { requireList } from "../require.ts";
import { framingStuff, GAP, SHEET_THICKNESS, sheetStuff } from "./cell-stuffs.ts";
import { requireCellQuestion } from "./given.ts";
import { layerStack, type StackRow } from "./layer-stack.ts";
import { emptyScene, fill, type Scene, surround } from "./scene.ts";

/** The repeating cell of a framed build-up: x along the build-up, y from the room outwards. */
export interface Cell {
  scene: Scene;
  rows: readonly StackRow[];
  /** Length that the cell represents, along x [m]. */
  width: number;
  /** x of the framing member's side, where the layers between the framing begin [m]. */
  framingEdge: number;
  /** Depth of all drawn layers [m]. */
  depth: number;
}

/** The joint between framing and a layer that it interrupts. */
export interface Joint {
  /** Gap of still air beside the framing [m], from 0. */
  gap: number;
  /** Tape over the joint on the room side: its sd [m], and its reach onto the framing [m]; null without tape. */
  tape: { sd: number; ontoFraming: number } | null;
}

/** A layer that touches the framing, without tape. */
export const TIGHT_JOINT: Joint = { gap: 0, tape: null };

/** Surface resistances on the two sides [m²·K/W]. */
export interface CellSurfaces {
  inside: number;
  outside: number;
}

/** The data from which a cell is drawn. */
export interface CellQuestion {
  counted: readonly CountedLayer[];
  framing: Framing;
  surfaces: CellSurfaces;
  /** Whether to draw sheets and facings, for vapour; for heat they are negligible. */
  sheets: boolean;
  /** The joint beside the framing, by the layer's index (default tight and without tape). */
  jointOf?: (layer: number) => Joint;
}

/** Reach of a tape onto the board beside the joint [m] (this project's rule; more makes no difference). */
const TAPE_ON_BOARD = 0.02;

/** Depth of the air drawn on either side [m]; no figure depends on it. */
const AIR_STRIP = 0.02;

/**
 * Half a spacing of a build-up framed with timber: from the middle of a member, at x = 0, to midway between two.
 *
 * @param question - layers, the framing drawn (at 600 mm where the file states only its share), surfaces
 * @returns the cell
 * Source: ISO 10211:2017 clause 5: cut-off planes at planes of symmetry (from memory).
 * @throws RangeError for a channel
 */
export function repeatingCell(question: CellQuestion): Cell {
  requireCellQuestion(question);
  const { counted, framing, surfaces, sheets, jointOf = () => TIGHT_JOINT } = question;
  const { width: member, spacing } = measuresOf(framing);
  const [edge, width] = [member / 2, spacing / 2];
  const isTaped = (layer: number): boolean => sheets && jointOf(layer).tape !== null;
  const rows = layerStack(counted, framing, sheets, isTaped);
  const scene = emptyScene();
  const timber = framingStuff(framing);
  for (const { layer, part, y0, y1, stuff, isFramed } of rows) {
    fill(scene, stuff, { x0: 0, x1: width, y0, y1 });
    if (!isFramed) continue;
    const { gap, tape } = jointOf(layer);
    fill(scene, GAP, { x0: edge, x1: edge + gap, y0, y1 });
    fill(scene, timber, { x0: 0, x1: edge, y0, y1 });
    if (part !== "under tape" || tape === null) continue;
    const box = {
      x0: Math.max(0, edge - tape.ontoFraming),
      x1: edge + gap + TAPE_ON_BOARD,
      y0,
      y1: y0 + SHEET_THICKNESS,
    };
    fill(scene, sheetStuff("tape", tape.sd), box);
  }
  const depth = surroundCell(scene, rows, surfaces, 0, width);
  return { scene, rows, width, framingEdge: edge, depth };
}

/**
 * Draws the two airs of a cell.
 *
 * @param scene - the cell's scene, changed in place
 * @param rows - its rows
 * @param surfaces - Rsi and Rse [m²·K/W]
 * @param x0 - where the cell begins [m]
 * @param x1 - where it ends [m]
 * @returns the depth of the rows [m]
 */
export function surroundCell(
  scene: Scene,
  rows: readonly StackRow[],
  surfaces: CellSurfaces,
  x0: number,
  x1: number,
): number {
  const depth = rows.at(-1)?.y1 ?? 0;
  const inside = { name: "inside", upright: surfaces.inside, level: surfaces.inside };
  const outside = { name: "outside", upright: surfaces.outside, level: surfaces.outside };
  surround(scene, inside, { x0, x1, y0: -AIR_STRIP, y1: 0 });
  surround(scene, outside, { x0, x1, y0: depth, y1: depth + AIR_STRIP });
  return depth;
}

/**
 * The framing drawn in a build-up's cell: a channel, else the first vapour-open framing.
 *
 * @param counted - counted layers
 * @returns the framing; null without any
 * Source: this project's rule (METHOD.md, The plane).
 */
export function drawnFraming(counted: readonly CountedLayer[]): Framing | null {
  requireList(counted, "counted");
  const framings = distinctFramings(counted);
  const isChannel = ({ origin }: Framing): boolean => origin.kind === "channel";
  const timber = framings.filter(countsForVapour);
  const isSpaced = ({ origin }: Framing): boolean => origin.kind === "width and spacing";
  return framings.find(isChannel) ?? timber.find(isSpaced) ?? timber[0] ?? null;
}

/** Drawn spacing of framing where the file states only its share [m] (common practice). */
const USUAL_SPACING = 0.6;

function measuresOf({ name, share, origin }: Framing): { width: number; spacing: number } {
  if (origin.kind === "width and spacing") return origin;
  if (origin.kind === "fraction") return { width: share * USUAL_SPACING, spacing: USUAL_SPACING };
  throw new RangeError(`${name} is a channel`);
}
