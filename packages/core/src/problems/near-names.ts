import { requireObject, requireText, requireTexts } from "../require.ts";
import type { WorkCount } from "./work-count.ts";

/**
 * Known names that an unknown one probably stands for: one has all words of the other, or they are a few letters off.
 *
 * @param name - as the user wrote it
 * @param known - the known names
 * @param work - where the letters compared are counted
 * @returns up to three, nearest first; empty when nothing is near
 * @example nearNames("minral wool slab", ["mineral wool slab", "steel"]) // ["mineral wool slab"]
 */
export function nearNames(name: string, known: Iterable<string>, work: WorkCount = { steps: 0 }): string[] {
  requireText(name, "name");
  const names = requireTexts(known, "known");
  requireObject(work, "work", ["steps"]);
  const wanted = comparable(name);
  if (wanted === "" || wanted.length > LONGEST_COMPARED) return [];
  const words = wanted.split(" ");
  const scored: { candidate: string; distance: number }[] = [];
  for (const candidate of names) {
    const distance = distanceBetween(wanted, words, comparable(candidate), work);
    if (distance < Number.POSITIVE_INFINITY) scored.push({ candidate, distance });
  }
  return scored
    .sort((one, other) => one.distance - other.distance || one.candidate.localeCompare(other.candidate, "en"))
    .filter(({ distance }, _, [best]) => distance < best!.distance + 1)
    .slice(0, MOST_OFFERED)
    .map(({ candidate }) => candidate);
}

/**
 * A name in the form used for comparing: case, hyphens and repeated spaces make no difference.
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

/** Most names offered. */
const MOST_OFFERED = 3;
/** Longer texts are not compared; no name is this long. */
const LONGEST_COMPARED = 80;

/** How many letters may differ: about one in four, and at least one. */
function farthest(length: number): number {
  return Math.max(1, Math.floor(length / 4));
}

/** Up to 1 if one name has all words of the other; otherwise the letters to change, infinite if they are too many. */
function distanceBetween(wanted: string, words: readonly string[], candidate: string, work: WorkCount): number {
  const candidateWords = candidate.split(" ");
  work.steps += words.length + candidateWords.length;
  if (words.every((word) => candidateWords.includes(word))) return 1 - words.length / candidateWords.length;
  const most = farthest(Math.min(wanted.length, candidate.length));
  const hasAll = words.length > 1 && candidateWords.every((word) => words.includes(word));
  return hasAll ? 1 : lettersToChange(wanted, candidate, most, work);
}

/** Insertions, deletions, replacements and swaps of neighbours between two words; infinite above the limit. */
function lettersToChange(one: string, other: string, most: number, work: WorkCount): number {
  if (Math.abs(one.length - other.length) > most) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const current = [row];
    let least = row;
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1];
      const swapped = row > 1 && column > 1 && one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      let steps = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1));
      if (swapped) steps = Math.min(steps, beforeLast[column - 2]! + 1);
      current.push(steps);
      least = Math.min(least, steps);
    }
    work.steps += other.length;
    if (least > most) return Number.POSITIVE_INFINITY;
    beforeLast = last;
    last = current;
  }
  const distance = last[other.length]!;
  return distance <= most ? distance : Number.POSITIVE_INFINITY;
}
