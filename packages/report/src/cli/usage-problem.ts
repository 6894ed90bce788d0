import type { CommanderError } from "commander";

/**
 * A command line that cannot be read, in words.
 *
 * @param error - what reading it threw
 * @param words - the command line
 * @returns what is wrong and where to look
 */
export function usageProblem(error: CommanderError, words: readonly string[]): string {
  const commands = words.filter((word) => !word.startsWith("-"));
  const isUnknown = error.code === "commander.unknownCommand" || error.code === "commander.help";
  const help = commands[0] === undefined || isUnknown ? "warmside --help" : `warmside ${commands[0]} --help`;
  const near = /Did you mean (?:one of )?(.+?)\?\)/s.exec(error.message)?.[1];
  const offer = near === undefined ? "" : ` Did you mean ${near}?`;
  return `${sentenceFor(error, commands)}${offer} See ${help}.`;
}

function sentenceFor(error: CommanderError, commands: readonly string[]): string {
  const named = /'([^']*)'/.exec(error.message)?.[1] ?? "";
  switch (error.code) {
    case "commander.unknownCommand":
      return `There is no command "${named}".`;
    case "commander.help":
      return `There is no command "${commands.at(-1) ?? ""}".`;
    case "commander.unknownOption":
      return `There is no option ${named} here.`;
    case "commander.missingArgument":
      return `The ${named.toUpperCase()} is missing.`;
    case "commander.optionMissingArgument":
      return `Something is missing after ${named.replace(/ <.*>$/, "")}.`;
    case "commander.excessArguments":
      return "There are more words than this command takes. A name with spaces in it stands between quotation marks.";
    case "commander.invalidArgument":
      return choiceMissed(error.message) ?? plain(error.message);
    default:
      return plain(error.message);
  }
}

/** Commander tells which word was none of the choices, and the choices. */
function choiceMissed(message: string): string | null {
  const [, word, choices] =
    /(?:argument|value) '([^']*)' is invalid.*Allowed choices are (.*)\./.exec(message.replaceAll("\n", " ")) ?? [];
  return word === undefined || choices === undefined ? null : `"${word}" is none of the choices, which are ${choices}.`;
}

function plain(message: string): string {
  const sentence = message.replace(/^error: /, "").replace(/\s*\(Did you mean.*$/s, "");
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}${/[.?!]$/.test(sentence) ? "" : "."}`;
}
