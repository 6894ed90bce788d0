import { requireNumber, requireObject } from "../../require.ts";
import { requireJunctionSurfaces, requireSide } from "../given.ts";
import { fill } from "../scene.ts";
import { emptyJunction, type JunctionCell, type JunctionSurfaces, surroundJunction } from "./junction-cell.ts";
import { ringsOf } from "./rings.ts";
import type { Side } from "./side.ts";

/** Timber at the edge of a floor or roof [m]. */
export interface EdgeTimber {
  /** Thickness of the rim joist, or of the blocking between joists, in line with the wall. */
  rim: number;
  /** Plates of the wall, each as thick as a stud is wide. */
  plates: number;
}

/**
 * A wall on a raised floor, in vertical section: the deck runs under the wall, and the wall's outer layers run down
 * past the edge of the floor.
 *
 * @param floor - the floor, along x
 * @param wall - the wall, along y
 * @param timber - rim and plates
 * @param surfaces - surface resistances [m²·K/W]
 * @returns the junction
 * Source: ISO 10211:2017 clause 5 for where a drawing is cut (from memory); its timber is common practice.
 */
export function floorEdge(floor: Side, wall: Side, timber: EdgeTimber, surfaces: JunctionSurfaces): JunctionCell {
  return levelEdge(floor, wall, timber, surfaces, true);
}

/**
 * A flat roof on a wall, in vertical section and drawn upside down: the roof's outer face is below. The ceiling stops
 * at the wall's frame.
 *
 * @param roof - the roof, along x
 * @param wall - the wall, along y
 * @param timber - blocking and plates
 * @param surfaces - surface resistances [m²·K/W]
 * @returns the junction
 * Source: ISO 10211:2017 clause 5 for where a drawing is cut (from memory); its timber is common practice.
 */
export function roofEdge(roof: Side, wall: Side, timber: EdgeTimber, surfaces: JunctionSurfaces): JunctionCell {
  return levelEdge(roof, wall, timber, surfaces, false);
}

function levelEdge(
  level: Side,
  wall: Side,
  timber: EdgeTimber,
  surfaces: JunctionSurfaces,
  deckUnderWall: boolean,
): JunctionCell {
  requireSide(level, "the level side");
  requireSide(wall, "wall");
  requireObject(timber, "timber", ["rim", "plates"]);
  requireJunctionSurfaces(surfaces);
  const { rim, plates } = timber;
  requireNumber(rim, "rim", "m", 0, 1);
  requireNumber(plates, "plates", "", 0, 10);
  const cell = emptyJunction(level, wall);
  const { scene, levelLength, uprightLength, corner } = cell;
  const rings = ringsOf(level, wall);
  const middle = rings.find(({ position }) => position === "frame")!;
  const frame = {
    x0: middle.x,
    x1: middle.x + middle.upright!.thickness,
    y0: middle.y,
    y1: middle.y + middle.level!.thickness,
  };
  for (const { level: one, upright: other, position, x, y } of rings) {
    const [across, along] = [x + (other?.thickness ?? 0), y + (one?.thickness ?? 0)];
    const begins = { outer: across, frame: x, inner: deckUnderWall ? frame.x0 : frame.x1 }[position];
    if (other !== null)
      fill(scene, other.stuff, { x0: x, x1: across, y0: position === "outer" ? y : along, y1: uprightLength });
    if (one !== null) fill(scene, one.stuff, { x0: begins, x1: levelLength, y0: y, y1: along });
  }
  const [joist, stud] = [level.plies[level.frame]!.timber, wall.plies[wall.frame]!.timber];
  if (joist !== null) fill(scene, joist, { x0: frame.x0, x1: frame.x0 + rim, y0: frame.y0, y1: frame.y1 });
  const foot = deckUnderWall ? corner.y : frame.y1;
  if (stud !== null) fill(scene, stud, { x0: frame.x0, x1: frame.x1, y0: foot, y1: foot + plates * wall.member });
  surroundJunction(cell, surfaces);
  return cell;
}
