import * as z from "zod";
import type { PriceUnit } from "../types.ts";
import { bare, custom, KIND_MARK, key, oneOf, optional, quantity, words } from "./schema-values.ts";

/** Most rows in a price list. */
export const MOST_PRICES = 500;

/** What a price can be for. */
export const PRICE_UNITS: readonly PriceUnit[] = ["m2", "m3", "roll", "sheet", "m"];

/** Units that are pieces: their size must be given, and may be given without a price. */
const PIECES: readonly PriceUnit[] = ["roll", "sheet"];

/** One price of the user's own. */
export const priceSchema = z
  .strictObject(
    {
      material: key("The material that is priced, named as in the layers", words("the name of a material"), {
        example: "mineral wool slab",
      }),
      thickness: optional("Thickness of the layer, or depth of the framing, that is priced", quantity("thickness"), {
        usual: "any",
      }),
      per: key("What the price is for", oneOf(PRICE_UNITS)),
      price: optional("Price in the currency of the project", bare("price")),
      covers: optional("Area that one roll or sheet covers", quantity("area"), { example: "50 m2" }),
      width: optional("Width of the roll or sheet, for laps and tape", quantity("width of a roll")),
      lap: optional("Lap of one roll over the next", quantity("lap"), { usual: "0 mm" }),
      waste: optional("Share that is cut off and thrown away", quantity("waste"), { usual: "0 %" }),
      hours: optional("Hours of work for a square metre of the build-up", bare("hours per area"), { usual: "0" }),
    },
    { error: `${KIND_MARK}a price in braces, for example { material: plywood, thickness: 12 mm, per: m2, price: 14 }` },
  )
  .check(({ value, issues }) => {
    const isPiece = PIECES.includes(value.per);
    if (isPiece && value.covers === undefined) issues.push(custom("price-no-cover", { per: value.per }, value));
    if (!isPiece && value.price === undefined) issues.push(custom("price-missing", { per: value.per }, value));
    for (const name of ["covers", "width", "lap"] as const) {
      if (!isPiece && value[name] !== undefined)
        issues.push(custom("price-key-of-piece", { key: name, per: value.per }, value, [name]));
    }
    if (value.lap !== undefined && value.width === undefined)
      issues.push(custom("price-lap-alone", {}, value, ["lap"]));
    if (value.lap !== undefined && value.width !== undefined && value.lap.value >= value.width.value)
      issues.push(custom("price-lap-too-wide", {}, value, ["lap"]));
  })
  .meta({ id: "price-entry" });

/** A price as written in the file, with quantities read. */
export type WrittenPrice = z.output<typeof priceSchema>;
