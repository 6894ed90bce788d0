import {
  type ComparisonOfBuildUp,
  type ComparisonRow,
  type ComparisonStudy,
  type CostResult,
  type GoodsResult,
  moneyInWords,
} from "@warmside/core";
import { type Html, html, markup } from "../../html.ts";
import { fixed, millimetres, orDash, percent, trimmed } from "../../numbers.ts";
import { figuresUnder, type Table, tableMarkup, withoutEmptyColumns, wordsUnder } from "../../table.ts";
import { rowName } from "./row-name.ts";

/**
 * Quantities for the build-up as drawn and for each variant: in all where the area is stated, else for a
 * square metre.
 *
 * @param study - the comparison, with the currency
 * @param comparison - one build-up of it
 * @returns a table for each
 */
export function goodsTables(study: ComparisonStudy, comparison: ComparisonOfBuildUp): Html {
  const { area } = comparison;
  const whole =
    area === null ? "one square metre: the file states no area" : `${trimmed(area, 2)} m², openings taken off`;
  const tables = comparison.rows.map((row, number) => goodsTable(rowName(row, number), row, comparison, study));
  const besideEachOther = tables.every(({ columns }) => columns.length <= MOST_COLUMNS_OF_HALF);
  const lists = tables.map(
    (table, number) => html`<div>${tableMarkup(table)}${notes(comparison.rows[number]!, area === null)}</div>`,
  );
  return html`<h4>Quantities, for ${whole}</h4><div${besideEachOther ? BESIDE_EACH_OTHER : null}>${lists}</div>`;
}

/** Columns of a table that fits on half a page: material, thickness, area, volume and length. */
const MOST_COLUMNS_OF_HALF = 5;
const BESIDE_EACH_OTHER = markup(' class="halves"');

function goodsTable(name: string, row: ComparisonRow, { area }: ComparisonOfBuildUp, study: ComparisonStudy): Table {
  const { goods, cost } = row;
  const { currency } = study;
  const perArea = area === null;
  const costs = goods.some(({ costPerArea }) => costPerArea !== null);
  return withoutEmptyColumns({
    caption: name,
    columns: [
      wordsUnder("Material"),
      figuresUnder("Thickness", "mm"),
      figuresUnder("Area", "m²"),
      figuresUnder("Volume", "m³"),
      figuresUnder("Length", "m"),
      figuresUnder("Waste"),
      wordsUnder("To order"),
      ...(costs ? PRICED : []),
    ],
    rows: goodsShown(row, perArea).map((one) => {
      const amounts = amountsOf(one, perArea)!;
      return [
        one.use === "framing" ? `${one.material} (framing)` : one.material,
        one.thickness === null ? "–" : millimetres(one.thickness),
        orDash(amounts.area, 2),
        orDash(amounts.volume, 3),
        orDash(amounts.length, 1),
        percent(one.waste, 0),
        orderWords(one),
        ...(costs
          ? [unitPriceWords(one, currency), costWords(perArea ? one.costPerArea : one.costInAll, currency)]
          : []),
      ];
    }),
    ...(costs && cost !== null ? { sums: sumRows(cost, area, study) } : {}),
  });
}

function goodsShown({ goods }: ComparisonRow, perArea: boolean): GoodsResult[] {
  return goods.filter((one) => amountsOf(one, perArea) !== null);
}

function notes(row: ComparisonRow, perArea: boolean): Html[] {
  return goodsShown(row, perArea).flatMap(({ note }) =>
    note === null ? [] : [html`<p class="remark">Tape: ${note}</p>`],
  );
}

const PRICED = [wordsUnder("Price"), figuresUnder("Cost")];

/** Labour, where an hour has a price, and the sum that the list adds up to. */
function sumRows(cost: CostResult, area: number | null, { currency, hourRate }: ComparisonStudy): string[][] {
  const line = (name: string, amount: number | null): string[] => [
    name,
    ...Array.from({ length: COLUMNS_BETWEEN }, () => ""),
    costWords(amount, currency),
  ];
  const squareMetres = area ?? 1;
  const labour =
    cost.labourPerArea === null || hourRate === null
      ? []
      : [
          line(
            `Labour: ${trimmed(cost.hoursPerArea * squareMetres, 2)} hours at ${moneyInWords(hourRate, currency)}`,
            cost.labourPerArea * squareMetres,
          ),
        ];
  return [...labour, line("In all", area === null ? cost.perArea : cost.inAll)];
}

/** Thickness, area, volume, length, waste, what to order and its price. */
const COLUMNS_BETWEEN = 7;

function unitPriceWords({ unitPrice }: GoodsResult, currency: string): string {
  if (unitPrice === null) return "none given";
  const { amount, per, covers } = unitPrice;
  const size = covers === null ? "" : ` of ${trimmed(covers, 2)} m²`;
  return `${moneyInWords(amount, currency)} a ${UNIT_WORDS[per]}${size}`;
}

function amountsOf(goods: GoodsResult, perArea: boolean): GoodsResult["inAll"] {
  return perArea ? goods.perArea : goods.inAll;
}

const UNIT_WORDS = { m2: "m²", m3: "m³", m: "m", roll: "roll", sheet: "sheet" } as const;

function orderWords({ toBuy }: GoodsResult): string {
  if (toBuy === null) return "–";
  const { count, unit } = toBuy;
  if (unit === "roll" || unit === "sheet") return `${fixed(count, 0)} ${UNIT_WORDS[unit]}${count === 1 ? "" : "s"}`;
  return `${fixed(count, unit === "m3" ? 2 : 1)} ${UNIT_WORDS[unit]}`;
}

function costWords(amount: number | null, currency: string): string {
  return amount === null ? "–" : moneyInWords(amount, currency, CENTS);
}

/** Decimals of a list that is to add up. */
const CENTS = 2;
