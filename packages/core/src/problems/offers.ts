import { nearNames } from "./near-names.ts";
import type { WorkCount } from "./work-count.ts";

/** Names for which near ones are looked for in one file: more problems than that nobody is shown. */
export const MOST_OFFERS = 60;

/**
 * Looks for near names while one file is read, for the first names that are not known.
 *
 * @param work - where the letters compared are counted
 * @returns as `nearNames`, and none after so many names
 */
export function offers(work: WorkCount): (name: string, known: Iterable<string>) => string[] {
  let left = MOST_OFFERS;
  return (name, known) => {
    left -= 1;
    return left < 0 ? [] : nearNames(name, known, work);
  };
}
