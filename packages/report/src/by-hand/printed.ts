import { fixed, readFigure } from "../numbers.ts";

/** A figure of a sum worked by hand: what is printed, and the rounded number the next line goes on with. */
export interface Printed {
  text: string;
  value: number;
}

/**
 * A figure rounded as it is printed, so that every later line follows from what stands on the page.
 *
 * @param value - any finite number
 * @param decimals - digits after the point
 * @returns the text and the number it shows
 * @example printed(0.123456, 3) // { text: "0.123", value: 0.123 }
 */
export function printed(value: number, decimals: number): Printed {
  const text = fixed(value, decimals);
  return { text, value: readFigure(text) };
}

/** Decimals of sums worked by hand: more than anyone can measure, so that the sums can be followed. */
export const DECIMALS = {
  resistance: 4,
  temperature: 3,
  pressure: 2,
  sd: 4,
  grams: 2,
  factor: 4,
  transmittance: 4,
} as const;
