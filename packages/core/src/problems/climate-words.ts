import { type Facts, inSpeech } from "./wording.ts";

/** A temperature above this can only be in kelvin [–]. */
const SURELY_KELVIN = 200;

/** A whole number with a space between its thousands. */
export function grouped(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, " ");
}

/** Whether a row has more cells than there are headings. */
export function hasMoreCells(text: Facts["text"]): boolean {
  return Number(text("found")) > Number(text("expected"));
}

/** The other lines with the same slip; the first line is named with the sentence itself. */
export function alsoOn(lines: readonly string[], many: number): string {
  const others = lines.slice(1);
  if (others.length === 0) return "";
  const more = many - lines.length;
  const named = `, also on ${others.length === 1 ? "line" : "lines"} ${inSpeech(others, "and")}`;
  return more > 0 ? `${named} and on ${grouped(String(more))} more` : named;
}

/**
 * Says in which unit a temperature was probably written.
 *
 * @param value - the figure, taken as a temperature [°C]
 * @param greatest - the warmest temperature possible [°C]
 * @returns a sentence; null where the figure may well be in °C
 */
export function unitSlip(value: number, greatest: number): string | null {
  if (value > SURELY_KELVIN) return "These are kelvin, not degrees Celsius";
  return value > greatest ? "These are degrees Fahrenheit, not Celsius" : null;
}
