import type { AgainstBase, ComparisonRow, GoodsResult } from "../../result/types.ts";

/** A row before it is compared with the first. */
export type PlainRow = Omit<ComparisonRow, "againstBase" | "sentence">;

/**
 * The differences between a variant and the build-up as drawn: thickness, heat, money and payback time.
 *
 * @param variant - its row
 * @param base - the row of the build-up as drawn
 * @param heatPrice - price of a kilowatt hour; null without one
 * @returns the differences; null where one of the two values is not known
 * Source: simple payback, extra cost divided by the money saved in a year, without interest, changes of price or losses
 * of the heater (stated in the assumptions of the study).
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

/** A smaller difference counts as none [m]. */
const LEAST_ADDED = 1e-6;

function less(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : one - other;
}

function times(one: number | null, other: number | null): number | null {
  return one === null || other === null ? null : one * other;
}

/** Years until the extra cost is saved: 0 if there is none; null if nothing is saved or a figure is not known. */
function yearsToPay(extraCost: number | null, moneyAYear: number | null): number | null {
  if (extraCost === null || moneyAYear === null || !(moneyAYear > 0)) return null;
  return Math.max(0, extraCost) / moneyAYear;
}

/** Whether both have the same goods without a price, in the same amounts, so that these cancel. */
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
