import { requireNumber, requireObject } from "../../require.ts";
import { plainStuff } from "../cell-stuffs.ts";
import { requireJunctionSurfaces, requireResistances, requireSide } from "../given.ts";
import { emptyScene, fill, surround } from "../scene.ts";
import { type JunctionCell, type JunctionSurfaces, reachOf } from "./junction-cell.ts";
import type { Side, SideResistances } from "./side.ts";

/** The frame of a window [m], its λ [W/(m·K)], and its position in the wall. */
export interface WindowFrameMeasures {
  width: number;
  depth: number;
  conductivity: number;
  /** Distance from the outer face of the wall as drawn [m]. */
  setBack: number;
  /** Insulation behind the reveal's lining [m], λ 0.04 W/(m·K); none by default. */
  reveal?: number;
}

/** Places closer than this are the same [m]. */
const SAME_PLACE = 1e-9;

/** Depth of the air drawn [m]; no figure depends on it. */
const AIR_STRIP = 0.05;

/**
 * The side of a window in a wall, in horizontal section: the wall to the right of x = 0, the frame to its left, the
 * reveal lined like the wall. The pane is left out: no heat passes the outer end of the frame.
 *
 * @param wall - the wall, along x
 * @param trimmers - studs beside the window [–], from 0
 * @param frame - the window's frame
 * @param surfaces - surface resistances [m²·K/W]
 * @returns the junction; its level length is that of the wall, its upright length the frame's width
 * Source: ISO 10211:2017 clause 5 for the extent of the drawing (from memory).
 */
export function windowSide(
  wall: Side,
  trimmers: number,
  frame: WindowFrameMeasures,
  surfaces: JunctionSurfaces,
): JunctionCell {
  requireSide(wall, "wall");
  requireNumber(trimmers, "trimmers", "", 0, 10);
  requireFrame(frame);
  requireJunctionSurfaces(surfaces);
  const { inside, outside } = surfaces;
  const scene = emptyScene();
  const reach = reachOf(wall.thickness);
  const { width, depth, setBack } = frame;
  let y = 0;
  for (const [index, { thickness, stuff, timber }] of wall.plies.entries()) {
    fill(scene, stuff, { x0: 0, x1: reach, y0: y, y1: y + thickness });
    const isFrame = index === wall.frame && timber !== null;
    if (isFrame) fill(scene, timber, { x0: 0, x1: trimmers * wall.member, y0: y, y1: y + thickness });
    y += thickness;
  }
  const room = { name: "inside", ...inside };
  const outdoors = { name: "outside", ...outside };
  const back = setBack + depth;
  surround(scene, room, { x0: -width, x1: 0, y0: back, y1: Math.max(back, y) + AIR_STRIP });
  surround(scene, room, { x0: 0, x1: reach, y0: y, y1: y + AIR_STRIP });
  surround(scene, outdoors, { x0: -width, x1: reach, y0: -AIR_STRIP, y1: 0 });
  surround(scene, outdoors, { x0: -width, x1: 0, y0: 0, y1: setBack });
  fill(scene, plainStuff("window frame", frame.conductivity), { x0: -width, x1: 0, y0: setBack, y1: back });
  const lining = wall.plies.at(-1)!;
  const reveal = frame.reveal ?? 0;
  fill(scene, lining.stuff, { x0: Math.max(-width, -reveal - lining.thickness), x1: 0, y0: back, y1: y });
  fill(scene, plainStuff("insulation in the reveal", REVEAL_CONDUCTIVITY), { x0: -reveal, x1: 0, y0: back, y1: y });
  const surfacesFrom = -reveal - lining.thickness - SAME_PLACE;
  return { scene, levelLength: reach, uprightLength: width, surfacesFrom, corner: { x: 0, y } };
}

/** λ of insulation in a reveal [W/(m·K)]: wood fibre or wool board. */
const REVEAL_CONDUCTIVITY = 0.04;

/**
 * The frame as a side of the junction, for ψ: heat straight through it.
 *
 * @param wall - the wall around it
 * @param frame - the frame
 * @returns its resistances [m²·K/W]
 * Source: resistances in series.
 */
export function frameAsSide(wall: Side, frame: WindowFrameMeasures): SideResistances {
  requireResistances(wall, "wall");
  requireFrame(frame);
  const { depth, conductivity } = frame;
  const { inside, outside, outsideForMoisture } = wall;
  return { inside, outside, outsideForMoisture, resistance: depth / conductivity };
}

function requireFrame(frame: WindowFrameMeasures): void {
  requireObject(frame, "frame", ["width", "depth", "conductivity", "setBack"]);
  requireNumber(frame.width, "width", "m", 1e-3, 1);
  requireNumber(frame.depth, "depth", "m", 1e-3, 1);
  requireNumber(frame.conductivity, "conductivity", "W/(m·K)", 1e-3, 500);
}
