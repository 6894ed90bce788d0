/**
 * Names that are likely meant by one that is not known: the same letters in another order of words, or a few letters off.
 *
 * @param name - as the reader wrote it
 * @param known - the names there are
 * @returns up to three, nearest first; empty when nothing is near
 * @example nearNames("minral wool slab", ["mineral wool slab", "steel"]) // ["mineral wool slab"]
 */
export function nearNames(name: string, known: Iterable<string>): string[] {
  const wanted = comparable(name);
  if (wanted.length > LONGEST_COMPARED) return [];
  const scored = [...known].map((candidate) => ({
    candidate,
    distance: distanceBetween(wanted, comparable(candidate)),
  }));
  return scored
    .filter(({ candidate, distance }) => distance <= farthest(Math.min(wanted.length, comparable(candidate).length)))
    .sort((one, other) => one.distance - other.distance || one.candidate.localeCompare(other.candidate, "en"))
    .filter(({ distance }, _, [best]) => distance < best!.distance + 1)
    .slice(0, MOST_OFFERED)
    .map(({ candidate }) => candidate);
}

/**
 * A name with case, hyphens and repeated spaces forgiven.
 *
 * @param name - as written
 * @returns lower case, single spaces
 * @example comparable(" Mineral  Wool-slab ") // "mineral wool slab"
 */
export function comparable(name: string): string {
  return name
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();
}

/** Names offered at most. */
const MOST_OFFERED = 3;
/** Longer texts are not compared: no name is as long. */
const LONGEST_COMPARED = 80;

/** Letters that may differ: about one in four, and at least one. */
function farthest(length: number): number {
  return Math.max(1, Math.floor(length / 4));
}

/** Part of another name, or the same words: near; else the number of letters to change. */
function distanceBetween(wanted: string, candidate: string): number {
  if (wanted === "") return Number.POSITIVE_INFINITY;
  const words = wanted.split(" ");
  const candidateWords = candidate.split(" ");
  if (words.every((word) => candidateWords.includes(word))) return 1 - words.length / candidateWords.length;
  if (words.length > 1 && candidateWords.every((word) => words.includes(word))) return 1;
  return lettersToChange(wanted, candidate);
}

/** Insertions, deletions, replacements and swaps of neighbours between two words. */
function lettersToChange(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > LONGEST_COMPARED / 4) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const steps = [last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1)];
      if (swapped && row > 1 && column > 1) steps.push(beforeLast[column - 2]! + 1);
      current.push(Math.min(...steps));
    }
    beforeLast = last;
    last = current;
  }
  return last[other.length]!;
}
