import type { ProblemCode } from "../problems/wordings.ts";
import type { Quantity } from "./vocabulary.ts";

/** A fault of a quantity, with the details that its wording needs. */
export interface QuantityFault {
  code: ProblemCode;
  details: Record<string, string | readonly string[] | null>;
}

/** A complete quantity in plain letters: digits, one space, unit. */
export const NUMBER_AND_UNIT: RegExp = /^([+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?) ([A-Za-z/(][A-Za-z0-9 /()^-]*)$/;

/** Digits alone, as a bare number is written. */
export const NUMBER_ALONE: RegExp = /^[+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;

/**
 * Brings a normalised quantity back to the form used in a project file.
 *
 * @param plain - for example `20 degC`
 * @returns for example `20 °C`
 * @example asWritten("55 percent") // "55 %"
 */
export function asWritten(plain: string): string {
  return plain
    .replace(/deg([CF])/g, "°$1")
    .replace(/\bdeg\b/g, "°")
    .replace(/\bpercent\b/g, "%");
}

/**
 * Whether a value lies in the range that is common practice.
 *
 * @param value - [SI]
 * @param quantity - from the vocabulary
 * @returns true if it does; false also where the vocabulary gives no range
 */
export function isPlausible(value: number, { plausible }: Quantity): boolean {
  return plausible !== null && value >= plausible.low && value <= plausible.high;
}
