/**
 * Plain data with every number rounded to six significant digits.
 * The page and the data inside it are made from the same rounded figures, so that each shown figure can be traced,
 * and the last digits, in which engines differ, cannot show.
 *
 * @param data - plain data: objects, lists, texts, numbers, null
 * @returns a copy of the same shape
 * @throws RangeError when a number is not finite
 * @example roundFigures({ amount: 0.123456789 }) // { amount: 0.123457 }
 */
export function roundFigures<Data>(data: Data): Data {
  return rounded(data) as Data;
}

/** Significant digits kept in the page. */
const SIGNIFICANT_DIGITS = 6;

/** Digits in which engines agree: rounded to these first, so that a half-way case falls the same way everywhere. */
const STEADY_DIGITS = 12;

function rounded(data: unknown): unknown {
  if (typeof data === "number") {
    if (!Number.isFinite(data)) throw new RangeError(`a figure in the result is not a number: ${data}`);
    const steady = Number(data.toPrecision(STEADY_DIGITS));
    return Number(steady.toPrecision(SIGNIFICANT_DIGITS));
  }
  if (Array.isArray(data)) return data.map(rounded);
  if (data !== null && typeof data === "object") {
    return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, rounded(value)]));
  }
  return data;
}
