import type { Material } from "../project/types.ts";
import { endOfCounted } from "./places.ts";
import type { Situation } from "./types.ts";

/**
 * What a board that comes to lie outermost needs over it: ventilated cladding outside a wall, a lining where it stands in
 * a room and burns. Neither is counted in the figures.
 *
 * @param situation - the build-up as it stands and what surrounds it
 * @param board - the board
 * @returns words that follow the place of the board, from the comma on; empty where something lies over it already
 * Source: common practice.
 */
export function outerProtectionInWords({ buildUp, surroundings }: Situation, board: Material): string {
  const { element, faces, layers } = buildUp;
  if (endOfCounted(buildUp) < layers.length) return "";
  if (surroundings.rooms.has(faces)) return board.kind === "mineral" ? "" : ", lined for fire (the lining not counted)";
  return element === "wall" && faces === "outdoors" ? ", behind ventilated cladding (not counted)" : "";
}
