import { type Check, problemsOfFaults } from "../given/faults.ts";
import { ProblemsError } from "../problems/problems-error.ts";

/**
 * What a builder has made, checked as the values of a project file are checked.
 *
 * @param made - the thing
 * @param check - what it must be
 * @param name - what it is called in a message
 * @returns the thing
 * @throws ProblemsError with every problem, in the reader's words
 */
export function checked<Made>(made: Made, check: Check, name: string): Made {
  const problems = problemsOfFaults(check(made, [name]));
  if (problems.length > 0) throw new ProblemsError(problems);
  return made;
}
