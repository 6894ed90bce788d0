import type { Material } from "../project/types.ts";
import type { OuterProtection } from "../result/types.ts";
import { endOfCounted } from "./places.ts";
import type { Situation } from "./types.ts";

/**
 * What a board that comes to lie outermost needs over it: ventilated cladding outside a wall, a lining where it stands in
 * a room and burns. Neither is counted in the figures.
 *
 * @param situation - the build-up as it stands and what surrounds it
 * @param board - the board
 * @returns the one or the other; null where something lies over it already
 * Source: common practice.
 */
export function outerProtection({ buildUp, surroundings }: Situation, board: Material): OuterProtection {
  const { element, faces, layers } = buildUp;
  if (endOfCounted(buildUp) < layers.length) return null;
  if (surroundings.rooms.has(faces)) return board.kind === "mineral" ? null : "lining";
  return element === "wall" && faces === "outdoors" ? "cladding" : null;
}
