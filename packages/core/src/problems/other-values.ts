import { comparable } from "./near-names.ts";

/** What was probably meant by a value that a key does not take. */
export interface ValueMeant {
  /** Values that may be meant, likeliest first; if there is only one, it can be written straight away. */
  near: readonly string[];
  /** A sentence without its full stop, where the values alone would mislead; otherwise null. */
  hint: string | null;
}

/**
 * Looks up a word that the trade uses but the key does not take.
 *
 * @param key - the key
 * @param value - as the user wrote it
 * @returns the values that may be meant, or null for a word that is not listed here
 * @example valueMeant("ventilation", "fully")?.near // ["well"]
 */
export function valueMeant(key: string, value: string): ValueMeant | null {
  const meant = OTHER_VALUES[key]?.find(({ words }) => words.includes(comparable(value)));
  return meant === undefined ? null : { near: meant.near, hint: meant.hint ?? null };
}

interface OtherValue {
  words: readonly string[];
  near: readonly string[];
  hint?: string;
}

/** Other words for values, by key. Common practice. */
const OTHER_VALUES: Readonly<Record<string, readonly OtherValue[]>> = {
  ventilation: [
    {
      words: ["ventilated", "yes", "true", "vented", "open"],
      near: ["well", "slight"],
      hint: "It is well for openings of 1500 mm² or more a metre, slight for 500 to 1500 mm² a metre",
    },
    { words: ["full", "fully", "fully ventilated", "strong"], near: ["well"] },
    {
      words: ["no", "false", "sealed", "closed", "still", "unventilated", "unvented", "not ventilated"],
      near: ["none"],
    },
    { words: ["a little", "little", "weak", "some", "partly", "slightly ventilated"], near: ["slight"] },
  ],
  faces: [
    {
      words: ["outside", "outdoor", "exterior", "external", "outside air", "external air", "weather"],
      near: ["outdoors"],
    },
    { words: ["earth", "soil", "slab"], near: ["ground"] },
    { words: ["crawl space", "crawlspace", "underfloor", "underfloor void"], near: ["void"] },
    { words: ["inside", "room"], near: ["indoor"] },
  ],
  element: [
    {
      words: [
        "internal wall",
        "inside wall",
        "inner wall",
        "interior wall",
        "dividing wall",
        "partition wall",
        "party wall",
      ],
      near: ["partition"],
    },
    { words: ["external wall", "outside wall", "outer wall", "exterior wall", "gable"], near: ["wall"] },
    { words: ["roof"], near: ["flat roof", "pitched roof"] },
    { words: ["ground floor", "slab", "floor slab", "suspended floor", "deck"], near: ["floor"] },
    {
      words: ["ceiling", "loft", "attic"],
      near: [],
      hint: "A ceiling below a roof space is a flat roof or a pitched roof; between two rooms it is a partition or a floor",
    },
  ],
};
