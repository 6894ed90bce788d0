import type { Problem, Reading } from "../problems/types.ts";
import { requireText } from "../require.ts";
import { fromDatasheet } from "./datasheet-forms.ts";
import { faultOfForm } from "./faults-of-form.ts";
import { valueInUnit } from "./faults-of-unit.ts";
import { plainDigits } from "./format-quantity.ts";
import { normaliseText } from "./normalise-text.ts";
import { NUMBER_AND_UNIT, type QuantityFault } from "./quantity-form.ts";
import { plausibleShare, plausibleWithUnit } from "./unit-slips.ts";
import { type Quantity, type QuantityName, quantityOf } from "./vocabulary.ts";

/**
 * Reads a quantity written as number, space, unit.
 *
 * @param text - for example `140 mm`, `20 °C`, `55 %`
 * @param name - the quantity expected
 * @returns its value in SI (temperatures in °C, shares as fractions), or the problem with what to write instead
 * @example readQuantity("140 mm", "thickness") // { ok: true, value: 0.14 }
 */
export function readQuantity(text: string, name: QuantityName): Reading<number> {
  requireText(text, "text");
  const quantity = quantityOf(name);
  const plain = fromDatasheet(normaliseText(text), quantity);
  const formFault = faultOfForm(plain, quantity);
  if (formFault !== null) return refused(formFault, text, quantity);

  const [, digits = "", written = ""] = NUMBER_AND_UNIT.exec(plain) ?? [];
  const value = valueInUnit(digits, written, quantity);
  if (typeof value !== "number") return refused(value, text, quantity);

  return withinPossible(withoutBinaryNoise(value), text, quantity, digits);
}

/**
 * Reads a number that takes no unit, such as μ or an emissivity.
 *
 * @param value - the number, or the text found in its place
 * @param name - the quantity expected
 * @returns the number, or the problem with what to write instead
 * @example readBareNumber(0.9, "emissivity") // { ok: true, value: 0.9 }
 */
export function readBareNumber(value: number | string, name: QuantityName): Reading<number> {
  const quantity = quantityOf(name);
  const text = String(value);
  if (typeof value === "number" && Number.isFinite(value)) return withinPossible(value, text, quantity, null);
  return refused(faultOfForm(normaliseText(text), quantity) ?? { code: "number-wanted", details: {} }, text, quantity);
}

/**
 * Says why a possible value is odd.
 *
 * @param value - the value [SI]
 * @param name - the quantity's name
 * @returns the reason in words, or null when the value is plausible
 * @example whyOdd(0.14, "thickness") // null
 */
export function whyOdd(value: number, name: QuantityName): string | null {
  const { plausible } = quantityOf(name);
  if (plausible === null || (value >= plausible.low && value <= plausible.high)) return null;
  return plausible.reason;
}

/**
 * The values that a quantity may have, in words.
 *
 * @param name - the quantity's name
 * @returns for example "0.001 to 3000 mm"
 * @throws RangeError for a quantity that is shown and never read
 */
export function rangeInWords(name: QuantityName): string {
  const quantity = quantityOf(name);
  const { possible, unit } = quantity;
  if (possible === null) throw new RangeError(`${quantity.name} is shown, never read`);
  const [low, high] = [possible.low, possible.high].map((limit) => plainDigits(limit * unit.perSi));
  return `${low} to ${high}${unit.written === "" ? "" : ` ${unit.written}`}`;
}

/**
 * What a quantity is, and the values that it may have.
 *
 * @param name - the quantity's name
 * @returns for example "a length, 0.001 to 3000 mm"
 * @throws RangeError for a quantity that is shown and never read
 */
export function kindInWords(name: QuantityName): string {
  const { kind } = quantityOf(name);
  return /\d/.test(kind) ? kind : `${kind}, ${rangeInWords(name)}`;
}

function withinPossible(value: number, text: string, quantity: Quantity, digits: string | null): Reading<number> {
  const { possible } = quantity;
  if (!Number.isFinite(value)) return refused({ code: "not-finite", details: {} }, text, quantity);
  if (possible === null) throw new RangeError(`${quantity.name} is shown, never read`);
  if (value >= possible.low && value <= possible.high) return { ok: true, value };
  const details = {
    low: limitInWords(possible.low, quantity),
    high: limitInWords(possible.high, quantity),
    reason: possible.reason,
    write: (digits && plausibleWithUnit(digits, quantity)) ?? plausibleShare(value, quantity),
  };
  return refused({ code: "impossible-value", details }, text, quantity);
}

/** Removes the noise that conversion leaves in the last binary digits: 0.12 /kWh would be 0.11999999999999998. */
function withoutBinaryNoise(value: number): number {
  const short = Number(value.toPrecision(SHORT_FIGURES));
  return Math.abs(value - short) <= LAST_DIGITS * Math.abs(value) ? short : value;
}

/** Most figures in a number that somebody types. */
const SHORT_FIGURES = 12;

/** Relative error that conversion may cause: a few of the last binary digits. */
const LAST_DIGITS: number = 4 * Number.EPSILON;

function limitInWords(value: number, quantity: Quantity): string {
  const digits = plainDigits(value * quantity.unit.perSi);
  return quantity.unit.written === "" ? digits : `${digits} ${quantity.unit.written}`;
}

function refused(fault: QuantityFault, text: string, quantity: Quantity): Reading<number> {
  const problem: Problem = {
    code: fault.code,
    path: [],
    position: null,
    received: text,
    details: { quantity: quantity.name, kind: quantity.kind, example: quantity.example, ...fault.details },
  };
  return { ok: false, problems: [problem] };
}
