import type { JunctionDrawing } from "../field/junctions/junction-heat.ts";
import { floorEdge, roofEdge } from "../field/junctions/level-edge.ts";
import { outerCorner } from "../field/junctions/outer-corner.ts";
import type { Side, SideResistances } from "../field/junctions/side.ts";
import { frameAsSide, windowSide } from "../field/junctions/window-side.ts";
import type { CornerPosts } from "../project/types.ts";

/** A junction with every dimension known [m], [W/(m·K)]. */
export type SettledJunction =
  | { kind: "outer corner"; sides: [Side, Side]; posts: CornerPosts }
  | { kind: "floor edge" | "roof edge"; sides: [Side, Side]; rim: number; plates: number }
  | {
      kind: "window side";
      sides: [Side];
      trimmers: number;
      width: number;
      depth: number;
      conductivity: number;
      /** From the outer face of the wall's framing. */
      setBack: number;
      /** Insulation in the reveal, behind its lining. */
      reveal: number;
    };

/** The drawing of a settled junction, and the sides to which its ψ refers. */
export interface DrawnJunction {
  draw: JunctionDrawing;
  level: SideResistances;
  upright: SideResistances;
}

/**
 * The drawing of a settled junction. The first side is the wall; of two walls the first lies along x.
 *
 * @param junction - its sides and dimensions
 * @returns the function that draws it, and its sides
 */
export function drawnJunction(junction: SettledJunction): DrawnJunction {
  if (junction.kind === "window side") return drawnWindowSide(junction);
  const [wall, other] = junction.sides;
  if (junction.kind === "outer corner")
    return { draw: (surfaces) => outerCorner(wall, other, junction.posts, surfaces), level: wall, upright: other };
  const edge = junction.kind === "floor edge" ? floorEdge : roofEdge;
  return { draw: (surfaces) => edge(other, wall, junction, surfaces), level: other, upright: wall };
}

function drawnWindowSide({
  sides: [wall],
  trimmers,
  ...frame
}: SettledJunction & { kind: "window side" }): DrawnJunction {
  const outside = wall.plies.slice(0, wall.frame).reduce((sum, { thickness }) => sum + thickness, 0);
  const measures = { ...frame, setBack: outside + frame.setBack };
  return {
    draw: (surfaces) => windowSide(wall, trimmers, measures, surfaces),
    level: wall,
    upright: frameAsSide(wall, measures),
  };
}
