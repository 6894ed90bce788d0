import { create, unitDependencies } from "mathjs";

/** A quantity with its unit as mathjs represents it; only the methods used here. */
export interface ParsedUnit {
  equalBase(other: ParsedUnit): boolean;
  toNumber(unit: string | ParsedUnit): number;
}

interface UnitReader {
  unit(text: string): ParsedUnit;
  Unit: { createUnit(definitions: Record<string, string>): void };
}

/** The gauge of polythene (common practice: 1000 gauge is 250 µm), the US perm, and per cent. */
const OWN_UNITS: Record<string, string> = {
  gauge: "0.25 um",
  perm: "5.72e-11 kg/(m^2 s Pa)",
  percent: "0.01",
};

/** Reads units with an instance of mathjs that has units only: no functions, no evaluation. Made on first use. */
let reader: UnitReader | null = null;

/** Names of units that a project file may use. All others are refused, so coulomb or millikelvin cannot slip in. */
const KNOWN_NAMES = new Set(
  (
    "m mm cm km um in inch inches ft feet degC degF degR K percent deg W kW mW J kJ MJ kWh Wh " +
    "BTU kg g mg ug ng t Pa hPa kPa MPa GPa N kN MN GN s h hour hours min day days gauge perm l litre"
  ).split(" "),
);

/**
 * Reads a number with its unit. The text must be normalised and its form already checked.
 *
 * @param number - the number as digits
 * @param unit - the unit as normalised by `normalise-text.ts`
 * @returns the quantity, or null where mathjs cannot read the unit
 */
export function parseUnit(number: string, unit: string): ParsedUnit | null {
  try {
    return read(`${number} ${unit}`);
  } catch {
    return null;
  }
}

/**
 * A unit of the vocabulary, read once.
 *
 * @param si - as mathjs reads it
 * @returns the unit without a number, to convert to
 */
export function vocabularyUnit(si: string): ParsedUnit {
  const unit = vocabularyUnits.get(si) ?? read(si);
  vocabularyUnits.set(si, unit);
  return unit;
}

const vocabularyUnits = new Map<string, ParsedUnit>();

/**
 * A number in another unit.
 *
 * @param value - any finite number [from]
 * @param from - the unit it is in, as mathjs reads it
 * @param to - the unit wanted
 * @returns the number [to]
 * @throws RangeError when the number is not finite
 * @example converted(2, "inch", "m") // 0.0508
 */
export function converted(value: number, from: string, to: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`only a finite number can be converted, was ${value}`);
  return read(`${value} ${from}`).toNumber(to);
}

/**
 * Names in a unit that warmside does not know.
 *
 * @param unit - the unit as normalised
 * @returns the unknown names, in order; empty when all are known
 * @example unknownUnitNames("W/mK") // ["mK"]
 */
export function unknownUnitNames(unit: string): string[] {
  const names = unit.match(/[A-Za-z]+/g) ?? [];
  return names.filter((name) => !KNOWN_NAMES.has(name));
}

function read(text: string): ParsedUnit {
  reader ??= createReader();
  return reader.unit(text);
}

function createReader(): UnitReader {
  const made = create({ ...unitDependencies! }) as unknown as UnitReader;
  made.Unit.createUnit(OWN_UNITS);
  return made;
}
