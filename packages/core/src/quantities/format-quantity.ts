import { requireFinite, requireNumber } from "../require.ts";
import { type Quantity, type QuantityName, quantityOf } from "./vocabulary.ts";

/**
 * Shows a quantity, alike on the page, in findings and in the terminal. The vocabulary decides unit and digits.
 *
 * @param value - the value [SI; temperatures in °C; shares as fractions], finite
 * @param name - the quantity's name in the vocabulary
 * @returns number, space and unit; a true minus sign; "under 0.1 g/m²" below the least figure shown
 * @throws RangeError when the value is not a finite number
 * @example formatQuantity(0.0125, "thickness") // "12.5 mm"
 */
export function formatQuantity(value: number, name: QuantityName): string {
  requireFinite(value, "value");
  const { unit } = quantityOf(name);
  const digits = formatInShownUnit(value, name);
  return unit.shown === "" ? digits : `${digits} ${unit.shown}`;
}

/**
 * Shows the number alone, in the unit used for showing.
 *
 * @param value - the value [SI], finite
 * @param name - the quantity's name
 * @param decimals - count of digits after the point, if a table or a hand check needs other than the vocabulary's
 * @returns the digits; lengths, shares and sd without trailing zeros
 * @throws RangeError when the value is not a finite number
 * @example formatInShownUnit(0.00007, "condensate") // "under 0.1"
 */
export function formatInShownUnit(value: number, name: QuantityName, decimals?: number): string {
  requireFinite(value, "value");
  const quantity = quantityOf(name);
  const shown = value * quantity.unit.perSi;
  if (decimals !== undefined) return formatNumber(shown, decimals);
  const size = Math.abs(shown);
  if (quantity.least !== null && size > 0 && steady(size) < quantity.least) return `under ${quantity.least}`;
  const digits = formatNumber(shown, decimalsAt(size, quantity));
  return DROPS_IDLE_ZEROS.has(quantity.unit.shown) ? withoutIdleZeros(digits) : digits;
}

/**
 * A number rounded for showing. Halves are rounded away from zero, and binary noise in the last digits never shows.
 *
 * @param value - any finite number [–]
 * @param decimals - count of digits after the point, 0 to 20
 * @returns the digits, with a true minus sign, never a negative zero; from five digits on, thousands are spaced
 * @throws RangeError when the value is not a finite number
 * @example formatNumber(0.125, 2) // "0.13"
 */
export function formatNumber(value: number, decimals: number): string {
  requireFinite(value, "value");
  requireNumber(decimals, "decimals", "", 0, MOST_DECIMALS);
  if (!Number.isFinite(value)) throw new RangeError(`only a finite number can be shown, was ${value}`);
  const scaled = steady(Math.abs(value) * 10 ** decimals);
  const rounded = Math.round(scaled) / 10 ** decimals;
  const [whole = "0", fraction] = rounded.toFixed(decimals).split(".");
  const grouped = whole.length > LONGEST_UNGROUPED ? whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE) : whole;
  const digits = fraction === undefined ? grouped : `${grouped}.${fraction}`;
  return value < 0 && rounded !== 0 ? `−${digits}` : digits;
}

/**
 * Writes a quantity as a project file takes it.
 *
 * @param value - the value [SI], finite
 * @param name - the quantity's name
 * @returns for example `140 mm`
 * @throws RangeError when the value is not a finite number
 * @example writeQuantity(0.14, "thickness") // "140 mm"
 */
export function writeQuantity(value: number, name: QuantityName): string {
  requireFinite(value, "value");
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

/** Figures kept before rounding: fewer than binary numbers hold, so that differences between engines never show. */
const STEADY_DIGITS = 12;
/** Figures written into a project file. */
const WRITTEN_DIGITS = 6;

function steady(value: number): number {
  return Number(value.toPrecision(STEADY_DIGITS));
}

/** Most digits after the point. */
const MOST_DECIMALS = 20;
/** Narrow no-break space, between thousands. */
const THIN_SPACE = "\u202f";
const LONGEST_UNGROUPED = 4;
/** Units whose quantities are mostly inputs, shown without trailing zeros: 140 mm, 15 %, sd 2 m. */
const DROPS_IDLE_ZEROS: ReadonlySet<string> = new Set(["mm", "%", "m"]);

/** The digits for a size; one that rounds up to the next step gets that step's digits: 9.96 g is shown as 10 g. */
function decimalsAt(size: number, { decimals, finer }: Quantity): number {
  const step = finer.find(([below, digits]) => Math.round(steady(size * 10 ** digits)) / 10 ** digits < below);
  return step?.[1] ?? decimals;
}

function withoutIdleZeros(digits: string): string {
  return digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
}
