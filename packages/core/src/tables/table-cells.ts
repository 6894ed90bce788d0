import { nearNames } from "../problems/near-names.ts";
import type { Problem } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import { plainDigits } from "../quantities/format-quantity.ts";
import { type QuantityName, quantityOf } from "../quantities/vocabulary.ts";
import { plainNumber, withDecimalPoint } from "./plain-number.ts";
import type { TableRow } from "./read-table.ts";
import { tableProblem } from "./table-problem.ts";

/** Reads the cells of one row and collects their problems. */
export interface CellReader {
  /** A number in the column's unit, within the possible range of the quantity; null when empty or wrong. */
  quantity(column: string, quantity: QuantityName): number | null;
  /** A required number in any range; null when empty or wrong. */
  number(column: string): number | null;
  /** One of a few words; null when empty or wrong. */
  word<Word extends string>(column: string, options: readonly Word[]): Word | null;
  /** Any text; null when empty. */
  text(column: string): string | null;
  /** Adds a problem of one cell, or of the row as a whole. */
  refuse(code: ProblemCode, details?: Problem["details"], received?: string | null): void;
}

/**
 * Makes the reader of one row.
 *
 * @param row - line and cells
 * @param problems - where problems go
 * @returns functions that read cells by column
 */
export function cellReader(row: TableRow, problems: Problem[]): CellReader {
  const name = row.cells.name ?? row.cells.material ?? "";
  const refuse: CellReader["refuse"] = (code, details = {}, received = null) => {
    const column = typeof details.column === "string" ? row.columnOf(details.column) : 1;
    problems.push(tableProblem(code, row.line, received, { name, ...details }, column));
  };
  const text = (column: string): string | null => row.cells[column] || null;
  const numberIn = (column: string): number | null => {
    const cell = text(column);
    if (cell === null) return null;
    const value = plainNumber(cell);
    if (value !== null) return value;
    const pointed = withDecimalPoint(cell);
    if (pointed !== null) refuse("cell-decimal-comma", { column, write: pointed }, cell);
    else refuse("cell-not-number", { column, write: NUMBER_BEFORE_UNIT.exec(cell)?.[0] ?? null }, cell);
    return null;
  };
  return {
    refuse,
    text,
    number(column) {
      if (text(column) === null) refuse("cell-empty", { column });
      return numberIn(column);
    },
    quantity(column, quantity) {
      const value = numberIn(column);
      const { possible } = quantityOf(quantity);
      if (value === null || possible === null || (value >= possible.low && value <= possible.high)) return value;
      const range = { low: plainDigits(possible.low), high: plainDigits(possible.high), reason: possible.reason };
      refuse("cell-impossible", { column, ...range }, text(column));
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

/** A number followed by a unit. */
const NUMBER_BEFORE_UNIT = /^[+-]?\d+(\.\d+)?(?= ?[^\d.,\s])/;
