import { comparable } from "../../problems/near-names.ts";
import type { PriceEntry, PriceUnit } from "../../project/types.ts";
import type { Goods } from "./goods.ts";

/** What each use can be bought by: a layer by its area or volume, framing by its volume or length, tape by its length. */
const BOUGHT_BY: Readonly<Record<Goods["use"], readonly PriceUnit[]>> = {
  layer: ["m2", "m3", "roll", "sheet"],
  framing: ["m3", "m"],
  tape: ["m"],
};

/** Thicknesses that differ by less are the same [m]. */
const SAME_THICKNESS = 1e-6;

/**
 * The price of some goods: one stated for their thickness before one for any.
 *
 * @param goods - use, material and thickness
 * @param entries - the user's own prices
 * @returns the price, or null without any
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
