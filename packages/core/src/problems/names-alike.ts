import { comparable } from "./near-names.ts";

/**
 * Known names that share a word, or the beginning of one, with an unknown name: for users who know the trade's word
 * but not the table's.
 *
 * @param name - as the user wrote it
 * @param known - the known names
 * @returns up to five, those that share most words first; empty when no word is shared
 * @example namesAlike("brickwork", ["facing brick", "plywood"]) // ["facing brick"]
 */
export function namesAlike(name: string, known: readonly string[]): string[] {
  const wanted = tellingWords(name);
  const scored = known.map((candidate) => {
    const words = tellingWords(candidate);
    return { candidate, shared: wanted.filter((word) => words.some((other) => beginAlike(word, other))).length };
  });
  return scored
    .filter(({ shared }) => shared > 0)
    .sort((one, other) => other.shared - one.shared)
    .filter(({ shared }, _, [best]) => shared === best!.shared)
    .slice(0, MOST_OFFERED)
    .map(({ candidate }) => candidate);
}

const MOST_OFFERED = 5;
/** Shorter words are ignored. */
const SHORTEST_WORD = 4;
/** Two words are alike if they begin with this many equal letters. */
const SAME_BEGINNING = 5;

function tellingWords(name: string): string[] {
  return comparable(name)
    .slice(0, LONGEST_COMPARED)
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length >= SHORTEST_WORD);
}

/** Letters of a text that are compared; no name is this long. */
const LONGEST_COMPARED = 80;

function beginAlike(one: string, other: string): boolean {
  return (
    one === other || (one.length >= SAME_BEGINNING && one.slice(0, SAME_BEGINNING) === other.slice(0, SAME_BEGINNING))
  );
}
