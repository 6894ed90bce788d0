import { fixed, MINUS, readFigure } from "../numbers.ts";

/** A figure of a hand calculation: its printed text, and the rounded number used in the next line. */
export interface Printed {
  text: string;
  value: number;
}

/**
 * A figure rounded as printed, so that every later line follows from the page.
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

/**
 * A figure as it stands behind a minus or a times sign.
 *
 * @param figure - the figure
 * @returns its text, in brackets where it is negative
 * @example inBrackets(printed(-1.23, 3)) // "(−1.230)"
 */
export function inBrackets({ text }: Pick<Printed, "text">): string {
  return text.startsWith(MINUS) ? `(${text})` : text;
}

/** Decimals in hand calculations: more than can be measured, so that they can be followed. */
export const DECIMALS = {
  resistance: 4,
  temperature: 3,
  pressure: 2,
  sd: 4,
  grams: 2,
  factor: 4,
  transmittance: 4,
} as const;
