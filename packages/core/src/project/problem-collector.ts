import { placeInWords } from "../problems/place-in-words.ts";
import type { Problem, ProblemPath } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import type { FileData } from "./text/file-data.ts";
import { valueAt } from "./value-at.ts";

/** Gathers the problems of one project file; nothing stops at the first. */
export interface ProblemCollector {
  /** Something wrong at a path; its position, its text and its place in words are looked up here. */
  add(code: ProblemCode, path: ProblemPath, details?: Problem["details"]): void;
  /** The same, pointing at the key and not at its value. */
  addAtKey(code: ProblemCode, path: ProblemPath, details?: Problem["details"]): void;
  /** A problem from elsewhere (a quantity, a table), put at a path. */
  adopt(problem: Problem, path: ProblemPath): void;
  readonly problems: readonly Problem[];
}

/**
 * Begins gathering.
 *
 * @param file - data and positions of the project file
 * @returns an empty collector
 */
export function collectProblems(file: FileData): ProblemCollector {
  const problems: Problem[] = [];
  const make = (code: ProblemCode, path: ProblemPath, details: Problem["details"], atKey: boolean): Problem => {
    file.work.steps += 1;
    const { place, subject } = placeInWords(path, file.data);
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

/** "Keys with values" tells a reader nothing, unless something of another kind belongs there. */
function isQuoted(code: ProblemCode, value: unknown): boolean {
  return typeof value !== "object" || Array.isArray(value) || code === "wrong-kind";
}
