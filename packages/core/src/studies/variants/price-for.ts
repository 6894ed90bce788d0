import { comparable } from "../../problems/near-names.ts";
import type { PriceEntry, PriceUnit } from "../../project/types.ts";
import type { Goods } from "./goods.ts";

/** The units in which each use can be bought: layers by area or volume, framing by volume or length, tape by length. */
const BOUGHT_BY: Readonly<Record<Goods["use"], readonly PriceUnit[]>> = {
  layer: ["m2", "m3", "roll", "sheet"],
  framing: ["m3", "m"],
  tape: ["m"],
};

/** Thicknesses that differ by less than this count as the same [m]. */
const SAME_THICKNESS = 1e-6;

/**
 * Finds the price of goods: one for their thickness, or else one for any thickness.
 *
 * @param goods - use, material and thickness
 * @param entries - the user's own prices
 * @returns the price, or null if there is none
 */
export function priceFor(
  { use, material, thickness }: Pick<Goods, "use" | "material" | "thickness">,
  entries: readonly PriceEntry[],
): PriceEntry | null {
  const fitting = entries.filter(
    (entry) => comparable(entry.material) === comparable(material) && BOUGHT_BY[use].includes(entry.per),
  );
  const exact = fitting.find(
    (entry) => entry.thickness !== null && thickness !== null && Math.abs(entry.thickness - thickness) < SAME_THICKNESS,
  );
  return exact ?? fitting.find((entry) => entry.thickness === null) ?? null;
}
