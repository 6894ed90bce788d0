import { plainNumber } from "../tables/plain-number.ts";

/** What a cell that should hold a number holds. */
export type NumberCell = number | "missing" | "not a number" | "other decimal separator";

/** Reads the number cells of one file, which writes its decimals with a point or with a comma throughout. */
export type NumberReader = (cell: string) => NumberCell;

/**
 * A reader of number cells that keeps to the decimal separator it meets first.
 *
 * @returns the reader
 */
export function createNumberReader(): NumberReader {
  let separator: string | null = null;
  return (cell) => {
    if (isMissing(cell)) return "missing";
    const found = cell.includes(",") ? "," : cell.includes(".") ? "." : null;
    const number = plainNumber(found === "," ? cell.replace(",", ".") : cell);
    if (number === null || (found === "," && cell.includes("."))) return "not a number";
    if (found !== null && separator !== null && found !== separator) return "other decimal separator";
    separator ??= found;
    return number;
  };
}

/**
 * Whether a cell says that there is no reading.
 *
 * @param cell - one cell, trimmed
 * @returns true for nothing, dashes, `NA`, `NaN`, `null` and the usual codes (−99, −99.9, −999, −9999, 999, 9999 …)
 * @example isMissing("-9999") // true
 */
export function isMissing(cell: string): boolean {
  return MISSING_WORDS.has(cell.toLowerCase()) || MISSING_CODE.test(cell);
}

/** Marks of a missing reading. Common practice. */
const MISSING_WORDS = new Set([
  "",
  "-",
  "--",
  "---",
  "/",
  "//",
  "///",
  "na",
  "n/a",
  "nan",
  "null",
  "none",
  "missing",
  "m",
]);
const MISSING_CODE = /^(-99([.,]9+)?|-?9{3,}([.,]9+)?)$/;
