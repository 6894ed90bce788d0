import type { QuantityName } from "./quantity-names.ts";
import { quantityOf } from "./vocabulary.ts";

/**
 * Shows a quantity as the report does: rounded, with its unit.
 *
 * @param value - the value [SI; temperatures in °C; shares as fractions], finite
 * @param name - the quantity's name in the vocabulary
 * @param decimals - digits after the point, the vocabulary's unless given
 * @returns number, no-break space and unit; a true minus sign
 * @throws RangeError when the value is not a finite number
 * @example formatQuantity(0.0125, "thickness") // "12.5\u00a0mm"
 */
export function formatQuantity(value: number, name: QuantityName, decimals?: number): string {
  const { unit } = quantityOf(name);
  const digits = formatInShownUnit(value, name, decimals);
  return unit.shown === "" ? digits : `${digits}\u00a0${unit.shown}`;
}

/**
 * The number alone, in the unit the report shows.
 *
 * @param value - the value [SI], finite
 * @param name - the quantity's name
 * @param decimals - digits after the point, the vocabulary's unless given
 * @returns the digits; lengths of layers drop idle zeros
 * @throws RangeError when the value is not a finite number
 * @example formatInShownUnit(0.55, "relative humidity", 0) // "55"
 */
export function formatInShownUnit(value: number, name: QuantityName, decimals?: number): string {
  const { unit, decimals: usual } = quantityOf(name);
  const digits = formatNumber(value * unit.perSi, decimals ?? usual);
  const given = unit.shown === "mm" || unit.shown === "%";
  return given && decimals === undefined ? withoutIdleZeros(digits) : digits;
}

/**
 * A number rounded for showing; halves go away from zero, and the last digits of binary numbers cannot show.
 *
 * @param value - any finite number [–]
 * @param decimals - digits after the point, 0 to 12
 * @returns the digits, with a true minus sign and never a negative zero
 * @throws RangeError when the value is not a finite number
 * @example formatNumber(0.125, 2) // "0.13"
 */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`only a finite number can be shown, was ${value}`);
  const scaled = steady(Math.abs(value) * 10 ** decimals);
  const rounded = Math.round(scaled) / 10 ** decimals;
  const digits = rounded.toFixed(decimals);
  return value < 0 && rounded !== 0 ? `−${digits}` : digits;
}

/**
 * Writes a quantity as a project file takes it.
 *
 * @param value - the value [SI], finite
 * @param name - the quantity's name
 * @returns such as `140 mm`
 * @throws RangeError when the value is not a finite number
 * @example writeQuantity(0.14, "thickness") // "140 mm"
 */
export function writeQuantity(value: number, name: QuantityName): string {
  const { unit } = quantityOf(name);
  if (!Number.isFinite(value)) throw new RangeError(`only a finite number can be written, was ${value}`);
  const digits = plainDigits(value * unit.perSi);
  return unit.written === "" ? digits : `${digits} ${unit.written}`;
}

/**
 * A number in plain digits, without an exponent where that is readable.
 *
 * @param value - any finite number
 * @returns up to six figures
 * @example plainDigits(0.30000000000000004) // "0.3"
 */
export function plainDigits(value: number): string {
  return String(Number(value.toPrecision(WRITTEN_DIGITS)));
}

/** Figures kept before rounding: fewer than binary numbers hold, so that engines' last digits cannot show. */
const STEADY_DIGITS = 12;
/** Figures written into a project file. */
const WRITTEN_DIGITS = 6;

function steady(value: number): number {
  return Number(value.toPrecision(STEADY_DIGITS));
}

function withoutIdleZeros(digits: string): string {
  return digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
}
