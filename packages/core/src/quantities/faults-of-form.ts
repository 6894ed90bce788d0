import type { ProblemCode } from "../problems/wordings.ts";
import { R_VALUE } from "./datasheet-forms.ts";
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
  if (/[½¼¾⅓⅔⅛⅜⅝⅞]/.test(plain) || /^\d+( \d+)? ?\/ ?\d/.test(plain)) return fault("fraction");
  if (/^[+-]?[\d.]+ ?([*+×x^~±]|-|–|to|\.\.) ?\d/.test(plain) && !/^0x/.test(plain)) return fault("arithmetic");
  return quantity.unit.written === "" ? faultOfBareForm(plain) : faultOfUnitForm(plain, quantity);
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
