import type { ProblemCode } from "../problems/wordings.ts";
import { unitFromDatasheet } from "./datasheet-forms.ts";
import { asWritten, type QuantityFault } from "./quantity-form.ts";
import { type ParsedUnit, parseUnit, unknownUnitNames, vocabularyUnit } from "./unit-reader.ts";
import { plausibleWithUnit, withUnitMeant } from "./unit-slips.ts";
import { type Quantity, VOCABULARY } from "./vocabulary.ts";

/**
 * Reads a number in its unit.
 *
 * @param digits - the number as written
 * @param written - the unit, normalised
 * @param quantity - the quantity expected
 * @returns the value [SI], or the fault of the unit with the likely slip
 */
export function valueInUnit(digits: string, written: string, quantity: Quantity): number | QuantityFault {
  const unit = unitFromDatasheet(written, quantity.unit.si);
  const isTemperature = quantity.unit.si === "degC";
  if (isTemperature && unit === "K") return fault("temperature-in-kelvin", unit, plausibleWithUnit(digits, quantity));
  if (!isTemperature && DEGREE_UNIT.test(unit))
    return fault("difference-in-degrees", written, `${digits} ${inKelvin(written)}`);

  const given = unknownUnitNames(unit).length > 0 ? null : parseUnit(digits, unit);
  const wanted = vocabularyUnit(quantity.unit.si);
  if (given?.equalBase(wanted) && (quantity.form === null || quantity.form.test(unit))) return given.toNumber(wanted);
  const write = withUnitMeant(digits, written, quantity);
  if (given === null) return fault("unit-unknown", written, write);
  if (quantity.name === "permeance" && parseUnit("1", "kg/(m^2 s)")?.equalBase(given))
    return {
      code: "transmission-needs-test",
      details: { unit: asWritten(written), rate: `${digits} ${asWritten(unit)}` },
    };
  const isOfKind = given.equalBase(wanted) || quantity.form !== null;
  return unfit(written, isOfKind ? null : kindOfUnit(given), write);
}

function fault(code: ProblemCode, unit: string, write: string | null): QuantityFault {
  return { code, details: { unit: asWritten(unit), write } };
}

function unfit(unit: string, unitKind: string | null, write: string | null): QuantityFault {
  return { code: "unit-unfit", details: { unit: asWritten(unit), unitKind, write } };
}

/** What a unit measures, in words; null if the vocabulary has no such quantity. */
function kindOfUnit(given: ParsedUnit): string | null {
  for (const [unit, kind] of OTHER_KINDS) if (parseUnit("1", unit)?.equalBase(given)) return kind;
  const known = Object.values(VOCABULARY).find(
    ({ unit }) => unit.si !== "" && parseUnit("1", unit.si)?.equalBase(given),
  );
  return known?.kind ?? null;
}

const OTHER_KINDS = [
  ["kg", "a mass"],
  ["s", "a time"],
  ["J", "an energy"],
  ["W", "a power"],
  ["N", "a force"],
  ["m", "a length"],
  ["m/m", "a share"],
] as const;

const DEGREE_UNIT = /deg[CF]/;

function inKelvin(unit: string): string {
  return asWritten(unit.replace(/deg[CF]/g, "K"));
}
