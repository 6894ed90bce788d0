import { orderProblems } from "../problems/order-problems.ts";
import type { Reading } from "../problems/types.ts";
import type { EverydayName } from "../project/types.ts";
import { requireText } from "../require.ts";
import { readTable, type TableForm } from "../tables/read-table.ts";
import { cellReader } from "../tables/table-cells.ts";
import { inFile } from "../tables/table-problem.ts";

/** Columns of the table of everyday names; several materials are separated by `|`. */
export const EVERYDAY_NAME_COLUMNS: TableForm = {
  what: "table of everyday names",
  required: ["name", "materials", "question"],
  optional: [],
};

/**
 * Reads the table of everyday names.
 *
 * @param text - the table
 * @param file - its path, for messages
 * @returns the names, or every problem at once, ordered by line
 */
export function readEverydayNames(text: string, file: string): Reading<EverydayName[]> {
  requireText(text, "text");
  requireText(file, "file");
  const { rows, problems } = readTable(text, EVERYDAY_NAME_COLUMNS);
  const names = rows.map((row): EverydayName => {
    const cells = cellReader(row, problems);
    const name = cells.text("name");
    if (name === null) cells.refuse("row-without-name");
    const materials = (cells.text("materials") ?? "").split("|").map((material) => material.trim());
    return {
      name: name ?? "",
      materials: materials.filter((material) => material !== ""),
      question: cells.text("question"),
    };
  });
  return problems.length > 0
    ? { ok: false, problems: inFile(orderProblems(problems), file) }
    : { ok: true, value: names };
}
