/**
 * Reads a number as written in a table: digits, with an optional decimal point, sign and exponent.
 *
 * @param text - one cell, trimmed
 * @returns the number, or null when it is anything else (a comma, a unit, full-width digits, nothing)
 * @example plainNumber("−3.5") // -3.5
 */
export function plainNumber(text: string): number | null {
  const plain = text.replace(MINUS_SIGN, "-");
  if (!DECIMAL_NUMBER.test(plain)) return null;
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}

/**
 * A cell with its decimal comma replaced by a point.
 *
 * @param text - one cell, trimmed
 * @returns the number with a point, or null if it would not be a number
 * @example withDecimalPoint("3,5") // "3.5"
 */
export function withDecimalPoint(text: string): string | null {
  const pointed = text.replace(",", ".");
  return text.includes(",") && plainNumber(pointed) !== null ? pointed : null;
}

const MINUS_SIGN = /^\u2212/;
const DECIMAL_NUMBER = /^[+-]?\d{1,15}(\.\d{1,15})?([eE][+-]?\d{1,3})?$/;
