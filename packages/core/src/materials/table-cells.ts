import { nearNames } from "../problems/near-names.ts";
import type { Problem } from "../problems/types.ts";
import { plainDigits } from "../quantities/format-quantity.ts";
import type { QuantityName } from "../quantities/quantity-names.ts";
import { quantityOf } from "../quantities/vocabulary.ts";
import { type TableRow, tableProblem } from "./read-table.ts";

/** Reads the cells of one row and gathers their problems. */
export interface CellReader {
  /** A number in the column's unit, within the possible range of the quantity; null when empty or wrong. */
  number(column: string, quantity: QuantityName): number | null;
  /** One of a few words; null when empty or wrong. */
  word<Word extends string>(column: string, options: readonly Word[]): Word | null;
  /** Any text; null when empty. */
  text(column: string): string | null;
  /** A problem of the row as a whole. */
  refuse(code: string, details?: Problem["details"], received?: string | null): void;
}

/**
 * Makes the reader of one row.
 *
 * @param row - line and cells
 * @param file - the table's path
 * @param problems - where problems go
 * @returns functions that read cells by column
 */
export function cellReader(row: TableRow, file: string, problems: Problem[]): CellReader {
  const name = row.cells.name ?? row.cells.material ?? "";
  const refuse: CellReader["refuse"] = (code, details = {}, received = null) => {
    problems.push(tableProblem(code, file, row.line, { name, ...details }, received));
  };
  const text = (column: string): string | null => row.cells[column] || null;
  return {
    refuse,
    text,
    number(column, quantity) {
      const cell = text(column);
      if (cell === null) return null;
      const fault = faultOfNumber(cell, quantity);
      if (fault === null) return Number(cell);
      refuse(fault.code, { column, quantity: quantityOf(quantity).name, ...fault.details }, cell);
      return null;
    },
    word(column, options) {
      const cell = text(column);
      if (cell === null) return null;
      const found = options.find((option) => option === cell.toLowerCase());
      if (found === undefined) refuse("cell-not-one-of", { column, options, near: nearNames(cell, options) }, cell);
      return found ?? null;
    },
  };
}

function faultOfNumber(cell: string, quantity: QuantityName): { code: string; details: Problem["details"] } | null {
  if (/^[+-]?\d+,\d+$/.test(cell)) return { code: "cell-decimal-comma", details: { write: cell.replace(",", ".") } };
  if (!/^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(cell)) {
    const [digits = null] = /^[+-]?\d+(\.\d+)?(?= ?[^\d.,\s])/.exec(cell) ?? [];
    return { code: "cell-not-number", details: { write: digits } };
  }
  const { possible } = quantityOf(quantity);
  const value = Number(cell);
  if (possible === null || (value >= possible.low && value <= possible.high)) return null;
  const details = { low: plainDigits(possible.low), high: plainDigits(possible.high), reason: possible.reason };
  return { code: "cell-impossible", details };
}
