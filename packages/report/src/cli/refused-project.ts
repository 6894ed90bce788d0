import { type Problem, type WordedProblem, wordProblem } from "@warmside/core";
import { json } from "./answers/json.ts";
import { problemList } from "./answers/problem-list.ts";
import { CommandProblem, type CommandResult, refused } from "./command-result.ts";

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

/**
 * Does a command's work; under `--json`, what was wrong with a file as a whole comes as JSON too.
 *
 * @param asJson - whether the answer is asked for as JSON
 * @param work - the command's work
 * @returns its outcome
 * @throws CommandProblem without `--json`, and anything that is a fault of the program
 */
export async function withProblemsAsJson(asJson: boolean, work: () => Promise<CommandResult>): Promise<CommandResult> {
  try {
    return await work();
  } catch (error) {
    if (!(asJson && error instanceof CommandProblem)) throw error;
    return refused(error.lines, json({ problems: [wholeFileProblem(error)] }));
  }
}

function wholeFileProblem(error: CommandProblem): WordedProblem {
  return {
    code: error.code,
    line: null,
    column: null,
    path: "",
    message: error.message,
    expected: null,
    received: null,
    likelySlip: null,
    write: null,
  };
}
