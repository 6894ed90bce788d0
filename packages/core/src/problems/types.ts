import type { ProblemCode } from "./wordings.ts";

/** A position in a text; line and column are counted from 1. */
export interface TextPosition {
  /** Counted from 1. */
  line: number;
  /** Counted from 1. */
  column: number;
}

/** The steps into the file's data, such as `["build-ups", 1, "layers", 2, "thickness"]`; indices count from 0. */
export type ProblemPath = readonly (string | number)[];

/**
 * One thing that is wrong with the input, as data. `word-problem.ts` turns it into sentences.
 * `details` holds what the wording needs: names, limits, what was expected.
 */
export interface Problem {
  code: ProblemCode;
  path: ProblemPath;
  position: TextPosition | null;
  /** What was found there, as the user wrote it; null when something is missing. */
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
  /** What to write, letter by letter: one of these; empty where nothing can be suggested. */
  write: readonly string[];
}

/** What a reading function returns: the value, or every problem found. */
export type Reading<Value> = { ok: true; value: Value } | { ok: false; problems: Problem[] };
