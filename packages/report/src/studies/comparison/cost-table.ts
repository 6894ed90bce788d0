import { type ComparisonOfBuildUp, type ComparisonRow, type ComparisonStudy, moneyInWords } from "@warmside/core";
import { type Html, html } from "../../html.ts";
import { MINUS, orDash, signed } from "../../numbers.ts";
import { type Column, figuresUnder, tableMarkup, withoutEmptyColumns, wordsUnder } from "../../table.ts";
import { rowName } from "./row-name.ts";

/**
 * Heat over the year, the saving compared with the build-up as drawn, and the cost.
 *
 * @param study - the comparison, with currency and heat price
 * @param comparison - one build-up of it
 * @returns the table; money only where there are prices, and none where no heat is lost and nothing has a price
 */
export function costTable(study: ComparisonStudy, { rows }: ComparisonOfBuildUp): Html {
  const columns = [...HEAT, ...(rows.some(({ cost }) => cost !== null) ? COST : [])];
  const payback = study.heatPricePerKilowattHour === null ? [] : PAYS;
  const all = [...columns, ...payback];
  const unpriced = [...new Set(rows.flatMap(({ cost }) => cost?.unpriced ?? []))];
  const table = withoutEmptyColumns({
    caption: "Heat over the year and cost, against the build-up as drawn",
    columns: [wordsUnder("Variant"), ...all.map(({ column }) => column)],
    rows: rows.map((row, number) => [rowName(row, number), ...all.map(({ cell }) => cell(row, study.currency))]),
    marked: [0],
  });
  const without =
    unpriced.length === 0
      ? null
      : html`<p class="remark">Without a price, and left out of the costs: ${unpriced.join(", ")}.</p>`;
  return html`${prices(study)}${table.columns.length > 1 ? tableMarkup(table) : null}${without}${unknownDifferences(rows)}`;
}

/** The prices that are no price of goods. */
function prices({ currency, heatPricePerKilowattHour: heat, hourRate }: ComparisonStudy): Html | null {
  const given = [
    heat === null ? null : `a kilowatt hour of heat ${moneyInWords(heat, currency)}`,
    hourRate === null ? null : `an hour of work ${moneyInWords(hourRate, currency)}`,
  ].filter((price) => price !== null);
  return given.length === 0
    ? null
    : html`<p>Prices as given: ${given.join("; ")}; the prices of goods are in the lists below.</p>`;
}

/** Why an extra cost is not given: goods without a price, of which the two need different amounts. */
function unknownDifferences(rows: readonly ComparisonRow[]): Html | null {
  const [base, ...variants] = rows;
  const entries = variants.flatMap((row, index) => {
    if (base === undefined || row.cost === null || row.againstBase === null || row.againstBase.extraCost !== null)
      return [];
    const names = differingWithoutPrice(base, row);
    return names.length === 0
      ? []
      : [
          html`<li>${rowName(row, index + 1)}: its extra cost is unknown: it takes another amount of ${names.join(", ")}, which has no price.</li>`,
        ];
  });
  return entries.length === 0 ? null : html`<ul class="remark">${entries}</ul>`;
}

function differingWithoutPrice(base: ComparisonRow, row: ComparisonRow): string[] {
  const amounts = ({ goods }: ComparisonRow): Map<string, string> => {
    const found = new Map<string, string>();
    for (const { use, material, thickness, costPerArea, perArea, inAll } of goods) {
      if (costPerArea !== null) continue;
      const amount = Object.values(perArea ?? inAll ?? {}).map((value) => value?.toPrecision(AMOUNT_DIGITS) ?? "");
      found.set(material, [found.get(material), use, thickness, ...amount].join("|"));
    }
    return found;
  };
  const [one, other] = [amounts(base), amounts(row)];
  return [...new Set([...one.keys(), ...other.keys()])].filter((name) => one.get(name) !== other.get(name));
}

/** Digits in which amounts must agree to count as equal. */
const AMOUNT_DIGITS = 9;

interface CostColumn {
  column: Column;
  cell: (row: ComparisonRow, currency: string) => string;
}

const HEAT: readonly CostColumn[] = [
  { column: figuresUnder("Heat over the year", "kWh/m²"), cell: (row) => orDash(row.heatPerYear, 1) },
  { column: figuresUnder("Saved a year", "kWh/m²"), cell: (row) => signedOrDash(row.againstBase?.heat ?? null, 1) },
  {
    column: figuresUnder("Saved for each 10 mm", "kWh/m²"),
    cell: ({ againstBase }) => orDash(perTenMillimetres(againstBase?.heatPerThickness ?? null), 1),
  },
  {
    column: figuresUnder("Saved a year in all", "kWh"),
    cell: (row) => signedOrDash(row.againstBase?.heatInAll ?? null, 0),
  },
];

const COST: readonly CostColumn[] = [
  { column: figuresUnder("Cost", "for m²"), cell: ({ cost }, currency) => money(cost?.perArea ?? null, currency) },
  { column: figuresUnder("Cost in all"), cell: ({ cost }, currency) => money(cost?.inAll ?? null, currency) },
  { column: figuresUnder("Hours", "for m²"), cell: ({ cost }) => orDash(cost?.hoursPerArea ?? null, 2) },
  {
    column: figuresUnder("Extra cost", "for m²"),
    cell: ({ againstBase }, currency) => money(againstBase?.extraCost ?? null, currency),
  },
];

const PAYS: readonly CostColumn[] = [
  {
    column: figuresUnder("Saved a year", "money for m²"),
    cell: ({ againstBase }, currency) => money(againstBase?.money ?? null, currency),
  },
  {
    column: figuresUnder("Saved for each 10 mm", "money for m²"),
    cell: ({ againstBase }, currency) => money(perTenMillimetres(againstBase?.moneyPerThickness ?? null), currency),
  },
  {
    column: figuresUnder("Pays not before", "years"),
    cell: ({ againstBase }) => orDash(againstBase?.yearsToPay ?? null, 1),
  },
];

const TEN_MILLIMETRES = 0.01;

function perTenMillimetres(perMetre: number | null): number | null {
  return perMetre === null ? null : perMetre * TEN_MILLIMETRES;
}

function signedOrDash(value: number | null, decimals: number): string {
  return value === null ? "–" : signed(value, decimals);
}

function money(amount: number | null, currency: string): string {
  if (amount === null) return "–";
  return `${amount < 0 ? MINUS : ""}${moneyInWords(amount, currency)}`;
}
