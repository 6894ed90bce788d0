import { type Problem, wordProblem } from "@warmside/core";
import { json } from "./answers/json.ts";
import { problemList } from "./answers/problem-list.ts";
import { type CommandResult, refused } from "./command-result.ts";

/**
 * The outcome of a project file with problems.
 *
 * @param problems - every problem found
 * @param file - the file as the reader knows it
 * @param asJson - JSON on standard output instead of words on standard error
 * @returns ends with 1
 */
export function refusedProject(problems: readonly Problem[], file: string, asJson: boolean): CommandResult {
  const worded = problems.map((problem) => ({ ...wordProblem(problem), file: fileOf(problem, file) }));
  if (!asJson) return refused(problemList(worded, file));
  return refused([], json({ problems: worded }));
}

/** A problem may lie in a table that the project names. */
function fileOf({ details }: Problem, projectFile: string): string {
  return typeof details.file === "string" ? details.file : projectFile;
}
