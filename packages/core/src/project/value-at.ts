import type { ProblemPath } from "../problems/types.ts";

/**
 * The value at a path.
 *
 * @param data - the file's data
 * @param path - steps into it
 * @returns the value, or undefined where there is none
 */
export function valueAt(data: unknown, path: ProblemPath): unknown {
  return path.reduce<unknown>(
    (here, step) => (isThing(here) && Object.hasOwn(here, step) ? here[step] : undefined),
    data,
  );
}

/**
 * The text at a path.
 *
 * @param data - the file's data
 * @param path - steps into it
 * @returns the text, or null where there is none
 */
export function textAt(data: unknown, path: ProblemPath): string | null {
  const value = valueAt(data, path);
  return typeof value === "string" && value.trim() !== "" ? value : null;
}

/**
 * The keys of the object at a path.
 *
 * @param data - the file's data
 * @param path - steps into it
 * @returns its keys; empty where there is no object
 */
export function keysOf(data: unknown, path: ProblemPath): string[] {
  const value = valueAt(data, path);
  return isThing(value) && !Array.isArray(value) ? Object.keys(value) : [];
}

/**
 * The list at a path.
 *
 * @param data - the file's data
 * @param path - steps into it
 * @returns its items; empty where there is no list
 */
export function listAt(data: unknown, path: ProblemPath): readonly unknown[] {
  const value = valueAt(data, path);
  return Array.isArray(value) ? value : [];
}

function isThing(value: unknown): value is Record<string | number, unknown> {
  return typeof value === "object" && value !== null;
}
