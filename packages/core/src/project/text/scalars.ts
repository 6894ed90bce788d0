import { isMap, isSeq, type Node, type Scalar } from "yaml";
import type { ProblemPath } from "../../problems/types.ts";
import { isTextKey } from "./text-keys.ts";

/**
 * The plain value of a YAML scalar. Only plain decimal digits become a number.
 *
 * @param scalar - as parsed
 * @param path - where it stands; names stay text
 * @returns text, number, true or false, or null
 */
export function valueOfScalar(scalar: Scalar, path: ProblemPath): unknown {
  const { value, source } = scalar;
  if (value === null || typeof value === "string") return value;
  const written = source ?? String(value);
  if (isTextKey(path)) return written;
  if (typeof value === "number") return PLAIN_NUMBER.test(written) && Number.isFinite(value) ? value : written;
  return value;
}

/**
 * A value as the user wrote it.
 *
 * @param text - the whole text
 * @param node - the value's node
 * @returns one line, shortened
 */
export function writtenBetween(text: string, node: unknown): string {
  const [start, end] = (node as Node | null)?.range ?? [0, 0];
  const written = text.slice(start, Math.min(end, start + LONGEST_WRITTEN * 2)).replace(/[\p{Cc}\s]+/gu, " ");
  const trimmed = written.trim();
  return trimmed.length <= LONGEST_WRITTEN ? trimmed : `${trimmed.slice(0, LONGEST_WRITTEN)}…`;
}

/**
 * Describes a list or a set of keys in a few words.
 *
 * @param node - a sequence or a map
 * @returns for example "a list of 3"
 */
export function inBrief(node: unknown): string {
  if (isSeq(node)) return ["an empty list", "a list of one"][node.items.length] ?? `a list of ${node.items.length}`;
  return isMap(node) && node.items.length === 0 ? "an empty pair of braces" : "keys with values";
}

const PLAIN_NUMBER = /^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/;
const LONGEST_WRITTEN = 80;
