import type { ProblemPath, TextPosition } from "../../problems/types.ts";

/** Where one value of the file stands. */
export interface SourceEntry {
  /** Of its key; null in a list and at the top. */
  key: TextPosition | null;
  value: TextPosition;
  /** The value as the reader wrote it, shortened. */
  written: string;
  /** The keys before and after it in the same thing, in the order of the text; null at the ends, and in a list. */
  keyBefore: string | null;
  keyAfter: string | null;
}

/** Where everything in a file stands. */
export interface SourceMap {
  /** Of the value, or of the nearest thing around it. */
  positionOf(path: ProblemPath): TextPosition | null;
  /** Of a key, or of the nearest thing around it. */
  keyPositionOf(path: ProblemPath): TextPosition | null;
  /** The key before one in the text, in the same thing: an object of JavaScript puts keys of digits first. */
  keyBefore(path: ProblemPath): string | null;
  /** The key after one in the text, in the same thing. */
  keyAfter(path: ProblemPath): string | null;
  /** As written; null where the file has nothing there. */
  writtenAt(path: ProblemPath): string | null;
}

/**
 * Makes the look-up of positions.
 *
 * @param entries - by path, written with `pathKey`
 * @returns positions of values and keys, and texts as written
 */
export function sourceMap(entries: ReadonlyMap<string, SourceEntry>): SourceMap {
  const nearest = (path: ProblemPath): { entry: SourceEntry | undefined; isExact: boolean } => {
    for (let length = path.length; length >= 0; length -= 1) {
      const entry = entries.get(pathKey(path.slice(0, length)));
      if (entry !== undefined) return { entry, isExact: length === path.length };
    }
    return { entry: undefined, isExact: false };
  };
  return {
    keyBefore: (path) => entries.get(pathKey(path))?.keyBefore ?? null,
    keyAfter: (path) => entries.get(pathKey(path))?.keyAfter ?? null,
    positionOf(path) {
      const { entry, isExact } = nearest(path);
      return (isExact ? entry?.value : (entry?.key ?? entry?.value)) ?? null;
    },
    keyPositionOf(path) {
      const { entry } = nearest(path);
      return entry?.key ?? entry?.value ?? null;
    },
    writtenAt: (path) => entries.get(pathKey(path))?.written ?? null,
  };
}

/**
 * A path as one text, for use as a key.
 *
 * @param path - steps into the data
 * @returns a text that no other path has
 */
export function pathKey(path: ProblemPath): string {
  return JSON.stringify(path);
}
