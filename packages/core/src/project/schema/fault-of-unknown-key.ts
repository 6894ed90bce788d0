import { comparable, nearNames } from "../../problems/near-names.ts";
import { keysAlsoCalled, keysCalled } from "../../problems/other-keys.ts";
import type { ProblemPath } from "../../problems/types.ts";
import type { WorkCount } from "../../problems/work-count.ts";
import type { FileData } from "../text/file-data.ts";
import { valueAt } from "../value-at.ts";
import { keysAbove, keysAt } from "./keys-of-schema.ts";
import { faultOfKey, type ShapeFault } from "./shape-fault.ts";

/**
 * Says what is wrong with a key that means nothing in its place: not indented, joined to its value, in the wrong place,
 * misspelt, or really the second half of a number that a decimal comma cut in two.
 *
 * @param key - as written
 * @param around - path of the object it stands in
 * @param file - data and positions
 * @returns the fault
 */
export function faultOfUnknownKey(key: string, around: ProblemPath, file: FileData): ShapeFault {
  const path = [...around, key];
  const firstHalf = firstHalfOf(key, around, file);
  if (firstHalf !== null) {
    const numbers = halvesJoined(String(firstHalf.value), key);
    const write = numbers.map((number) => `${firstHalf.key}: ${number}`);
    return faultOfKey("comma-in-braces", path, { key, first: firstHalf.key, write });
  }
  const known = keysAt(around);
  const under = keyItBelongsUnder(key, around, file);
  if (under !== null) return faultOfKey("key-not-indented", path, { key, under, value: file.source.writtenAt(path) });
  const joined = joinedKey(key, known, file.work);
  if (joined !== null) {
    const { lacks, value } = joined;
    return faultOfKey("key-joined", path, { key, lacks, near: [joined.key], write: `${joined.key}: ${value}` });
  }
  const near = keysMeant(key, known, file.work);
  const isFree = near.some((candidate) => valueAt(file.data, [...around, candidate]) === undefined);
  const elsewhere = isFree ? null : keyElsewhere(key, around);
  return elsewhere === null
    ? faultOfKey("key-unknown", path, { key, near, known })
    : faultOfKey("key-elsewhere", path, { key, ...elsewhere });
}

/** The same key, or one that the trade calls by this name, where it belongs one step further in. */
function keyElsewhere(key: string, around: ProblemPath): { meant: string; above: readonly string[] } | null {
  for (const meant of [key, ...keysCalled(key)]) {
    const above = keysAbove(meant, around);
    if (above.length > 0) return { meant, above };
  }
  return null;
}

/** An earlier key without a value that takes this key: the lines under it are not indented. */
function keyItBelongsUnder(key: string, around: ProblemPath, file: FileData): string | null {
  let before = file.source.keyBefore([...around, key]);
  for (let looked = 0; before !== null && looked < MOST_UNINDENTED; looked += 1) {
    if (valueAt(file.data, [...around, before]) === null)
      return keysAt([...around, before]).includes(key) ? before : null;
    before = file.source.keyBefore([...around, before]);
  }
  return null;
}

/** How many keys back to look for it. */
const MOST_UNINDENTED = 30;

/** The same key in another spelling, or the keys that the trade calls by this name, or else those a few letters off. */
function keysMeant(key: string, known: readonly string[], work: WorkCount): string[] {
  const spelled = known.find((candidate) => comparable(candidate) === comparable(key));
  if (spelled !== undefined) return [spelled];
  const called = keysAlsoCalled(key, known);
  return called.length > 0 ? called : nearNames(key, known, work);
}

/** A key and its value with no space after the colon, or with no colon, which YAML in braces reads as a single key. */
function joinedKey(
  written: string,
  known: readonly string[],
  work: WorkCount,
): { key: string; value: string; lacks: "space" | "colon" } | null {
  const [, first = "", value = ""] = /^([^:]+):(\S.*)$/s.exec(written) ?? [];
  if (first === "") return keyWithoutColon(written, known);
  const [key] = keysMeant(first, known, work);
  return key === undefined ? null : { key, value, lacks: "space" };
}

/** A key, a space and a number: `thickness 12.5 mm`. */
function keyWithoutColon(
  written: string,
  known: readonly string[],
): { key: string; value: string; lacks: "colon" } | null {
  const key = known.find((candidate) => written.startsWith(`${candidate} `));
  const value = key === undefined ? "" : written.slice(key.length).trim();
  return key !== undefined && /^\d/.test(value) ? { key, value, lacks: "colon" } : null;
}

/**
 * Whether a number is the first half of one that a comma cut in two. YAML in braces reads `width: 0,5 mm` as
 * `width: 0` and a key `5 mm` without a value.
 *
 * @param path - of the number
 * @param file - data and positions
 * @returns true when the next key is the other half
 */
export function isHalfOfComma(path: ProblemPath, file: FileData): boolean {
  const around = path.slice(0, -1);
  const next = file.source.keyAfter(path);
  return next !== null && firstHalfOf(next, around, file) !== null;
}

function firstHalfOf(key: string, around: ProblemPath, file: FileData): { key: string; value: number } | null {
  if (!SECOND_HALF.test(key) || valueAt(file.data, [...around, key]) !== null) return null;
  const before = file.source.keyBefore([...around, key]);
  const value = before === null ? undefined : valueAt(file.data, [...around, before]);
  return before !== null && typeof value === "number" ? { key: before, value } : null;
}

const SECOND_HALF = /^\d+(\.\d+)?( |$)/;

/** The number that a comma cut in two; two readings where the comma may mark thousands or decimals. */
function halvesJoined(first: string, second: string): readonly string[] {
  const [asThousands, asDecimals] = [`${first}${second}`, `${first}.${second}`];
  if (/^\d{3}\.\d/.test(second)) return [asThousands];
  const isEither = /^[1-9]\d{0,2}$/.test(first) && /^\d{3}( |$)/.test(second);
  return isEither ? [asThousands, asDecimals] : [asDecimals];
}
