import { comparable, nearNames } from "../problems/near-names.ts";
import type { ProblemPath } from "../problems/types.ts";
import { keysAt } from "./keys-of-schema.ts";
import { faultOfKey, type ShapeFault } from "./shape-fault.ts";
import { valueAt } from "./value-at.ts";

/**
 * A key that means nothing at its place, with the keys that are near; or the second half of a number that a decimal
 * comma cut in two.
 *
 * @param key - as written
 * @param around - path of what it stands in
 * @param data - the file's data
 * @returns the fault
 */
export function faultOfUnknownKey(key: string, around: ProblemPath, data: unknown): ShapeFault {
  const path = [...around, key];
  const firstHalf = firstHalfOf(key, valueAt(data, around));
  if (firstHalf !== null) {
    const write = `${firstHalf.key}: ${firstHalf.value}.${key}`;
    return faultOfKey("comma-in-braces", path, { key, first: firstHalf.key, write });
  }
  const known = keysAt(around);
  const spelled = known.find((candidate) => comparable(candidate) === comparable(key));
  const near = spelled === undefined ? nearNames(key, known) : [spelled];
  return faultOfKey("key-unknown", path, { key, near, known });
}

/**
 * Whether a number is the first half of one that a comma cut in two: YAML in braces reads `width: 0,5 mm` as
 * `width: 0` and a key `5 mm` without a value.
 *
 * @param path - of the number
 * @param data - the file's data
 * @returns true when the next key is the other half
 */
export function isHalfOfComma(path: ProblemPath, data: unknown): boolean {
  const around = valueAt(data, path.slice(0, -1));
  if (typeof around !== "object" || around === null || Array.isArray(around)) return false;
  const keys = Object.keys(around);
  const next = keys[keys.indexOf(String(path[path.length - 1])) + 1];
  return next !== undefined && firstHalfOf(next, around) !== null;
}

function firstHalfOf(key: string, around: unknown): { key: string; value: number } | null {
  if (typeof around !== "object" || around === null) return null;
  const entries = Object.entries(around);
  const index = entries.findIndex(([name]) => name === key);
  const [before, value] = entries[index - 1] ?? [];
  const isHalf = SECOND_HALF.test(key) && entries[index]?.[1] === null && typeof value === "number";
  return isHalf && before !== undefined ? { key: before, value } : null;
}

const SECOND_HALF = /^\d+( |$)/;
