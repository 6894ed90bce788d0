import * as mathjs from "mathjs";

/** A quantity with its unit as mathjs represents it; only the methods used here. */
export interface ParsedUnit {
  equalBase(other: ParsedUnit): boolean;
  toNumber(unit: string | ParsedUnit): number;
}

/** The class of units that mathjs makes: only the members used here. */
interface Units {
  new (value: null, unit: string): ParsedUnit;
  isValuelessUnit(text: string): boolean;
  parse(text: string, options: { allowNoUnits: true }): ParsedUnit;
  createUnit(definitions: Record<string, string>): void;
}

/** The gauge of polythene (common practice: 1000 gauge is 250 µm), the US perm, and per cent. */
const OWN_UNITS: Record<string, string> = {
  gauge: "0.25 um",
  perm: "5.72e-11 kg/(m^2 s Pa)",
  percent: "0.01",
};

/** Made when first used. */
let units: Units | null = null;

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
  units ??= unitsOnNumbers();
  return units.isValuelessUnit(text) ? new units(null, text) : units.parse(text, { allowNoUnits: true });
}

/** The factories of mathjs that units are made with; its own types leave them out. */
interface Factories {
  createFractionClass(parts: object): new (value: Exact) => Fraction;
  createUnitClass(parts: object): Units;
}

/** A ratio of whole numbers: five ninths of a kelvin are a degree Fahrenheit. */
interface Fraction {
  readonly isFraction: true;
  sub(other: Exact): Fraction;
  mul(other: Exact): Fraction;
}
type Exact = number | Fraction;

/**
 * The units of mathjs on JavaScript's own numbers: without its typed functions, large numbers and evaluation, which take
 * longer to make than a project file takes to read. Only offsets of temperatures are fractions.
 */
function unitsOnNumbers(): Units {
  // Named one by one, so that a bundle takes in no more than these.
  const Fraction = (mathjs as unknown as Factories).createFractionClass({});
  const made = (mathjs as unknown as Factories).createUnitClass({
    config: { number: "number" },
    addScalar: (one: number, other: number) => one + other,
    subtractScalar: (one: Exact, other: Exact) =>
      typeof one === "number" && typeof other === "number" ? one - other : new Fraction(one).sub(other),
    multiplyScalar: (one: Exact, other: Exact) =>
      typeof one === "number" && typeof other === "number" ? one * other : new Fraction(one).mul(other),
    divideScalar: (one: number, other: number) => one / other,
    pow: Math.pow,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: Object.is,
    isNumeric: Number.isFinite,
    format: String,
    number: Number,
    Fraction,
    BigNumber: Number,
    Complex: {},
  });
  made.createUnit(OWN_UNITS);
  return made;
}
