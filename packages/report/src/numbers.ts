import { formatInShownUnit, formatNumber } from "@warmside/core";

/**
 * Figures as the page shows them: a true minus sign, thin spaces between thousands, columns that align on the point.
 */

export { formatNumber as fixed };

/**
 * A number with its sign always shown.
 *
 * @param value - any finite number
 * @param decimals - 0 to 10
 * @returns the figure with + or −; zero bare
 * @example signed(12, 0) // "+12"
 */
export function signed(value: number, decimals: number): string {
  const text = formatNumber(value, decimals);
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

/**
 * A number with no more decimals than it needs.
 *
 * @param value - any finite number
 * @param mostDecimals - 0 to 10
 * @returns the figure without trailing zeros
 * @example trimmed(0.5, 4) // "0.5"
 */
export function trimmed(value: number, mostDecimals: number): string {
  const text = formatNumber(value, mostDecimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/**
 * An amount of water in grams per square metre.
 *
 * @param amount - [kg/m²]
 * @returns the figure in g/m²: whole grams from 10 on, tenths below, and "under 0.1" for a smaller trace
 * @example grams(0.1873) // "187"
 */
export function grams(amount: number): string {
  return formatInShownUnit(amount, "condensate");
}

/**
 * An amount of water with its unit, for a sentence.
 *
 * @param amount - [kg/m²]
 * @returns such as "187 g/m²", not torn at a line's end
 * @example gramsPerArea(0.1873) // "187\u00a0g/m²"
 */
export function gramsPerArea(amount: number): string {
  return `${grams(amount)}${NO_BREAK_SPACE}g/m²`;
}

/**
 * The most water there is, for a sentence: a trace has no most of its own.
 *
 * @param amount - [kg/m²]
 * @returns such as "at most 187 g/m²"; "under 0.1 g/m²" for a smaller trace
 * @example mostGramsPerArea(0.00004) // "under 0.1\u00a0g/m²"
 */
export function mostGramsPerArea(amount: number): string {
  const text = gramsPerArea(amount);
  return text.startsWith("under") ? text : `at most ${text}`;
}

/**
 * A figure that may be missing.
 *
 * @param value - any finite number; null where it is not known
 * @param decimals - 0 to 10
 * @returns the figure, or a dash
 * @example orDash(null, 2) // "–"
 */
export function orDash(value: number | null, decimals: number): string {
  return value === null ? DASH : formatNumber(value, decimals);
}

/**
 * Shares of a whole in per cent that add up to 100.0: the largest takes what rounding leaves over.
 *
 * @param shares - [–], together 1
 * @returns the figures with one decimal, without their sign
 * @example sharesOfWhole([0.8775, 0.1225]) // ["87.7", "12.3"]
 */
export function sharesOfWhole(shares: readonly number[]): string[] {
  const rounded = shares.map((share) => readFigure(formatNumber(share * PER_CENT, 1)));
  const largest = shares.indexOf(Math.max(...shares));
  const others = rounded.reduce((sum, share, index) => (index === largest ? sum : sum + share), 0);
  return rounded.map((share, index) => formatNumber(index === largest ? PER_CENT - others : share, 1));
}

/**
 * A share or relative humidity in per cent.
 *
 * @param fraction - [–]
 * @param decimals - 0 to 10
 * @returns the figure with its sign
 * @example percent(0.15, 0) // "15\u00a0%"
 */
export function percent(fraction: number, decimals: number): string {
  return `${formatNumber(fraction * PER_CENT, decimals)}${NO_BREAK_SPACE}%`;
}

/**
 * A length in millimetres.
 *
 * @param length - [m]
 * @returns the figure with up to two decimals, without its unit
 * @example millimetres(0.0125) // "12.5"
 */
export function millimetres(length: number): string {
  return formatInShownUnit(length, "thickness");
}

/**
 * The number behind a printed figure.
 *
 * @param text - what `fixed`, `signed` or `trimmed` gave
 * @returns the number; NaN when the text is none
 * @example readFigure("−12\u202f345.68") // -12345.68
 */
export function readFigure(text: string): number {
  const plain = text.replaceAll(THIN_SPACE, "").replaceAll(MINUS, "-").trim();
  return /^[+-]?\d+(\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
}

/**
 * Figures of one column padded so that their points stand under each other when set flush right.
 *
 * @param texts - printed figures; words pass through
 * @returns the same texts, each followed by the blank width of the decimals it lacks
 */
export function alignOnPoint(texts: readonly string[]): string[] {
  const decimals = texts.map(decimalsOf);
  const most = Math.max(0, ...decimals);
  return texts.map((text, index) => {
    const own = decimals[index]!;
    if (own < 0) return text;
    const point = own === 0 && most > 0 ? POINT_WIDE_SPACE : "";
    return text + point + FIGURE_WIDE_SPACE.repeat(most - own);
  });
}

export const THIN_SPACE = "\u202f";
export const NO_BREAK_SPACE = "\u00a0";
export const MINUS = "−";
const FIGURE_WIDE_SPACE = "\u2007";
const POINT_WIDE_SPACE = "\u2008";
/** [g/kg] and [mm/m]. Source: definition of the prefixes. */
export const GRAMS_PER_KILOGRAM = 1000;
export const MILLIMETRES_PER_METRE = 1000;
/** Hundredths in a whole, and [mm²/m²]. Source: definition. */
export const PER_CENT = 100;
export const SQUARE_MILLIMETRES = 1_000_000;
const DASH = "–";

/** Decimals of a figure; −1 for a word. */
function decimalsOf(text: string): number {
  if (!/\d$/.test(text)) return -1;
  const point = text.lastIndexOf(".");
  return point < 0 ? 0 : text.length - point - 1;
}
