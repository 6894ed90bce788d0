import { type ComparisonOfBuildUp, type ComparisonRow, type ComparisonStudy, moneyInWords } from "@warmside/core";
import { type Html, html } from "../../html.ts";
import { fixed, MINUS, signed } from "../../numbers.ts";
import { type Column, tableMarkup } from "../../table.ts";
import { rowName } from "./row-name.ts";

/**
 * Heat over the year, what is saved against the build-up as drawn, and what it costs.
 *
 * @param study - the comparison, with currency and heat price
 * @param comparison - one build-up of it
 * @returns the table; money only where there are prices
 */
export function costTable(study: ComparisonStudy, { rows }: ComparisonOfBuildUp): Html {
  const columns = [...HEAT, ...(rows.some(({ cost }) => cost !== null) ? COST : [])];
  const payback = study.heatPricePerKilowattHour === null ? [] : PAYS;
  const all = [...columns, ...payback];
  const unpriced = [...new Set(rows.flatMap(({ cost }) => cost?.unpriced ?? []))];
  const table = tableMarkup({
    caption: "Heat through it over the year, and cost, against the build-up as drawn",
    columns: [{ head: "Variant", kind: "words" }, ...all.map(({ column }) => column)],
    rows: rows.map((row, number) => [rowName(row, number), ...all.map(({ cell }) => cell(row, study.currency))]),
    marked: [0],
  });
  const without =
    unpriced.length === 0
      ? null
      : html`<p class="remark">Without a price, and left out of the costs: ${unpriced.join(", ")}.</p>`;
  return html`${table}${without}`;
}

interface CostColumn {
  column: Column;
  cell: (row: ComparisonRow, currency: string) => string;
}

const HEAT: readonly CostColumn[] = [
  { column: figures("Heat over the year", "kWh/m²"), cell: (row) => orDash(row.heatPerYear, 1) },
  { column: figures("Saved a year", "kWh/m²"), cell: (row) => signedOrDash(row.againstBase?.heat ?? null, 1) },
  {
    column: figures("Saved for each 10 mm", "kWh/m²"),
    cell: ({ againstBase }) => orDash(perTenMillimetres(againstBase?.heatPerThickness ?? null), 1),
  },
  { column: figures("Saved a year in all", "kWh"), cell: (row) => signedOrDash(row.againstBase?.heatInAll ?? null, 0) },
];

const COST: readonly CostColumn[] = [
  { column: figures("Cost", "for m²"), cell: ({ cost }, currency) => money(cost?.perArea ?? null, currency) },
  { column: figures("Cost in all"), cell: ({ cost }, currency) => money(cost?.inAll ?? null, currency) },
  { column: figures("Hours", "for m²"), cell: ({ cost }) => orDash(cost?.hoursPerArea ?? null, 2) },
  {
    column: figures("Extra cost", "for m²"),
    cell: ({ againstBase }, currency) => money(againstBase?.extraCost ?? null, currency),
  },
];

const PAYS: readonly CostColumn[] = [
  {
    column: figures("Saved a year", "money for m²"),
    cell: ({ againstBase }, currency) => money(againstBase?.money ?? null, currency),
  },
  {
    column: figures("Saved for each 10 mm", "money for m²"),
    cell: ({ againstBase }, currency) => money(perTenMillimetres(againstBase?.moneyPerThickness ?? null), currency),
  },
  { column: figures("Pays after", "years"), cell: ({ againstBase }) => orDash(againstBase?.yearsToPay ?? null, 1) },
];

function figures(head: string, unit?: string): Column {
  return unit === undefined ? { head, kind: "figures" } : { head, unit, kind: "figures" };
}

const TEN_MILLIMETRES = 0.01;

function perTenMillimetres(perMetre: number | null): number | null {
  return perMetre === null ? null : perMetre * TEN_MILLIMETRES;
}

function orDash(value: number | null, decimals: number): string {
  return value === null ? "–" : fixed(value, decimals);
}

function signedOrDash(value: number | null, decimals: number): string {
  return value === null ? "–" : signed(value, decimals);
}

function money(amount: number | null, currency: string): string {
  if (amount === null) return "–";
  return `${amount < 0 ? MINUS : ""}${moneyInWords(amount, currency)}`;
}
