import type { CommanderError } from "commander";

/**
 * A command line that cannot be read, in words.
 *
 * @param error - what reading it threw
 * @param words - the command line
 * @returns what is wrong and where to look
 */
export function usageProblem(error: CommanderError, words: readonly string[]): string {
  const named = /'([^']*)'/.exec(error.message)?.[1] ?? "";
  const near = /Did you mean (?:one of )?(.+?)\?\)/s.exec(error.message)?.[1];
  const command = words.find((word) => !word.startsWith("-"));
  const help =
    command === undefined || error.code === "commander.unknownCommand"
      ? "warmside --help"
      : `warmside ${command} --help`;
  const offer = near === undefined ? "" : ` Did you mean ${near}?`;
  return `${SENTENCES[error.code]?.(named) ?? plain(error.message)}${offer} See ${help}.`;
}

const SENTENCES: Readonly<Record<string, (named: string) => string>> = {
  "commander.unknownCommand": (named) => `There is no command "${named}".`,
  "commander.unknownOption": (named) => `There is no option ${named} here.`,
  "commander.missingArgument": (named) => `Something is missing: ${named.toUpperCase()}.`,
  "commander.optionMissingArgument": (named) => `Something is missing after ${named}.`,
  "commander.excessArguments": () => "There are more words than this command takes.",
};

function plain(message: string): string {
  const sentence = message.replace(/^error: /, "").replace(/\s*\(Did you mean.*$/s, "");
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}${/[.?!]$/.test(sentence) ? "" : "."}`;
}
