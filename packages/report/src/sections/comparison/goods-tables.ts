import { type ComparisonOfBuildUp, type ComparisonStudy, type GoodsResult, moneyInWords } from "@warmside/core";
import { type Html, html } from "../../html.ts";
import { fixed, millimetres, percent, trimmed } from "../../numbers.ts";
import { tableMarkup } from "../../table.ts";
import { rowName } from "./row-name.ts";

/**
 * What there is to buy for the build-up as drawn and for each variant: in all where the area is stated, else for a
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
  return html`<h4>What there is to buy, for ${whole}</h4>${comparison.rows.map((row, number) =>
    goodsTable(rowName(row, number), row.goods, area === null, study.currency),
  )}`;
}

function goodsTable(name: string, goods: readonly GoodsResult[], perArea: boolean, currency: string): Html {
  const costs = goods.some(({ costPerArea }) => costPerArea !== null);
  const shown = goods.filter((one) => amountsOf(one, perArea) !== null);
  const table = tableMarkup({
    caption: name,
    columns: [
      { head: "Material", kind: "words" },
      { head: "Thickness", unit: "mm", kind: "figures" },
      { head: "Area", unit: "m²", kind: "figures" },
      { head: "Volume", unit: "m³", kind: "figures" },
      { head: "Length", unit: "m", kind: "figures" },
      { head: "Waste", kind: "figures" },
      { head: "To order", kind: "words" },
      ...(costs ? [{ head: "Cost", kind: "figures" as const }] : []),
    ],
    rows: shown.map((one) => {
      const amounts = amountsOf(one, perArea)!;
      return [
        one.use === "framing" ? `${one.material} (framing)` : one.material,
        one.thickness === null ? "–" : millimetres(one.thickness),
        orDash(amounts.area, 2),
        orDash(amounts.volume, 3),
        orDash(amounts.length, 1),
        percent(one.waste, 0),
        orderWords(one),
        ...(costs ? [costWords(perArea ? one.costPerArea : one.costInAll, currency)] : []),
      ];
    }),
  });
  const notes = shown.flatMap(({ note }) => (note === null ? [] : [note]));
  return html`${table}${notes.map((note) => html`<p class="remark">Tape: ${note}</p>`)}`;
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
  return amount === null ? "–" : moneyInWords(amount, currency);
}

function orDash(value: number | null, decimals: number): string {
  return value === null ? "–" : fixed(value, decimals);
}
