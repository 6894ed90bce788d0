import { Command, CommanderError } from "commander";
import { version } from "../version.ts";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done, refused } from "./command-result.ts";
import { COMMANDS } from "./commands.ts";
import { clearAfterInterruption } from "./interruption.ts";
import { paragraph } from "./lines.ts";
import type { Run } from "./registration.ts";
import { harmless, textFor } from "./terminal.ts";
import { usageProblem } from "./usage-problem.ts";

/** What is printed on each stream, and how the command ends. */
export interface Answer {
  exit: 0 | 1;
  answer: string;
  messages: string;
}

/**
 * Reads a command line and does what it asks.
 *
 * @param words - the command line without the program's own name
 * @param context - where the user stands
 * @returns what to print and how to end
 * @throws anything but a problem of what was given: that is a fault of the program
 */
export async function answer(words: readonly string[], context: CommandContext): Promise<Answer> {
  const { exit, answer, messages } = await resultOf(words, context);
  return { exit, answer: textFor(answer, context.answers), messages: textFor(messages, context.messages) };
}

async function resultOf(words: readonly string[], context: CommandContext): Promise<CommandResult> {
  let result: CommandResult | null = null;
  const printed = { text: "" };
  const print = (text: string): void => {
    printed.text += text;
  };
  const program = describeProgram(context, print, async (work) => {
    result = await work(context);
  });
  try {
    if (words.length === 0) {
      program.outputHelp();
      return refused({ asIs: printed.text });
    }
    await program.parseAsync(words, { from: "user" });
    return result ?? done({ asIs: printed.text });
  } catch (error) {
    await clearAfterInterruption();
    if (error instanceof CommanderError) {
      return error.exitCode === 0
        ? done({ asIs: printed.text })
        : refused([paragraph(usageProblem(error, words, program, context))]);
    }
    if (error instanceof CommandProblem) return refused(error.lines);
    throw error;
  }
}

/**
 * The whole command line as it is declared. Help and version are handed to `print`; errors are thrown, never printed or
 * ended with. Commands take these settings over, so that they stand first.
 */
function describeProgram(context: CommandContext, print: (text: string) => void, run: Run): Command {
  const { width } = context.answers;
  const program = new Command("warmside")
    .exitOverride()
    .configureHelp({ helpWidth: width })
    .configureOutput({ writeOut: print, writeErr: () => undefined, getOutHelpWidth: () => width })
    .description(
      "Does water condense inside this timber wall, roof or floor, and does it dry out? Reads a project file and " +
        "writes a report with U-values, a verdict for each build-up and what to change, for the builder and for " +
        "building control.",
    )
    .version(version(), "-V, --version", "print the version")
    .helpOption("-h, --help", "print this help")
    .helpCommand("help [command]", "print the help of a command")
    .addHelpText(
      "after",
      "\nExample:\n  warmside assess studio.yaml\nwrites studio-report.html beside the file and prints the short answers.\n",
    )
    .addHelpText("beforeAll", `${harmless(whereFilesAre(context))}\n`)
    .showSuggestionAfterError();
  for (const register of COMMANDS) register(program, run);
  return program;
}

/** A relative path starts at the user's folder; under npm, a file that is not there is looked for in the package. */
function whereFilesAre({ folder, startedIn }: CommandContext): string {
  return `Files are looked for in ${folder}${startedIn === folder ? "" : `, then in ${startedIn}`}`;
}
