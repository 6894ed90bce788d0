import { comparable } from "../../problems/near-names.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenPrice } from "../schema/schema-price.ts";
import type { PriceEntry } from "../types.ts";
import { listAt } from "../value-at.ts";

/**
 * Reads the prices given in the project file itself.
 *
 * @param context - data and problems
 * @returns the entries; those with problems are left out
 */
export function resolvePriceList(context: ReadingContext): PriceEntry[] {
  const entries: PriceEntry[] = [];
  const taken = new Set<string>();
  for (const index of listAt(context.file.data, ["prices"]).keys()) {
    const path = ["prices", index];
    const written = context.shape.at<WrittenPrice>(path);
    if (written === null) continue;
    const entry = entryOf(written);
    const { material, per } = entry;
    if (taken.has(samePriceKey(entry)))
      context.collector.add("price-twice", [...path, "material"], { name: material, per });
    taken.add(samePriceKey(entry));
    entries.push(entry);
  }
  return entries;
}

/**
 * A key that each price must have to itself: between two prices with the same key, neither could be chosen.
 *
 * @param entry - a price
 * @returns its material, thickness and unit as one text
 */
export function samePriceKey({ material, thickness, per }: PriceEntry): string {
  return JSON.stringify([comparable(material), thickness, per]);
}

function entryOf(written: WrittenPrice): PriceEntry {
  return {
    material: written.material,
    thickness: written.thickness?.value ?? null,
    per: written.per,
    price: written.price?.value ?? null,
    covers: written.covers?.value ?? null,
    width: written.width?.value ?? null,
    lap: written.lap?.value ?? null,
    waste: written.waste?.value ?? 0,
    hours: written.hours?.value ?? null,
  };
}
