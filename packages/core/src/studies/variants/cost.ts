import type { BuildUp, PriceEntry, PriceList } from "../../project/types.ts";
import type { CostResult, GoodsResult } from "../../result/types.ts";
import { type Goods, goodsOf } from "./goods.ts";
import { priceFor } from "./price-for.ts";
import { TAPE, tapeFor } from "./tape.ts";

/**
 * The quantities of a build-up, with their cost where there is a price.
 *
 * @param buildUp - the build-up
 * @param prices - the user's own; null without any
 * @returns goods from the room outwards, then framing, then tape
 */
export function goodsWithPrices(buildUp: BuildUp, prices: PriceList | null): GoodsResult[] {
  const entries = prices?.entries ?? [];
  const area = netArea(buildUp);
  const goods = goodsOf(buildUp).map((one) => priced(one, priceFor(one, entries), area));
  const tape = tapeFor(buildUp, entries);
  return tape === null ? goods : [...goods, pricedTape(tape.length, tape.note, entries, area!)];
}

/** Area of a build-up without its openings [m²]; null when not stated. */
export function netArea({ area, openings }: BuildUp): number | null {
  return area === null ? null : area - (openings ?? 0);
}

/**
 * Cost of a build-up from its goods.
 *
 * @param goods - as returned by `goodsWithPrices`
 * @param prices - the user's own; null without any
 * @param area - without openings [m²]; null when not stated
 * @returns the cost per square metre and in all; null when nothing has a price
 */
export function costOf(
  goods: readonly GoodsResult[],
  prices: PriceList | null,
  area: number | null,
): CostResult | null {
  if (prices === null || goods.every(({ costPerArea }) => costPerArea === null)) return null;
  const sum = (values: readonly (number | null)[]): number => values.reduce<number>((all, one) => all + (one ?? 0), 0);
  const materialsPerArea = sum(goods.map(({ costPerArea }) => costPerArea));
  const hoursPerArea = sum(goods.map(({ hours }) => hours));
  const labourPerArea = prices.hourRate === null ? null : hoursPerArea * prices.hourRate;
  const materialsInAll = sum(goods.map(({ costInAll }) => costInAll));
  return {
    materialsPerArea,
    labourPerArea,
    perArea: materialsPerArea + (labourPerArea ?? 0),
    inAll: area === null ? null : materialsInAll + (labourPerArea ?? 0) * area,
    hoursPerArea,
    unpriced: [...new Set(goods.filter(({ costPerArea }) => costPerArea === null).map(({ material }) => material))],
  };
}

/** Amount for one square metre [m², m³, m or pieces]; null if the goods are not counted in that unit. */
function amountOf({ area, volume, length }: Goods, { per, covers }: PriceEntry): number | null {
  if (per === "m2") return area;
  if (per === "m3") return volume;
  if (per === "m") return length;
  return area === null ? null : area / covers!;
}

function priced(goods: Goods, entry: PriceEntry | null, area: number | null): GoodsResult {
  const { use, material, thickness } = goods;
  const perArea = { area: goods.area, volume: goods.volume, length: goods.length };
  const whole = (amount: number | null): number | null => (amount === null ? null : amount * area!);
  const inAll =
    area === null ? null : { area: whole(goods.area), volume: whole(goods.volume), length: whole(goods.length) };
  const described = { use, material, thickness, perArea, inAll, note: null };
  const amount = entry === null ? null : amountOf(goods, entry);
  if (entry === null || amount === null)
    return { ...described, unitPrice: null, waste: 0, toBuy: null, costPerArea: null, costInAll: null, hours: null };
  const withWaste = amount * (1 + entry.waste);
  const count = area === null ? null : toOrder(withWaste * area, entry);
  return {
    ...described,
    unitPrice: unitPrice(entry),
    waste: entry.waste,
    toBuy: count === null ? null : { count, unit: entry.per },
    costPerArea: entry.price === null ? null : withWaste * entry.price,
    costInAll: entry.price === null || count === null ? null : count * entry.price,
    hours: entry.hours === null ? null : entry.hours * goods.layers,
  };
}

function pricedTape(length: number, note: string, entries: readonly PriceEntry[], area: number): GoodsResult {
  const described = { use: "tape", material: TAPE, thickness: null, perArea: null, note } as const;
  const inAll = { area: null, volume: null, length };
  const entry = priceFor({ use: "tape", material: TAPE, thickness: null }, entries);
  if (entry === null || entry.price === null)
    return {
      ...described,
      inAll,
      unitPrice: null,
      waste: 0,
      toBuy: null,
      costPerArea: null,
      costInAll: null,
      hours: null,
    };
  const count = length * (1 + entry.waste);
  const costInAll = count * entry.price;
  return {
    ...described,
    inAll,
    unitPrice: unitPrice(entry),
    waste: entry.waste,
    toBuy: { count, unit: "m" },
    costPerArea: costInAll / area,
    costInAll,
    hours: entry.hours,
  };
}

function unitPrice({ price, per, covers }: PriceEntry): GoodsResult["unitPrice"] {
  return price === null ? null : { amount: price, per, covers };
}

/** The amount to buy. Rolls and sheets are bought whole; binary noise over a whole number is not rounded up. */
function toOrder(amount: number, { per }: PriceEntry): number {
  return per === "roll" || per === "sheet" ? Math.ceil(amount - ROUNDING_NOISE) : amount;
}

const ROUNDING_NOISE = 1e-9;
