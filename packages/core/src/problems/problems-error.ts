import type { Problem } from "./types.ts";
import { problemInText, wordProblem } from "./word-problem.ts";

/** Thrown by functions that throw on problems: holds every problem, and words all of them in its message. */
export class ProblemsError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => problemInText(wordProblem(problem))).join("\n"));
    this.name = "ProblemsError";
    this.problems = problems;
  }
}
