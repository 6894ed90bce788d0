import type { ProblemCode } from "../problems/wordings.ts";
import { fractionsInDigits, R_VALUE } from "./datasheet-forms.ts";
import { plainDigits } from "./format-quantity.ts";
import { asWritten, NUMBER_ALONE, NUMBER_AND_UNIT, type QuantityFault } from "./quantity-form.ts";
import { unknownUnitNames } from "./unit-reader.ts";
import { quantityMeant, unitMeant, withUnitMeant } from "./unit-slips.ts";
import type { Quantity } from "./vocabulary.ts";

/**
 * Says what is wrong with the form of a quantity, before its unit is read.
 *
 * @param plain - the text, normalised
 * @param quantity - the quantity expected
 * @returns the fault with the likely slip, or null when the form is right
 */
export function faultOfForm(plain: string, quantity: Quantity): QuantityFault | null {
  if (plain === "") return fault("quantity-empty");
  if (plain.length > LONGEST_QUANTITY) return fault("quantity-unreadable");
  if (/[^\p{ASCII}]/u.test(plain) && /\p{Nd}/u.test(plain.replace(/\d/g, ""))) return fault("digits-of-another-script");
  if (/^[+-]?\.?(inf|infinity|nan)\b/i.test(plain)) return fault("not-finite");
  const [, resistance] = R_VALUE.exec(plain) ?? [];
  if (resistance !== undefined && quantity.unit.si === "m^2 K/W")
    return fault("r-value-unit", [`${resistance} m2 K/W`, `${resistance} h ft2 °F/BTU`]);
  if (/\d,\d/.test(plain)) return fault("decimal-comma", withoutComma(plain));
  if (/[½¼¾⅓⅔⅛⅜⅝⅞]/.test(plain) || /^\d+([ -]\d+)? ?\/ ?\d/.test(plain))
    return fault("fraction", fractionAsDecimal(plain, quantity));
  const [, one] = quantity.name === "width" ? (SECTION.exec(plain) ?? []) : [];
  if (one !== undefined) return fault("section-for-width", widthOfTimber(Number(one)));
  if (/^[+-]?[\d.]+ ?([*+×x^~±]|-|–|to|\.\.) ?\d/.test(plain) && !/^0x/.test(plain)) return fault("arithmetic");
  if (quantity.unit.written === "") return faultOfBareForm(plain);
  const alone = plain.replace(ON_CENTRES, "");
  if (alone === plain) return faultOfUnitForm(plain, quantity);
  const { write = asWritten(alone) } = faultOfUnitForm(alone, quantity)?.details ?? {};
  return fault("unit-unknown", write, plain.slice(alone.length).trim().replace(/\.$/, ""));
}

function faultOfBareForm(plain: string): QuantityFault {
  if (NUMBER_ALONE.test(plain)) return fault("number-in-quotes", plain);
  const [, digits = ""] = NUMBER_AND_UNIT.exec(plain) ?? /^([+-]?\d+(?:\.\d+)?) ?\D*$/.exec(plain) ?? [];
  if (digits === "") return fault("number-wanted");
  const isShare = /percent$/.test(plain);
  return fault("unit-not-wanted", isShare ? plainDigits(Number(digits) / 100) : digits);
}

function faultOfUnitForm(plain: string, quantity: Quantity): QuantityFault | null {
  if (NUMBER_AND_UNIT.test(plain)) return null;
  if (NUMBER_ALONE.test(plain)) return fault("unit-missing", quantityMeant(plain, quantity));
  if (/^[+-]?(\.\d|\d+\.(\D|$))/.test(plain)) return fault("point-without-digit", withDigitsBesidePoint(plain));
  const [, digits, unit] = /^([+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?) ?(\S.*)$/.exec(plain) ?? [];
  if (digits === undefined || unit === undefined) return fault("quantity-unreadable");
  const meant = unitMeant(unit, quantity);
  if (meant !== null)
    return fault(plain === `${digits} ${unit}` ? "unit-unknown" : "space-missing", `${digits} ${meant}`, unit);
  if (unknownUnitNames(unit).length === 0 && NUMBER_AND_UNIT.test(`${digits} ${unit}`)) {
    return fault("space-missing", asWritten(`${digits} ${unit}`), unit);
  }
  return fault("unit-unknown", withUnitMeant(digits, unit, quantity), unit);
}

function fault(
  code: ProblemCode,
  write: string | readonly string[] | null = null,
  unit: string | null = null,
): QuantityFault {
  return { code, details: { write, unit: unit === null ? null : asWritten(unit) } };
}

/** The number without its comma; two readings where the comma may mark thousands or decimals. */
function withoutComma(plain: string): readonly string[] {
  const asThousands = asWritten(plain.replace(/(\d),(?=\d)/g, "$1"));
  const asDecimals = asWritten(plain.replace(",", "."));
  if (!/^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d+)?( |$)/.test(plain)) return [asDecimals];
  return /,\d{3}[,.]/.test(plain) ? [asThousands] : [asThousands, asDecimals];
}

function withDigitsBesidePoint(plain: string): string {
  return asWritten(plain.replace(/^([+-]?)\./, "$10.").replace(/^([+-]?\d+)\.(?=\D|$)/, "$1"));
}

/** Longest text that can be a quantity [characters]; nothing the trade writes is half as long. */
const LONGEST_QUANTITY = 60;

/** What follows a spacing in the trade: on centres. */
const ON_CENTRES = / ?(?:o\.? ?\/?c\.?|c\/c|crs\.?|(?:on )?cent(?:re|er)s?)$/i;

/** The two sides of a timber: `45 x 145 mm`, `2x4`. */
const SECTION = /^(\d+(?:\.\d+)?) ?(?:mm|in|")? ?[x×] ?\d+(?:\.\d+)? ?(?:mm|in|")?$/;

/** A width in millimetres as it stands; sawn sizes in inches are planed to less (common practice, from memory). */
function widthOfTimber(written: number): string | null {
  const width = written < SMALLEST_IN_MILLIMETRES ? PLANED[written] : written;
  return width === undefined ? null : `${width} mm`;
}

const SMALLEST_IN_MILLIMETRES = 12;
const PLANED: Readonly<Record<number, number>> = { 1: 19, 2: 38, 3: 64, 4: 89, 6: 140 };

/** `5 1/2 in` as `5.5 in`; null where the decimals do not end, or it is no fraction of whole numbers. */
function fractionAsDecimal(plain: string, quantity: Quantity): string | null {
  const [, whole, above, below, unit = ""] =
    /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+) ?(\D+)$/.exec(fractionsInDigits(plain)) ?? [];
  const value = Number(whole ?? 0) + Number(above) / Number(below);
  const digits = plainDigits(Number(value.toFixed(DECIMALS_OF_FRACTION)));
  if (!(Math.abs(Number(digits) - value) < ROUNDING)) return null;
  return withUnitMeant(digits, unit, quantity) ?? asWritten(`${digits} ${unit}`);
}

const DECIMALS_OF_FRACTION = 4;
const ROUNDING = 1e-9;
