import type { Problem } from "./types.ts";
import { problemInText, wordProblem } from "./word-problem.ts";

/** Thrown by the reading functions that throw: every problem, and all of them worded in the message. */
export class ProblemsError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => problemInText(wordProblem(problem))).join("\n"));
    this.name = "ProblemsError";
    this.problems = problems;
  }
}
