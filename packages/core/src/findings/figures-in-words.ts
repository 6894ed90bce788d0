import { MONTH_NAMES } from "../constants.ts";
import { inSpeech } from "../problems/wording.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";

/** An amount of water [kg/m²]: "187 g/m²". */
export function grams(amount: number): string {
  return formatQuantity(amount, "condensate");
}

/** The maximum accumulation [kg/m²]: "at most 187 g/m²"; a tiny trace is "under 0.1 g/m²". */
export function atMost(amount: number): string {
  const text = grams(amount);
  return text.startsWith("under") ? text : `at most ${text}`;
}

/** Words with a capital first letter: "The store". */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A cup of water [kg]: 200 g on a square metre, in plain terms. */
const CUP = 0.2;

/** An amount in plain terms: "about a cup of water on every square metre". */
export function inPlainTerms(amount: number): string {
  if (amount <= 0.01) return "a trace: less than a tablespoon of water on every square metre";
  if (amount < 0.06) return "a few tablespoons of water on every square metre";
  const cups = amount / CUP;
  if (cups < 0.75) return "about half a cup of water on every square metre";
  if (cups < 1.5) return "about a cup of water on every square metre";
  return `about ${Math.round(cups)} cups of water on every square metre`;
}

/** A time in years: "less than a year", "about 11 years". */
export function yearsInWords(years: number): string {
  if (years < 1) return "less than a year";
  return years < 1.5 ? "about a year" : `about ${Math.round(years)} years`;
}

/** Words joined: "a", "a and b", "a, b and c". */
export function joined(words: readonly string[]): string {
  return inSpeech(words, "and");
}

/** Months by name: "May and June"; for most of the year, by those left out: "11 months, all but August". */
export function monthsInWords(months: readonly string[]): string {
  const others = MONTH_NAMES.filter((month) => !months.includes(month));
  if (others.length === 0) return "every month";
  return months.length <= MONTH_NAMES.length / 2
    ? joined(months)
    : `${months.length} months, all but ${joined(others)},`;
}
