import { isRoof } from "../project/is-roof.ts";
import type { Material } from "../project/types.ts";
import type { OuterProtection } from "../result/types.ts";
import { endOfCounted } from "./places.ts";
import type { Situation } from "./types.ts";

/**
 * The protection that a new outermost board needs: ventilated cladding on a wall, a ventilated covering on a roof, a
 * lining for a combustible board that faces a room. The figures do not include it.
 *
 * @param situation - the build-up and what surrounds it
 * @param board - the board
 * @param at - index before which it is inserted
 * @returns what it needs; null if it needs nothing, or is already covered
 * Source: common practice.
 */
export function outerProtection({ buildUp, surroundings }: Situation, board: Material, at: number): OuterProtection {
  const { element, faces, layers } = buildUp;
  if (endOfCounted(buildUp) < layers.length) return null;
  if (surroundings.rooms.has(faces)) return board.kind === "mineral" ? null : "lining";
  if (faces !== "outdoors") return null;
  if (isRoof(buildUp)) return at < layers.length ? null : "roof covering";
  return element === "wall" ? "cladding" : null;
}
