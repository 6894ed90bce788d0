import { type Facts, inSpeech } from "./wording.ts";

/** Temperatures over this can only be kelvin [–]. */
const SURELY_KELVIN = 200;

/** A whole number with a space between its thousands. */
export function grouped(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, " ");
}

/** Whether a row has more cells than there are headings. */
export function hasMoreCells(text: Facts["text"]): boolean {
  return Number(text("found")) > Number(text("expected"));
}

/** Where the same slip is made again; the first line is told beside the sentence. */
export function alsoOn(lines: readonly string[], many: number): string {
  const others = lines.slice(1);
  if (others.length === 0) return "";
  const more = many - lines.length;
  const named = `, also on ${others.length === 1 ? "line" : "lines"} ${inSpeech(others, "and")}`;
  return more > 0 ? `${named} and on ${grouped(String(more))} more` : named;
}

/**
 * The unit in which a temperature was probably written.
 *
 * @param value - as it stands [°C, as it seems]
 * @param greatest - the warmest there can be [°C]
 * @returns a sentence; null where the value may be one of °C
 */
export function unitSlip(value: number, greatest: number): string | null {
  if (value > SURELY_KELVIN) return "These are kelvin, not degrees Celsius";
  return value > greatest ? "These are degrees Fahrenheit, not Celsius" : null;
}
