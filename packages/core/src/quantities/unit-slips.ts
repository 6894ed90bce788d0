import { plainDigits } from "./format-quantity.ts";
import { normaliseText } from "./normalise-text.ts";
import { asWritten, isPlausible } from "./quantity-form.ts";
import { parseUnit } from "./unit-reader.ts";
import type { Quantity } from "./vocabulary.ts";

/**
 * The unit that was probably meant by one that cannot be used.
 *
 * @param unit - as normalised, such as `W/mK`
 * @param quantity - the quantity expected
 * @returns the unit as a project file takes it, or null where nothing is near
 */
export function unitMeant(unit: string, quantity: Quantity): string | null {
  const candidates = [quantity.unit.written, ...quantity.slipUnits];
  const squeezed = squeeze(unit);
  const spelled = candidates.find((candidate) => squeeze(normaliseText(candidate)) === squeezed);
  return spelled ?? candidates.find((candidate) => OTHER_NAMES[candidate]?.includes(squeezed)) ?? null;
}

/**
 * What was probably meant by a number without a usable unit.
 *
 * @param digits - the number as written
 * @param quantity - the quantity expected
 * @returns a quantity to write, chosen so that it is plausible; the vocabulary's example where none is
 */
export function quantityMeant(digits: string, quantity: Quantity): string {
  const value = Number(digits);
  const asFraction = value <= 1 ? plausibleShare(value, quantity) : null;
  const alternatives = [asFraction, ...plausibleWithUnits(digits, quantity)].filter((text) => text !== null);
  if (alternatives.length > 0) return alternatives.join(" or ");
  return plausibleShare(value, quantity) ?? quantity.example;
}

/** The same digits with the first of the quantity's units that makes them plausible. */
export function plausibleWithUnit(digits: string, quantity: Quantity): string | null {
  return plausibleWithUnits(digits, quantity)[0] ?? null;
}

function plausibleWithUnits(digits: string, quantity: Quantity): string[] {
  const fitting = quantity.slipUnits.filter((unit) => {
    const value = parseUnit(digits, normaliseText(unit))?.toNumber(quantity.unit.si);
    return value !== undefined && isPlausible(value, quantity);
  });
  return fitting.map((unit) => asWritten(`${digits} ${unit}`));
}

/** A share written as if it were its percentage, or the other way round, where that is plausible. */
export function plausibleShare(value: number, quantity: Quantity): string | null {
  if (quantity.unit.written !== "%") return null;
  const meant = [value, value / 100, value * 100].find((share) => isPlausible(share, quantity));
  return meant === undefined ? null : `${plainDigits(meant * 100)} %`;
}

/** Other names that units go by, squeezed; by the unit as a project file takes it. */
const OTHER_NAMES: Record<string, readonly string[]> = {
  "°C": ["c", "celsius", "degc", "degreec", "degreesc", "degreescelsius", "deg", "centigrade"],
  K: ["kelvin", "c", "degc", "degrees", "deg"],
  "%": ["pc", "pct", "rh", "percentrh", "percents"],
  "°": ["degree", "degrees"],
  mm: ["millimetre", "millimetres", "millimeter", "millimeters", "mil"],
  m: ["metre", "metres", "meter", "meters"],
  m2: ["sqm", "qm", "mm2"],
  m3: ["cum", "cbm"],
  "/h": ["1/h", "ach", "ac/h", "h-1", "h^-1", "/hr", "1/hr", "perhour", "changes/h"],
  "/m2": ["1/m2", "m-2", "m^-2", "perm2"],
  "kg/day": ["kg/d", "l/day", "litre/day", "litres/day", "l/d", "kg/24h"],
  "MN s/g": ["mns/g", "mnsg-1", "mns.g-1"],
  perm: ["perms", "usperm", "usperms"],
  "/kWh": ["perkwh", "1/kwh"],
};

function squeeze(unit: string): string {
  return unit
    .toLowerCase()
    .replace(/[ .()*]/g, "")
    .replace(/\^/g, "");
}
