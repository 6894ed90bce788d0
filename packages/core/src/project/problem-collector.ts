import { pathInWords } from "../problems/path-in-words.ts";
import type { Problem, ProblemPath } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import type { FileData } from "./text/file-data.ts";
import { valueAt } from "./value-at.ts";

/** Collects all problems of one project file; reading does not stop at the first. */
export interface ProblemCollector {
  /** Adds a problem at a path; looks up its position, its text and its place in words. */
  add(code: ProblemCode, path: ProblemPath, details?: Problem["details"]): void;
  /** The same, but points at the key, not at its value. */
  addAtKey(code: ProblemCode, path: ProblemPath, details?: Problem["details"]): void;
  /** Adds a problem found elsewhere (in a quantity or a table) at a path. */
  adopt(problem: Problem, path: ProblemPath): void;
  readonly problems: readonly Problem[];
}

/**
 * Makes an empty collector.
 *
 * @param file - data and positions of the project file
 * @returns the collector
 */
export function collectProblems(file: FileData): ProblemCollector {
  const problems: Problem[] = [];
  const make = (code: ProblemCode, path: ProblemPath, details: Problem["details"], atKey: boolean): Problem => {
    file.work.steps += 1;
    const { place, subject } = pathInWords(path, file.data);
    return {
      code,
      path,
      position: atKey ? file.source.keyPositionOf(path) : file.source.positionOf(path),
      received: isQuoted(code, valueAt(file.data, path)) ? file.source.writtenAt(path) : null,
      details: { place, subject, ...details },
    };
  };
  return {
    problems,
    add: (code, path, details = {}) => problems.push(make(code, path, details, false)),
    addAtKey: (code, path, details = {}) => problems.push(make(code, path, details, true)),
    adopt: ({ code, details }, path) => problems.push(make(code, path, details, false)),
  };
}

/** Whether to quote the value. Keys with values are quoted only where a value of another kind belongs. */
function isQuoted(code: ProblemCode, value: unknown): boolean {
  return typeof value !== "object" || Array.isArray(value) || code === "wrong-kind";
}
