import { version } from "../version.ts";
import { type Line, line } from "./lines.ts";

/**
 * The message for a fault of the program itself: short, with what a report of it should contain.
 *
 * @param error - what was thrown
 * @param environment - WARMSIDE_DEBUG (any text) adds where in the program it happened
 * @returns lines for standard error
 */
export function faultOfProgram(error: unknown, environment: Readonly<Record<string, string | undefined>>): Line[] {
  const message = error instanceof Error ? error.message : String(error);
  const firstLine = message.split("\n")[0]!.slice(0, LONGEST_MESSAGE);
  const sentences = [
    `This is a fault of warmside, not of your file: ${firstLine}`,
    `Please report it with this line, your command, the project file and the version, ${version()}.`,
    "Existing files are unchanged.",
  ];
  const stack = environment.WARMSIDE_DEBUG && error instanceof Error ? (error.stack ?? "").split("\n") : [];
  return [...sentences, ...(stack.length > 0 ? ["", ...stack] : [])].map((sentence) => line(sentence));
}

const LONGEST_MESSAGE = 300;
