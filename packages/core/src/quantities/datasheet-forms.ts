import type { Quantity } from "./vocabulary.ts";

/**
 * Brings forms found on data sheets to number, space, unit: inches with fractions, R-values, and values given as "more
 * than".
 *
 * @param plain - a quantity, normalised by `normalise-text.ts`
 * @param quantity - the quantity expected
 * @returns the quantity in the form of a project file; any other text unchanged
 * @example fromDatasheet("5 1/2 in", quantityOf("thickness")) // "5.5 in"
 */
export function fromDatasheet(plain: string, quantity: Quantity): string {
  const { si } = quantity.unit;
  const number = si === "m" ? withoutFraction(plain) : plain;
  if (LEAST_VALUES.has(quantity.name)) return withoutMoreThan(number);
  if (si === "m^2 K/W") return withoutR(number);
  return number;
}

/**
 * Brings the unit of a data sheet to one that mathjs reads.
 *
 * @param unit - normalised
 * @param si - the quantity's unit in the core, as mathjs reads it
 * @returns the unit with degR for a difference in degrees, h for hr, and day for 24 h; other units unchanged
 * @example unitFromDatasheet("BTU in/(hr ft2 degF)", "W/(m K)") // "BTU in/(h ft^2 degR)"
 */
export function unitFromDatasheet(unit: string, si: string): string {
  const named = unit
    .replace(/\bBtu\b/g, "BTU")
    .replace(/\bhrs?\b/g, "h")
    .replace(/\b24 ?h\b/g, "day")
    .replace(/\b(ft|in|inch)([23])\b/g, "$1^$2")
    .replace(/\bperm-(in|inch)\b/g, "perm $1");
  return /\bBTU\b/.test(named) && si !== "degC" ? named.replace(/\bdegF\b/g, "degR") : named;
}

/** Below this, an R-value without a unit may well be metric (this project's rule). */
export const LEAST_IMPERIAL_R = 10;

/** Inches and feet with a fraction in halves, quarters, down to 64ths, as a decimal number. */
function withoutFraction(plain: string): string {
  const [, whole = "0", above, below, unit] =
    /^(?:(\d+)[ -])?(\d+)\/(2|4|8|16|32|64) ?(in|inch|inches|ft|feet)$/.exec(fractionsInDigits(plain)) ?? [];
  if (unit === undefined) return plain;
  return `${Number(whole) + Number(above) / Number(below)} ${unit}`;
}

/** `5½ in` as `5 1/2 in`. */
export function fractionsInDigits(plain: string): string {
  return plain.replace(/ ?([½¼¾⅓⅔⅛⅜⅝⅞])/g, (_, sign: string) => ` ${sign.normalize("NFKD").replace("⁄", "/")}`).trim();
}

/** Quantities for which data sheets give a least value, such as "> 100 m"; that value is taken. */
const LEAST_VALUES: ReadonlySet<string> = new Set(["equivalent air layer thickness sd", "vapour resistance"]);

function withoutMoreThan(plain: string): string {
  return plain.replace(/^(?:>=?|≥) ?(?=\d)/, "");
}

/** `R 20` with its North American unit; a small R-value is left unchanged, so that the user is asked. */
function withoutR(plain: string): string {
  const [, digits] = R_VALUE.exec(plain) ?? [];
  return digits !== undefined && Number(digits) >= LEAST_IMPERIAL_R ? `${digits} h ft2 degF/BTU` : plain;
}

/** An R-value without a unit. */
export const R_VALUE: RegExp = /^R[ -]?(\d+(?:\.\d+)?)$/i;
