import { type Column, figuresUnder } from "../table.ts";
import { sentence } from "../words.ts";
import { ANSWER_TERMS } from "./answer-terms.ts";
import { BEYOND_TERMS } from "./beyond-terms.ts";
import { BUILDING_TERMS } from "./building-terms.ts";
import { HEAT_TERMS } from "./heat-terms.ts";
import { type Term, wholeTerm } from "./term.ts";
import { VAPOUR_TERMS } from "./vapour-terms.ts";
import { WATER_TERMS } from "./water-terms.ts";

/** Every term of the report, of the project file and of the trade, in the order in which `explain` lists them. */
export const TERMS: readonly Term[] = [
  ...ANSWER_TERMS,
  ...WATER_TERMS,
  ...BUILDING_TERMS,
  ...VAPOUR_TERMS,
  ...HEAT_TERMS,
  ...BEYOND_TERMS,
].map(wholeTerm);

/**
 * A term by its name.
 *
 * @param name - as the list writes it
 * @returns the term
 * @throws RangeError when the list has no such term: headings and table heads use listed terms only
 */
export function term(name: string): Term {
  const found = TERMS.find((entry) => entry.name === name);
  if (found === undefined) throw new RangeError(`No term is called "${name}".`);
  return found;
}

/**
 * A term as a heading: with a capital letter, and its symbol where it has one.
 *
 * @param name - the term's name
 * @returns the heading
 * @example headingOf("accumulated moisture") // "Accumulated moisture Ma"
 */
export function headingOf(name: string): string {
  const { symbol } = term(name);
  const heading = /^\p{L}{2}/u.test(name) ? sentence(name) : name;
  return symbol === null || symbol === name ? heading : `${heading} ${symbol}`;
}

/**
 * A table column headed by a term, with its unit below.
 *
 * @param name - the term's name
 * @param unit - another unit than the list's, as the table prints its figures
 * @returns the column, of figures
 */
export function columnOf(name: string, unit: string | null = term(name).unit): Column {
  return figuresUnder(headingOf(name), unit);
}

/**
 * A table column headed by a term's symbol alone, with its unit below.
 *
 * @param name - the term's name
 * @param unit - another unit than the list's, or none
 * @returns the column, of figures
 * @throws RangeError when the list has no such term, or the term no symbol
 */
export function symbolColumn(name: string, unit: string | null = term(name).unit): Column {
  const { symbol } = term(name);
  if (symbol === null) throw new RangeError(`The term "${name}" has no symbol.`);
  return figuresUnder(symbol, unit);
}

/** The same headed by the term's word. */
export function wordColumn(name: string, unit: string | null = term(name).unit): Column {
  return figuresUnder(sentence(term(name).name), unit);
}
