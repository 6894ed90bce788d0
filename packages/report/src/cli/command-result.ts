import { type Line, type Printed, paragraph } from "./lines.ts";

/** The outcome of a command: what to print on each stream, and the exit code. Only `main.ts` prints and exits. */
export interface CommandResult {
  /** 0 done; 1 something is wrong with what was given. */
  exit: 0 | 1;
  /** For standard output. */
  answer: Printed;
  /** For standard error. */
  messages: Printed;
}

/**
 * A command that did its work.
 *
 * @param answer - for standard output
 * @param messages - for standard error
 * @returns the result, ending with 0
 */
export function done(answer: Printed, messages: Printed = []): CommandResult {
  return { exit: 0, answer, messages };
}

/**
 * A command that found something wrong with what it was given.
 *
 * @param messages - what is wrong and what to do, for standard error
 * @param answer - for standard output
 * @returns the result, ending with 1
 */
export function refused(messages: Printed, answer: Printed = []): CommandResult {
  return { exit: 1, answer, messages };
}

/**
 * Something in the input stops the command. The message is for the user: what is wrong, and what to do. Anything else
 * that is thrown is a fault of the program.
 */
export class CommandProblem extends Error {
  /** Short name of the kind of problem, for `--json`. */
  readonly code: string;
  /** The cause as a clause, for a sentence that names the file itself. */
  readonly why: string;

  constructor(code: string, message: string, why: string = message) {
    super(message);
    this.name = "CommandProblem";
    this.code = code;
    this.why = why;
  }

  /** For standard error. */
  get lines(): Line[] {
    return [paragraph(this.message)];
  }
}

/**
 * A file that cannot be read, in words.
 *
 * @param code - short name of the kind of problem
 * @param shown - the file as the reader knows it
 * @param cause - a clause: "it is a folder"
 * @param advice - what to do, a sentence
 * @returns the problem
 */
export function unreadable(code: string, shown: string, cause: string, advice: string): CommandProblem {
  return new CommandProblem(code, `${shown} cannot be read: ${cause}. ${advice}`, cause);
}
