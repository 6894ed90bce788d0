import type { Term } from "./term.ts";
import { TERMS } from "./terms.ts";

/**
 * Looks a word up; case, hyphens and spaces are forgiven.
 *
 * @param word - as asked: a name, another way to say it, a symbol or a technical term
 * @returns its term; null when there is none
 */
export function lookUp(word: string): Term | null {
  const wanted = comparableWord(word);
  const isWanted = (name: string | null): boolean => name !== null && comparableWord(name) === wanted;
  return (
    TERMS.find(({ name }) => isWanted(name)) ??
    TERMS.find(({ also }) => also.some(isWanted)) ??
    TERMS.find(({ technical, symbol }) => isWanted(technical) || isWanted(symbol)) ??
    null
  );
}

/**
 * A word with case, hyphens, points and repeated spaces forgiven.
 *
 * @param word - as asked
 * @returns lower case, single spaces
 * @example comparableWord(" Build-up ") // "build up"
 */
export function comparableWord(word: string): string {
  return word
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s_·-]+/g, " ")
    .trim();
}
