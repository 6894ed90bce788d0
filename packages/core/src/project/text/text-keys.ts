import type { ProblemPath } from "../../problems/types.ts";

/**
 * Whether a value is text even if it looks like a number: a name of digits, a drawing's number, a date.
 *
 * @param path - where the value stands
 * @returns true for names, references, lists of names and the words of the query
 * @example isTextKey(["reference"]) // true
 */
export function isTextKey(path: ProblemPath): boolean {
  const last = path[path.length - 1];
  if (typeof last === "number") return LISTS_OF_TEXT.has(String(path[path.length - 2]));
  return TEXT_KEYS.has(String(last)) || (path[0] === "query" && path.length === 2 && last !== "drawings");
}

const TEXT_KEYS = new Set([
  "project",
  "reference",
  "name",
  "source",
  "currency",
  "room",
  "faces",
  "climate",
  "window side",
  "outer corner",
]);
const LISTS_OF_TEXT = new Set(["drawings", "accept", "climates for place", "outer corner", "floor edge", "roof edge"]);
