import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";

/**
 * A printed table of `shared/published`: lines that begin with `#` tell source, edition and unit, the rest is CSV.
 * Numbers are read as numbers; every column must be filled.
 */
export function printedTable<Column extends string>(
  name: string,
  ...columns: Column[]
): Record<Column, string | number>[] {
  const text = readFileSync(join(import.meta.dirname, `../../shared/published/${name}.csv`), "utf8");
  const rows: Record<string, string>[] = parse(text, {
    comment: "#",
    columns: true,
    skip_empty_lines: true,
    trim: true,
  });
  if (rows.length === 0) throw new Error(`${name}: no rows`);
  return rows.map((row) => {
    const read = columns.map((column) => {
      const cell = row[column];
      if (cell === undefined || cell === "") throw new Error(`${name}: ${column} is missing`);
      return [column, Number.isNaN(Number(cell)) ? cell : Number(cell)];
    });
    return Object.fromEntries(read) as Record<Column, string | number>;
  });
}

/** A printed table of numbers only. */
export function printedNumbers<Column extends string>(name: string, ...columns: Column[]): Record<Column, number>[] {
  const rows = printedTable(name, ...columns);
  for (const row of rows) {
    for (const column of columns)
      if (typeof row[column] !== "number") throw new Error(`${name}: ${row[column]} is no number`);
  }
  return rows as Record<Column, number>[];
}

/** Half a unit of the last of so many decimals, with room for the last bit of a division. */
export function halfUnit(decimals: number): number {
  return 0.5 * 10 ** -decimals * (1 + 1e-9);
}
