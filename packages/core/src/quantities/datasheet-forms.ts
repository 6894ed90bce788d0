import type { Quantity } from "./vocabulary.ts";

/**
 * Brings what data sheets print to number, space, unit: inches with fractions, R-values, least values, the units of
 * North America and their spellings.
 *
 * @param plain - a quantity, normalised by `normalise-text.ts`
 * @param quantity - the quantity expected
 * @returns the same in the form of a project file; whatever is printed otherwise as it was
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
 * @param si - the unit that the quantity has in the core, as mathjs reads it
 * @returns degrees of difference as degR, h for hr, a day for 24 h; other units as they were
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

/** An R-value without a unit under this is metric as likely as not (this project's rule). */
export const LEAST_IMPERIAL_R = 10;

/** Inches and feet are measured by halves of halves. */
function withoutFraction(plain: string): string {
  const signs = plain.replace(/ ?([½¼¾⅛⅜⅝⅞])/g, (_, sign: string) => ` ${FRACTIONS[sign]}`).trim();
  const [, whole = "0", above, below, unit] =
    /^(?:(\d+)[ -])?(\d+)\/(2|4|8|16|32|64) ?(in|inch|inches|ft|feet)$/.exec(signs) ?? [];
  if (unit === undefined) return plain;
  return `${Number(whole) + Number(above) / Number(below)} ${unit}`;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}; // biome-ignore format: seven signs

/** Quantities of which a data sheet tells the least value, which is then taken. */
const LEAST_VALUES: ReadonlySet<string> = new Set(["equivalent air layer thickness sd", "vapour resistance"]);

function withoutMoreThan(plain: string): string {
  return plain.replace(/^(?:>=?|≥) ?(?=\d)/, "");
}

/** `R 20` in the unit of North America; a small one stays as it is, to be asked about. */
function withoutR(plain: string): string {
  const [, digits] = R_VALUE.exec(plain) ?? [];
  return digits !== undefined && Number(digits) >= LEAST_IMPERIAL_R ? `${digits} h ft2 degF/BTU` : plain;
}

/** An R-value without a unit. */
export const R_VALUE: RegExp = /^R[ -]?(\d+(?:\.\d+)?)$/i;
