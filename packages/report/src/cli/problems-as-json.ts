import type { WordedProblem } from "@warmside/core";
import { json } from "./answers/json.ts";
import { CommandProblem, type CommandResult, refused } from "./command-result.ts";

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

/** Its code is one of the command's own. */
function wholeFileProblem(error: CommandProblem): Omit<WordedProblem, "code"> & { code: string } {
  return {
    code: error.code,
    line: null,
    column: null,
    path: "",
    message: error.message,
    expected: null,
    received: null,
    likelySlip: null,
    write: [],
  };
}
