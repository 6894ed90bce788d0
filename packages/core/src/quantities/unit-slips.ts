import { plainDigits } from "./format-quantity.ts";
import { normaliseText } from "./normalise-text.ts";
import { asWritten, isPlausible } from "./quantity-form.ts";
import { converted, parseUnit } from "./unit-reader.ts";
import type { Quantity } from "./vocabulary.ts";

/**
 * The unit that was probably meant by an unusable one.
 *
 * @param unit - as normalised, such as `W/mK`
 * @param quantity - the quantity expected
 * @returns the unit as a project file takes it, or null where nothing is near
 */
export function unitMeant(unit: string, quantity: Quantity): string | null {
  const candidates = [quantity.unit.written, ...quantity.slipUnits, ...(PRINTED_TOO[quantity.unit.si] ?? [])];
  const squeezed = squeeze(unit);
  const spelled = candidates.find((candidate) => squeeze(normaliseText(candidate)) === squeezed);
  return spelled ?? candidates.find((candidate) => OTHER_NAMES[candidate]?.includes(squeezed)) ?? null;
}

/**
 * The quantity that was probably meant by a number with an unusable unit.
 *
 * @param digits - the number as written
 * @param unit - as normalised
 * @param quantity - the quantity expected
 * @returns the same number with the unit meant, or the number converted if the unit is of another system; null where
 *   nothing is near
 */
export function withUnitMeant(digits: string, unit: string, quantity: Quantity): string | null {
  const meant = unitMeant(unit, quantity);
  if (meant !== null) return `${digits} ${meant}`;
  const other = FOREIGN.find(({ si, signs }) => si === quantity.unit.si && signs.includes(squeeze(unit)));
  if (other === undefined || !Number.isFinite(Number(digits))) return null;
  const target = quantity.slipUnits[0] ?? quantity.unit.written;
  const figure = converted(Number(digits), other.unit, normaliseText(target));
  return `${plainDigits(Number(figure.toFixed(TYPED_DECIMALS)))} ${target}`;
}

/** Units that data sheets print besides the usual ones, by the unit in the core. */
const PRINTED_TOO: Readonly<Record<string, readonly string[]>> = {
  "W/(m K)": ["BTU in/(h ft2 °F)"],
  "m^2 K/W": ["h ft2 °F/BTU"],
  "W/(m^2 K)": ["BTU/(h ft2 °F)"],
  "kg/(m^2 s Pa)": ["ng/(Pa s m2)"],
  "kg/(m s Pa)": ["ng/(Pa s m)"],
};

/** Units of another system, with the signs that people write for them and the core's unit for the same quantity. */
const FOREIGN: readonly { unit: string; si: string; signs: readonly string[] }[] = [
  { unit: "inch", si: "m", signs: ['"', "''", "″", "”", "in", "ins"] },
  { unit: "ft", si: "m", signs: ["'", "′", "’"] },
  { unit: "degF", si: "degC", signs: ["f", "fahrenheit", "degreesf", "degreesfahrenheit"] },
];

/** Decimals of a converted figure that the user is to type. */
const TYPED_DECIMALS = 3;

/**
 * What was probably meant by a number without a usable unit.
 *
 * @param digits - the number as written
 * @param quantity - the quantity expected
 * @returns plausible quantities to write; if none is plausible, the share as a percentage or the vocabulary's example
 */
export function quantityMeant(digits: string, quantity: Quantity): readonly string[] {
  const value = Number(digits);
  const asFraction = value <= 1 ? plausibleShare(value, quantity) : null;
  const alternatives = [asFraction, ...plausibleWithUnits(digits, quantity)].filter((text) => text !== null);
  if (alternatives.length > 0) return alternatives;
  return [plausibleShare(value, quantity) ?? quantity.example];
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

/** A plausible percentage for a number that may be meant as a share or as a percentage; null if there is none. */
export function plausibleShare(value: number, quantity: Quantity): string | null {
  if (quantity.unit.written !== "%") return null;
  const meant = [value, value / 100, value * 100].find((share) => isPlausible(share, quantity));
  return meant === undefined ? null : `${plainDigits(meant * 100)} %`;
}

/** Other names of units, without spaces and signs, by the unit as a project file takes it. */
const OTHER_NAMES: Record<string, readonly string[]> = {
  "°C": ["c", "celsius", "degc", "degreec", "degreesc", "degreescelsius", "deg", "degree", "degrees", "centigrade"],
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
  "mm/day": ["mm/d", "mmperday", "mm/24h", "l/m2day", "l/(m2day)"],
  "/kWh": ["perkwh", "1/kwh"],
};

function squeeze(unit: string): string {
  return unit
    .toLowerCase()
    .replace(/[ .()*]/g, "")
    .replace(/\^/g, "");
}
