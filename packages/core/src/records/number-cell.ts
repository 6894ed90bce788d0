import { plainNumber } from "../tables/plain-number.ts";

/** The contents of a cell that should hold a number. */
export type NumberCell = number | "missing" | "not a number" | "other decimal separator";

/** Reads the number cells of one file, which must use either a point or a comma throughout. */
export type NumberReader = (cell: string) => NumberCell;

/**
 * Makes a reader of number cells; the first decimal separator that it finds holds for the whole file.
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
 * @returns true for an empty cell, dashes, `NA`, `NaN`, `null` and usual codes (−99, −99.9, −999, −9999, 999, 9999 …)
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
