import { comparable } from "./near-names.ts";

/** What is meant by a value that is none of those a key takes. */
export interface ValueMeant {
  /** Values that may be meant, the likeliest first; one alone can be written straight away. */
  near: readonly string[];
  /** A sentence without its full stop, where names alone would mislead; null elsewhere. */
  hint: string | null;
}

/**
 * What a value is meant for that the trade uses and the key does not take.
 *
 * @param key - the key
 * @param value - as the reader wrote it
 * @returns the values that may be meant, or null for a value that is not known here
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

/** What values are also called, by key. Common practice. */
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
