import { type Check, problemsOfFaults } from "../given/faults.ts";
import { ProblemsError } from "../problems/problems-error.ts";

/**
 * Checks what a builder has made, as the values of a project file are checked.
 *
 * @param made - the object made
 * @param check - the check that it must pass
 * @param name - its name in messages
 * @returns the same object
 * @throws ProblemsError with every problem, in the reader's words
 */
export function checked<Made>(made: Made, check: Check, name: string): Made {
  const problems = problemsOfFaults(check(made, [name]));
  if (problems.length > 0) throw new ProblemsError(problems);
  return made;
}
