import type { Argument, Command, Option } from "commander";

/** A place on the command line, and what can be typed there. */
export interface TypedPlace {
  /** The commands before it: "", "assess", "climate make". */
  path: string;
  /** Commands, options and words to choose from. */
  words: string[];
  /** True where a file may stand. */
  takesFile: boolean;
  /** Options that take a value: the words to choose from, or null for a file. */
  valued: { flag: string; choices: readonly string[] | null }[];
}

/**
 * Every place on the command line, read off the program as it is declared.
 *
 * @param command - the program, or one of its commands
 * @param path - the commands before it
 * @returns the command's own place, then those of the commands below it
 */
export function typedPlaces(command: Command, path = ""): TypedPlace[] {
  const help = command.createHelp();
  const options = help.visibleOptions(command);
  const below = help.visibleCommands(command);
  const own: TypedPlace = {
    path,
    words: [
      ...below.map((inner) => inner.name()),
      ...command.registeredArguments.flatMap(({ argChoices }) => argChoices ?? []),
      ...options.map(flagOf),
    ],
    takesFile: command.registeredArguments.some(isFile),
    valued: options.filter(takesValue).map((option) => ({ flag: flagOf(option), choices: option.argChoices ?? null })),
  };
  return [own, ...below.flatMap((inner) => typedPlaces(inner, `${path} ${inner.name()}`.trim()))];
}

function flagOf(option: Option): string {
  return option.long ?? option.short ?? "";
}

function takesValue(option: Option): boolean {
  return option.required || option.optional;
}

function isFile(argument: Argument): boolean {
  return argument.name() === "file";
}
