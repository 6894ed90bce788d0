import { statSync } from "node:fs";
import { resolve } from "node:path";
import type { Command, CommanderError } from "commander";
import type { CommandContext } from "./command-context.ts";

/**
 * A command line that cannot be read, in words.
 *
 * @param error - what reading it threw
 * @param words - the command line
 * @param program - the commands there are
 * @param context - where relative paths start
 * @returns what is wrong and where to look
 */
export function usageProblem(
  error: CommanderError,
  words: readonly string[],
  program: Command,
  context: CommandContext,
): string {
  const commands = words.filter((word) => !word.startsWith("-"));
  const [first = ""] = commands;
  if (error.code === "commander.unknownCommand" && namesFile(first, context)) {
    return `There is no command "${first}". Write: warmside assess ${asTyped(first)}`;
  }
  const near = /Did you mean (?:one of )?(.+?)\?\)/s.exec(error.message)?.[1];
  const offer = near === undefined ? "" : ` Did you mean ${near}?`;
  return `${sentenceFor(error, commands)}${offer} See ${["warmside", ...pathOf(commands, program)].join(" ")} --help.`;
}

/** The command that was meant, under those it stands below: "climate", "near". */
function pathOf([word, ...rest]: readonly string[], { commands }: Command): string[] {
  const command = commands.find((one) => one.name() === word);
  return command === undefined ? [] : [command.name(), ...pathOf(rest, command)];
}

function namesFile(word: string, { folder }: CommandContext): boolean {
  if (/\.(ya?ml|json)$/i.test(word)) return true;
  try {
    return statSync(resolve(folder, word), { throwIfNoEntry: false })?.isFile() === true;
  } catch {
    return false;
  }
}

/** A name as a shell takes it for one word. */
function asTyped(name: string): string {
  return /\s/.test(name) ? `"${name}"` : name;
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
      return "Too many arguments. Put a name with spaces in quotation marks.";
    case "commander.invalidArgument":
      return choiceMissed(error.message) ?? plain(error.message);
    default:
      return plain(error.message);
  }
}

/** Commander's message holds the rejected word and the choices. */
function choiceMissed(message: string): string | null {
  const [, word, choices] =
    /(?:argument|value) '([^']*)' is invalid.*Allowed choices are (.*)\./.exec(message.replaceAll("\n", " ")) ?? [];
  return word === undefined || choices === undefined ? null : `"${word}" is not one of ${choices}.`;
}

function plain(message: string): string {
  const sentence = message.replace(/^error: /, "").replace(/\s*\(Did you mean.*$/s, "");
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}${/[.?!]$/.test(sentence) ? "" : "."}`;
}
