import { constants, type Stats, statSync } from "node:fs";
import { resolve } from "node:path";
import type { Folders } from "../command-context.ts";
import { CommandProblem, unreadable } from "../command-result.ts";
import { decodeText } from "./decode-text.ts";
import { fileFault } from "./file-fault.ts";
import { kindOfAddress } from "./kind-of-address.ts";
import { piecesOf, withOpenFile } from "./read-in-pieces.ts";

/** A text file that was read. */
export interface InputFile {
  /** As the reader wrote it. */
  shown: string;
  /** Absolute. */
  path: string;
  text: string;
}

/** Greatest size of a project, table or climate [bytes]; what people write is smaller. */
export const LARGEST_INPUT = 2_000_000;

/**
 * Reads a text file named on the command line, after checking its kind and size.
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
 * Reads a text file at a known place: what is no plain file is refused before it is opened, and never more is read than
 * is allowed, whatever size the file says it has.
 *
 * @param path - absolute
 * @param shown - the path as the reader wrote it
 * @param largest - greatest size [bytes]
 * @returns its text
 * @throws CommandProblem when it is an address, there is no such file, or it is a folder, too large, or no text
 */
export function readTextFile(path: string, shown: string, largest: number = LARGEST_INPUT): string {
  refuseAddress(shown);
  try {
    const stats = statSync(path);
    checkKind(stats, shown);
    if (stats.size > largest) throw tooLarge(shown, largest);
    const bytes = readBounded(path, largest + 1);
    if (bytes.length > largest) throw tooLarge(shown, largest);
    return decodeText(bytes, shown);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw fileFault(error, "read", shown);
    throw unreadable("no-such-file", shown, "there is no such file", "Check its name and folder.");
  }
}

function refuseAddress(shown: string): void {
  const what = kindOfAddress(shown);
  if (what === null) return;
  throw unreadable("web-address", shown, `it is ${what}, and warmside opens none`, "Save the file first.");
}

function checkKind(stats: Stats, shown: string): void {
  if (stats.isDirectory()) throw unreadable("is-a-folder", shown, "it is a folder", "Name a file in it.");
  if (!stats.isFile()) {
    throw unreadable("no-plain-file", shown, "it is not a plain file", "Save what it gives to a file first.");
  }
}

/** The beginning of a file. Some system files claim to be empty but never end, or give nothing until later. */
function readBounded(path: string, most: number): Uint8Array {
  const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);
  return withOpenFile(path, (file) => Buffer.concat([...piecesOf(file, most, null)]), flags);
}

function pathOfInput(shown: string, { folder, startedIn }: Folders): string {
  if (shown === "") throw new CommandProblem("no-name", "The file name is empty. Name a file to read.");
  refuseAddress(shown);
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

function tooLarge(shown: string, largest: number): CommandProblem {
  const cause = `it is larger than the ${inMegabytes(largest)} MB that are read`;
  return unreadable("too-large", shown, cause, "Is it the right file?");
}

const BYTES_PER_MEGABYTE = 1_000_000;

function inMegabytes(bytes: number): number {
  return bytes / BYTES_PER_MEGABYTE;
}
