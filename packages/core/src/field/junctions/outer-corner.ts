import { requireOneOf } from "../../require.ts";
import { requireJunctionSurfaces, requireSide } from "../given.ts";
import { fill } from "../scene.ts";
import { emptyJunction, type JunctionCell, type JunctionSurfaces, surroundJunction } from "./junction-cell.ts";
import { ringsOf } from "./rings.ts";
import type { Side } from "./side.ts";

/** The timber in an outer corner: 2 or 3 posts, or the whole corner filled. */
export type Posts = (typeof KINDS_OF_POSTS)[number];

const KINDS_OF_POSTS = [2, 3, "solid"] as const;

/**
 * Outer corner of two walls, in horizontal section. The layers of the level wall run past those of the other; a post
 * stands at the end of each wall's frame, and a third where the lining needs a nailing edge.
 *
 * @param level - the wall along x
 * @param upright - the wall along y
 * @param posts - timber in the corner; none where the walls have no framing
 * @param surfaces - surface resistances [m²·K/W]
 * @returns the junction
 * Source: ISO 10211:2017 clause 5 for the extent of the drawing (from memory); its posts are common practice.
 */
export function outerCorner(level: Side, upright: Side, posts: Posts, surfaces: JunctionSurfaces): JunctionCell {
  requireSide(level, "level");
  requireSide(upright, "upright");
  requireOneOf(posts, "posts", KINDS_OF_POSTS);
  requireJunctionSurfaces(surfaces);
  const cell = emptyJunction(level, upright);
  const { scene, levelLength, uprightLength } = cell;
  const frame = { x0: 0, x1: 0, y0: 0, y1: 0 };
  for (const { level: one, upright: other, position, x, y } of ringsOf(level, upright)) {
    const [across, along] = [x + (other?.thickness ?? 0), y + (one?.thickness ?? 0)];
    if (one !== null) fill(scene, one.stuff, { x0: x, x1: levelLength, y0: y, y1: along });
    if (other !== null) fill(scene, other.stuff, { x0: x, x1: across, y0: along, y1: uprightLength });
    if (position === "frame") Object.assign(frame, { x0: x, x1: across, y0: y, y1: along });
  }
  const { x0, x1, y0, y1 } = frame;
  const [post, otherPost] = [level.plies[level.frame]!.timber, upright.plies[upright.frame]!.timber];
  if (post !== null) {
    fill(scene, post, { x0, x1: posts === "solid" ? x1 + level.member : x0 + level.member, y0, y1 });
    if (posts === 3) fill(scene, post, { x0: x1, x1: x1 + level.member, y0, y1 });
  }
  if (otherPost !== null) fill(scene, otherPost, { x0, x1, y0: y1, y1: y1 + upright.member });
  surroundJunction(cell, surfaces);
  return cell;
}
