import { nearNames } from "./near-names.ts";
import type { WorkCount } from "./work-count.ts";

/** For how many unknown names in one file near names are sought. No user is shown more problems than this. */
export const MOST_OFFERS = 60;

/**
 * Makes a look-up of near names for one file, which stops after the first `MOST_OFFERS` unknown names.
 *
 * @param work - where the letters compared are counted
 * @returns a function like `nearNames`; after that many names it returns none
 */
export function offers(work: WorkCount): (name: string, known: Iterable<string>) => string[] {
  let left = MOST_OFFERS;
  return (name, known) => {
    left -= 1;
    return left < 0 ? [] : nearNames(name, known, work);
  };
}
