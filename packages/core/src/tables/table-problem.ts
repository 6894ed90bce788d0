import type { Problem } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";

/**
 * Makes a problem of a table or of weather records, at a line of its text.
 *
 * @param code - its kind, worded in `problems/`
 * @param line - line counted from 1; null for the text as a whole
 * @param received - what was found there; null when something is missing
 * @param details - the details that its wording needs
 * @param column - column counted from 1
 * @returns the problem as data, with an empty path (a table has no keys)
 */
export function tableProblem(
  code: ProblemCode,
  line: number | null,
  received: string | null,
  details: Problem["details"] = {},
  column = 1,
): Problem {
  return {
    code,
    path: [],
    position: line === null ? null : { line, column },
    received: shortened(received),
    details,
  };
}

/**
 * Adds the path of its file to every problem of a table.
 *
 * @param problems - the problems of one table
 * @param file - its path
 * @returns the same problems, each naming the file
 */
export function inFile(problems: readonly Problem[], file: string): Problem[] {
  return problems.map((problem) => ({ ...problem, details: { ...problem.details, file } }));
}

/** Longest piece of the user's text that a problem quotes [characters]. */
const LONGEST_RECEIVED = 80;

function shortened(received: string | null): string | null {
  if (received === null || received.length <= LONGEST_RECEIVED) return received;
  return `${received.slice(0, LONGEST_RECEIVED)}…`;
}
