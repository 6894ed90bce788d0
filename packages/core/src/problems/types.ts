import type { ProblemCode } from "./wordings.ts";

/** Where in a text something stands: line and column count from 1. */
export interface TextPosition {
  /** Counted from 1. */
  line: number;
  /** Counted from 1. */
  column: number;
}

/** A step list into the file's data, such as `["build-ups", 1, "layers", 2, "thickness"]`; indices count from 0. */
export type ProblemPath = readonly (string | number)[];

/**
 * One thing wrong with what was given, as data. `word-problem.ts` turns it into sentences.
 * `details` holds what its wording needs: names, limits, what was expected.
 */
export interface Problem {
  code: ProblemCode;
  path: ProblemPath;
  position: TextPosition | null;
  /** What stood there, as the reader wrote it; null when something is missing. */
  received: string | null;
  details: Readonly<Record<string, string | number | readonly string[] | null>>;
}

/** A problem in words, as printed and as written under `--json`. */
export interface WordedProblem {
  code: ProblemCode;
  /** Counted from 1. */
  line: number | null;
  /** Counted from 1. */
  column: number | null;
  /** 0-based path, such as `build-ups[1].layers[2].thickness`. */
  path: string;
  /** One sentence that counts from 1 ("build-up 2, Studio wall, layer 3, mineral wool slab: …"). */
  message: string;
  expected: string | null;
  received: string | null;
  likelySlip: string | null;
  /** What to write, letter by letter: one of these; empty where that cannot be told. */
  write: readonly string[];
}

/** What a reader gives back: the value, or every problem found. */
export type Reading<Value> = { ok: true; value: Value } | { ok: false; problems: Problem[] };
