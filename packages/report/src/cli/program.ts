import { Command, CommanderError } from "commander";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done, refused } from "./command-result.ts";
import { COMMANDS } from "./commands.ts";
import { clearAfterInterruption } from "./interruption.ts";
import type { Run } from "./registration.ts";
import { harmless, wrap } from "./terminal.ts";
import { usageProblem } from "./usage-problem.ts";
import { version } from "./version.ts";

/**
 * Reads a command line and does what it asks.
 *
 * @param words - the command line without the program's own name
 * @param context - where the user stands
 * @returns what to print and how to end
 * @throws anything but a problem of what was given: that is a fault of the program
 */
export async function answer(words: readonly string[], context: CommandContext): Promise<CommandResult> {
  let outcome: CommandResult | null = null;
  const program = describeProgram(context, async (work) => {
    outcome = await work(context);
  });
  const printed = catchPrinted(program, context);
  try {
    if (words.length === 0) return refused(program.helpInformation());
    await program.parseAsync(words, { from: "user" });
    return outcome ?? done(printed.text);
  } catch (error) {
    clearAfterInterruption();
    if (error instanceof CommanderError) {
      return error.exitCode === 0
        ? done(printed.text)
        : refused(inWords(usageProblem(error, words, program, context), context));
    }
    if (error instanceof CommandProblem) return refused(inWords(error.message, context));
    throw error;
  }
}

/** What is wrong, for a terminal: words of the command line and names of files may be in it. */
function inWords(message: string, { messages }: CommandContext): string {
  return `${wrap(harmless(message), messages.width)}\n`;
}

/**
 * The whole command line as it is declared: also what the completion scripts are made from.
 *
 * @param context - how wide help is printed
 * @param run - called by the command that was asked for, with its work
 * @returns the program with all its commands
 */
export function describeProgram(context: CommandContext, run: Run): Command {
  const program = new Command("warmside")
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
    .showSuggestionAfterError();
  for (const register of COMMANDS) register(program, run);
  prepare(program, context);
  return program;
}

/** Errors are thrown, never printed or ended with, in this command and all below it. */
function prepare(command: Command, context: CommandContext): void {
  command.exitOverride().configureHelp({ helpWidth: context.answers.width });
  for (const below of command.commands) prepare(below, context);
}

/** Help and version end up in a text; what commander would say about errors is worded anew. */
function catchPrinted(program: Command, context: CommandContext): { text: string } {
  const printed = { text: "" };
  const catchIn = (command: Command): void => {
    command.configureOutput({
      writeOut: (text) => {
        printed.text += text;
      },
      writeErr: () => undefined,
      getOutHelpWidth: () => context.answers.width,
    });
    for (const below of command.commands) catchIn(below);
  };
  catchIn(program);
  return printed;
}
