/**
 * A number as a table may hold it: digits with a decimal point, a minus or hyphen before them.
 *
 * @param text - one cell, trimmed
 * @returns the number, or null when it is anything else (a comma, a unit, an exponent, full-width digits, nothing)
 * @example plainNumber("−3.5") // -3.5
 */
export function plainNumber(text: string): number | null {
  const plain = text.replace(MINUS_SIGN, "-");
  if (!DECIMAL_NUMBER.test(plain)) return null;
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}

/**
 * Whether a cell would be a number if its decimal comma were a point.
 *
 * @param text - one cell, trimmed
 * @returns true for `3,5`
 * @example hasDecimalComma("3,5") // true
 */
export function hasDecimalComma(text: string): boolean {
  return text.includes(",") && plainNumber(text.replace(",", ".")) !== null;
}

const MINUS_SIGN = /^\u2212/;
const DECIMAL_NUMBER = /^[+-]?\d{1,15}(\.\d{1,15})?$/;
