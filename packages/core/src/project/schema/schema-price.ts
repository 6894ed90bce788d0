import * as z from "zod";
import type { PriceUnit } from "../types.ts";
import { bare, custom, KIND_MARK, oneOf, quantity, words } from "./schema-values.ts";
import type { WrittenPrice } from "./written-project.ts";

/** Rows of a price list at most. */
export const MOST_PRICES = 500;

/** What a price can be for. */
export const PRICE_UNITS: readonly PriceUnit[] = ["m2", "m3", "roll", "sheet", "m"];

/** Prices for a piece: its size is needed, and may be told without a price. */
const PIECES: readonly PriceUnit[] = ["roll", "sheet"];

/** One price of the user's own. */
export const priceSchema: z.ZodType<WrittenPrice> = z
  .strictObject(
    {
      material: words("the name of a material"),
      thickness: quantity("thickness").optional(),
      per: oneOf(PRICE_UNITS),
      price: bare("price").optional(),
      covers: quantity("area").optional(),
      width: quantity("width of a roll").optional(),
      lap: quantity("lap").optional(),
      waste: quantity("waste").optional(),
      hours: bare("hours per area").optional(),
    },
    { error: `${KIND_MARK}a price in braces, for example { material: plywood, thickness: 12 mm, per: m2, price: 14 }` },
  )
  .check(({ value, issues }) => {
    const isPiece = PIECES.includes(value.per);
    if (isPiece && value.covers === undefined) issues.push(custom("price-no-cover", { per: value.per }, value));
    if (!isPiece && value.price === undefined) issues.push(custom("price-missing", { per: value.per }, value));
    for (const key of ["covers", "width", "lap"] as const) {
      if (!isPiece && value[key] !== undefined)
        issues.push(custom("price-key-of-piece", { key, per: value.per }, value, [key]));
    }
    if (value.lap !== undefined && value.width === undefined)
      issues.push(custom("price-lap-alone", {}, value, ["lap"]));
    if (value.lap !== undefined && value.width !== undefined && value.lap.value >= value.width.value)
      issues.push(custom("price-lap-too-wide", {}, value, ["lap"]));
  });
