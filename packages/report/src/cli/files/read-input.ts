import { readFileSync, type Stats, statSync } from "node:fs";
import { resolve } from "node:path";
import type { Folders } from "../command-context.ts";
import { CommandProblem, unreadable } from "../command-result.ts";
import { decodeText } from "./decode-text.ts";
import { fileFault } from "./file-fault.ts";

/** A text file that was read. */
export interface InputFile {
  /** As the reader wrote it. */
  shown: string;
  /** Absolute. */
  path: string;
  text: string;
}

/** No project, table or climate that a person wrote is larger [bytes]. */
export const LARGEST_INPUT = 2_000_000;

/**
 * Reads a text file named on the command line, once its kind and size are known to be fit.
 *
 * @param shown - the path as written, taken from where the user stands, or else from where the command was started
 * @param folders - where relative paths start
 * @param largest - greatest size [bytes]; a larger file is refused before it is read
 * @returns the file with its text
 * @throws CommandProblem when there is no such file, or it is a folder, too large, or no text
 */
export function readInput(shown: string, folders: Folders, largest: number = LARGEST_INPUT): InputFile {
  const path = pathOfInput(shown, folders);
  return { shown, path, text: readTextFile(path, shown, largest) };
}

/**
 * Reads a text file at a known place, once its kind and size are known to be fit.
 *
 * @param path - absolute
 * @param shown - the path as the reader knows it
 * @param largest - greatest size [bytes]; a larger file is refused before it is read
 * @returns its text
 * @throws CommandProblem when there is no such file, or it is a folder, too large, or no text
 */
export function readTextFile(path: string, shown: string, largest: number = LARGEST_INPUT): string {
  try {
    checkKindAndSize(statSync(path), shown, largest);
    return decodeText(readFileSync(path), shown);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw fileFault(error, "read", shown);
    throw unreadable("no-such-file", shown, "there is no such file", "Look at its name and its folder.");
  }
}

/** Refuses what is no plain file, or larger than anything a person would write. */
function checkKindAndSize(stats: Stats, shown: string, largest: number): void {
  if (stats.isDirectory()) throw unreadable("is-a-folder", shown, "it is a folder", "Name a file in it.");
  if (!stats.isFile()) {
    throw unreadable("no-plain-file", shown, "it is not a plain file", "Save what it gives to a file first.");
  }
  if (stats.size > largest) {
    const cause = `it is larger than the ${inMegabytes(largest)} MB that are read`;
    throw unreadable("too-large", shown, cause, "Is it the right file?");
  }
}

function pathOfInput(shown: string, { folder, startedIn }: Folders): string {
  if (shown === "") throw new CommandProblem("no-name", "The name of the file is empty. Write which file to read.");
  if (/^[a-z]{2,}:\/\//i.test(shown)) {
    throw unreadable("web-address", shown, "it is a web address, and warmside opens none", "Save the file first.");
  }
  const fromUser = resolve(folder, shown);
  const fromStart = resolve(startedIn, shown);
  return isThere(fromUser) || !isThere(fromStart) ? fromUser : fromStart;
}

function isThere(path: string): boolean {
  try {
    return statSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch {
    return false;
  }
}

const BYTES_PER_MEGABYTE = 1_000_000;

function inMegabytes(bytes: number): number {
  return bytes / BYTES_PER_MEGABYTE;
}
