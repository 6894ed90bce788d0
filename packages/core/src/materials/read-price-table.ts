import { orderProblems } from "../problems/order-problems.ts";
import type { Reading } from "../problems/types.ts";
import { samePriceKey } from "../project/resolve/resolve-price-list.ts";
import { PRICE_UNITS } from "../project/schema/schema-price.ts";
import type { PriceEntry } from "../project/types.ts";
import { requireText } from "../require.ts";
import { readTable, type TableForm } from "../tables/read-table.ts";
import { type CellReader, cellReader } from "../tables/table-cells.ts";
import { inFile } from "../tables/table-problem.ts";

/** Columns of a price table: the price of a square metre, cubic metre, metre, roll or sheet of a material. */
export const PRICE_COLUMNS: TableForm = {
  what: "price table",
  required: ["material", "per", "price"],
  optional: ["thickness_m", "covers_m2", "width_m", "lap_m", "waste_pct", "hours_per_m2"],
};

/**
 * Reads the user's own prices; warmside ships none.
 *
 * @param text - the table
 * @param file - its path, for messages
 * @returns one entry for each row, or every problem at once, ordered by line
 */
export function readPriceTable(text: string, file: string): Reading<PriceEntry[]> {
  requireText(text, "text");
  requireText(file, "file");
  const { rows, problems } = readTable(text, PRICE_COLUMNS);
  const entries: PriceEntry[] = [];
  const taken = new Set<string>();
  for (const row of rows) {
    const cells = cellReader(row, problems);
    const entry = entryOf(cells);
    if (entry === null) continue;
    if (taken.has(samePriceKey(entry))) cells.refuse("price-twice", { per: entry.per }, entry.material);
    taken.add(samePriceKey(entry));
    entries.push(entry);
  }
  return problems.length > 0
    ? { ok: false, problems: inFile(orderProblems(problems), file) }
    : { ok: true, value: entries };
}

function entryOf(cells: CellReader): PriceEntry | null {
  const material = cells.text("material");
  const per = cells.word("per", PRICE_UNITS);
  const isPiece = per === "roll" || per === "sheet";
  if (material === null) cells.refuse("row-without-name");
  for (const column of isPiece ? ["per"] : ["per", "price"])
    if (cells.text(column) === null) cells.refuse("cell-empty", { column });
  if (isPiece && cells.text("covers_m2") === null) cells.refuse("price-needs-cover", { per });
  const price = cells.quantity("price", "price");
  const waste = cells.quantity("waste_pct", "waste in per cent");
  const sizes = {
    thickness: cells.quantity("thickness_m", "thickness"),
    covers: cells.quantity("covers_m2", "area"),
    width: cells.quantity("width_m", "width of a roll"),
    lap: cells.quantity("lap_m", "lap"),
  };
  const hours = cells.quantity("hours_per_m2", "hours per area");
  if (material === null || per === null) return null;
  return { material, per, price, ...sizes, waste: (waste ?? 0) / 100, hours };
}
