import { orderProblems } from "../problems/order-problems.ts";
import type { Reading } from "../problems/types.ts";
import type { PriceEntry } from "../project/types.ts";
import { readTable, type TableForm } from "./read-table.ts";
import { cellReader } from "./table-cells.ts";

/** Columns of a price table: what one square metre, cubic metre, metre, roll or sheet of a material costs. */
export const PRICE_COLUMNS: TableForm = {
  what: "price table",
  required: ["material", "per", "price"],
  optional: ["covers_m2", "waste_pct", "hours_per_m2"],
};

/**
 * Reads the user's own prices; warmside ships none.
 *
 * @param text - the table
 * @param file - its path, for messages
 * @returns one entry a row, or every problem at once, ordered by line
 */
export function readPriceTable(text: string, file: string): Reading<PriceEntry[]> {
  const { rows, problems } = readTable(text, file, PRICE_COLUMNS);
  const entries: PriceEntry[] = [];
  for (const row of rows) {
    const cells = cellReader(row, file, problems);
    const material = cells.text("material");
    const per = cells.word("per", ["m2", "m3", "roll", "sheet", "m"]);
    const price = cells.number("price", "hour rate");
    const covers = cells.number("covers_m2", "area");
    if (material === null) cells.refuse("row-without-name");
    for (const column of ["per", "price"]) if (cells.text(column) === null) cells.refuse("cell-empty", { column });
    if ((per === "roll" || per === "sheet") && cells.text("covers_m2") === null)
      cells.refuse("price-needs-cover", { per });
    const waste = cells.number("waste_pct", "waste in per cent");
    const hours = cells.number("hours_per_m2", "hours per area");
    if (material === null || per === null || price === null) continue;
    entries.push({ material, per, price, covers, waste: (waste ?? 0) / 100, hours });
  }
  return problems.length > 0 ? { ok: false, problems: orderProblems(problems) } : { ok: true, value: entries };
}
