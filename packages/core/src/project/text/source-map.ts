import type { ProblemPath, TextPosition } from "../../problems/types.ts";

/** The position of one value in the file. */
export interface SourceEntry {
  /** Position of its key; null in a list and at the top. */
  key: TextPosition | null;
  value: TextPosition;
  /** The value as the user wrote it, shortened. */
  written: string;
  /** The keys before and after it in the same object, in the order of the text; null at the ends, and in a list. */
  keyBefore: string | null;
  keyAfter: string | null;
}

/** The positions of everything in a file. */
export interface SourceMap {
  /** Position of the value, or of the nearest enclosing one. */
  positionOf(path: ProblemPath): TextPosition | null;
  /** Position of the key, or of the nearest enclosing one. */
  keyPositionOf(path: ProblemPath): TextPosition | null;
  /** The key before this one in the text, in the same object; JavaScript itself would put keys of digits first. */
  keyBefore(path: ProblemPath): string | null;
  /** The key after this one in the text, in the same object. */
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
 * @returns a text that is different for every path
 */
export function pathKey(path: ProblemPath): string {
  return JSON.stringify(path);
}
