import type { AgainstBase, ComparisonRow, GoodsResult } from "../../result/types.ts";

/** A row before it is held against the first. */
export type PlainRow = Omit<ComparisonRow, "againstBase" | "sentence">;

/**
 * A variant less the build-up as drawn: thickness, heat and money, and when it pays.
 *
 * @param variant - its row
 * @param base - the row of the build-up as drawn
 * @param heatPrice - money for a kilowatt hour; null without one
 * @returns differences; null where one of the two is not known
 * Source: simple payback, extra cost over the money saved in a year: no interest, no change of prices, no losses of the
 * heater (said in the assumptions of the study).
 */
export function againstBase(variant: PlainRow, base: PlainRow, heatPrice: number | null): AgainstBase {
  const thickness = variant.thickness - base.thickness;
  const heat = less(base.heatPerYear, variant.heatPerYear);
  const heatInAll = less(base.heatPerYearInAll, variant.heatPerYearInAll);
  const money = times(heat, heatPrice);
  const areComparable = sameUnpriced(variant.goods, base.goods);
  const extraCost = areComparable ? less(variant.cost?.perArea ?? null, base.cost?.perArea ?? null) : null;
  const extraCostInAll = areComparable ? less(variant.cost?.inAll ?? null, base.cost?.inAll ?? null) : null;
  const perThickness = (saved: number | null): number | null =>
    saved === null || !(thickness > LEAST_ADDED) ? null : saved / thickness;
  return {
    thickness,
    floorArea: less(variant.floorArea, base.floorArea),
    heat,
    heatInAll,
    heatPerThickness: perThickness(heat),
    money,
    moneyInAll: times(heatInAll, heatPrice),
    moneyPerThickness: perThickness(money),
    extraCost,
    extraCostInAll,
    yearsToPay: yearsToPay(extraCost, money),
  };
}

/** Less is no thicker [m]. */
const LEAST_ADDED = 1e-6;

function less(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : one - other;
}

function times(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : one * other;
}

/** What costs nothing more pays at once; what saves nothing never does. */
function yearsToPay(extraCost: number | null, moneyAYear: number | null): number | null {
  if (extraCost === null || moneyAYear === null || !(moneyAYear > 0)) return null;
  return Math.max(0, extraCost) / moneyAYear;
}

/** Goods without a price cancel where both have the same amount of them. */
function sameUnpriced(one: readonly GoodsResult[], other: readonly GoodsResult[]): boolean {
  const unpriced = (goods: readonly GoodsResult[]): string =>
    goods
      .filter(({ costPerArea }) => costPerArea === null)
      .map(({ use, material, thickness, perArea, inAll }) =>
        [use, material, thickness, ...Object.values(perArea ?? inAll ?? {})]
          .map((value) => (typeof value === "number" ? value.toPrecision(9) : value))
          .join("|"),
      )
      .sort()
      .join("\n");
  return unpriced(one) === unpriced(other);
}
