import { ANSWER_WORDS } from "./answer-words.ts";
import { BUILDING_WORDS } from "./building-words.ts";
import type { Entry } from "./entry.ts";
import { HEAT_WORDS } from "./heat-words.ts";
import { VAPOUR_WORDS } from "./vapour-words.ts";

/** Every word that `explain` knows, in the order of its list. */
export const DICTIONARY: readonly Entry[] = [...ANSWER_WORDS, ...BUILDING_WORDS, ...VAPOUR_WORDS, ...HEAT_WORDS];

/**
 * Looks a word up; case, hyphens and spaces are forgiven.
 *
 * @param word - as asked
 * @returns its entry; null when there is none
 */
export function lookUp(word: string): Entry | null {
  const wanted = comparableWord(word);
  const isWanted = (name: string): boolean => comparableWord(name) === wanted;
  return (
    DICTIONARY.find((entry) => isWanted(entry.word)) ?? DICTIONARY.find((entry) => entry.also.some(isWanted)) ?? null
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
