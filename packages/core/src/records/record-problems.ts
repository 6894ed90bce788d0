import type { Problem } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import { tableProblem } from "../tables/table-problem.ts";
import { LINES_NAMED } from "./record-limits.ts";

/** Problems of weather records. The same slip on thousands of lines is one problem with its first lines and a count. */
export interface RecordProblems {
  /**
   * Notes one problem.
   *
   * @param code - its kind
   * @param line - line from 1; null for the file as a whole
   * @param received - what was found there
   * @param details - the details that its wording needs; those of the first line are kept
   */
  note(code: ProblemCode, line: number | null, received: string | null, details?: Problem["details"]): void;
  /** Whether nothing was noted. */
  none(): boolean;
  /** Every kind of problem, in the order of the first line of each. */
  list(): Problem[];
}

/**
 * Makes an empty collection of problems.
 *
 * @returns the collection; it joins problems with the same code and the same column, fault or role
 */
export function collectRecordProblems(): RecordProblems {
  const kinds = new Map<string, { problem: Problem; count: number; lines: string[] }>();
  return {
    note(code, line, received, details = {}): void {
      const key = `${code} ${details.column ?? details.fault ?? details.role ?? ""}`;
      const earlier = kinds.get(key);
      if (earlier === undefined) {
        const lines = line === null ? [] : [String(line)];
        kinds.set(key, { problem: tableProblem(code, line, received, details), count: 1, lines });
        return;
      }
      earlier.count += 1;
      if (line !== null && earlier.lines.length < LINES_NAMED) earlier.lines.push(String(line));
    },
    none: () => kinds.size === 0,
    list(): Problem[] {
      const problems = [...kinds.values()].map(({ problem, count, lines }) => ({
        ...problem,
        details: { ...problem.details, count, lines },
      }));
      return problems.sort((one, other) => lineOf(one) - lineOf(other));
    },
  };
}

/** The line by which problems are sorted; those of the whole file come last. */
function lineOf(problem: Problem): number {
  return problem.position?.line ?? Number.MAX_SAFE_INTEGER;
}
