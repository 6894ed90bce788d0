import { requireOneOf, requireTexts } from "../require.ts";

/** The parts of a worded problem; the place and what was found are added to them. */
export interface Said {
  /** The sentence after the place, without its full stop. */
  says: string;
  /** What is expected there; printed after "Expected". */
  expected?: string | null;
  /** What probably happened: a sentence without its full stop. */
  likelySlip?: string | null;
  /** What to write, letter by letter: one text, or several to choose from. */
  write?: string | readonly string[] | null;
}

/** The facts that a wording can use. */
export interface Facts {
  /** The key it is about, or "this". */
  subject: string;
  /** What was found there, or "nothing". */
  received: string;
  /** A detail as text; empty when there is none. */
  text(key: string): string;
  /** A detail as a list. */
  list(key: string): readonly string[];
}

export type Wording = (from: Facts) => Said;

/** Wordings of one subject, by code. */
export type Wordings = Readonly<Record<string, Wording>>;

/**
 * Joins names as one would say them.
 *
 * @param names - any number
 * @param joint - the word before the last name
 * @returns for example "a, b or c"; a name that has a comma itself stands in quotation marks
 * @example inSpeech(["a", "b", "c"], "or") // "a, b or c"
 */
export function inSpeech(names: readonly string[], joint: "and" | "or"): string {
  requireTexts(names, "names");
  requireOneOf(joint, "joint", ["and", "or"]);
  if (names.length < 2) return names.join("");
  const apart = names.map((name) => (name.includes(",") ? `“${name}”` : name));
  return LISTS[joint].format(apart);
}

const LISTS: Readonly<Record<"and" | "or", Intl.ListFormat>> = {
  and: new Intl.ListFormat("en-GB", { type: "conjunction" }),
  or: new Intl.ListFormat("en-GB", { type: "disjunction" }),
};

/**
 * Names to choose from.
 *
 * @param names - at least one
 * @returns for example "one of a, b or c"; the name itself when there is one
 * @example oneOf(["a", "b"]) // "one of a or b"
 */
export function oneOf(names: readonly string[]): string {
  return names.length === 1 ? names[0]! : `one of ${inSpeech(names, "or")}`;
}

/**
 * The near name if there is only one, so that nothing else can be meant.
 *
 * @param near - names, nearest first
 * @returns the name to write, or null
 * @example onlyOne(["a", "b"]) // null
 */
export function onlyOne(near: readonly string[]): string | null {
  return near.length === 1 ? near[0]! : null;
}

/**
 * Asks whether one of a few near names was meant.
 *
 * @param near - names, nearest first
 * @returns a question without its mark, or null when nothing is near
 */
export function didYouMean(near: readonly string[]): string | null {
  return near.length === 0 ? null : `Perhaps you mean ${inSpeech(near, "or")}`;
}
