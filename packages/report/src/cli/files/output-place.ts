import { fstatSync, readlinkSync, realpathSync, type Stats, statSync } from "node:fs";
import { basename, dirname, extname, join, relative, resolve } from "node:path";
import type { CommandContext } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";
import { isChangedByHand } from "./changed-by-hand.ts";
import { fileFault } from "./file-fault.ts";
import { kindOfAddress } from "./kind-of-address.ts";
import { piecesOf, withOpenFile } from "./read-in-pieces.ts";

/** Where an output file goes. */
export interface OutputPlace {
  /** Absolute, links followed. */
  path: string;
  /** As the reader knows it: from where the user stands, when that is shorter. */
  shown: string;
}

/** How to know a file that warmside made, so that it may be written over: by its beginning or by its end. */
export interface OwnMark {
  where: "beginning" | "end";
  text: string;
  /** True where the fingerprint of the file stands at its end. */
  fingerprinted?: true;
}

/**
 * The place of a file beside the project file: NAME-report.html for NAME.yaml.
 *
 * @param input - absolute path of the project file
 * @param ending - such as `-report.html`
 * @returns an absolute path
 * @example besideInput("/site/studio.yaml", "-report.html") // "/site/studio-report.html"
 */
export function besideInput(input: string, ending: string): string {
  return join(dirname(input), basename(input, extname(input)) + ending);
}

/**
 * Makes sure that a file may be written, before any work is done for it.
 *
 * @param wanted - the path; relative ones start where the user stands
 * @param named - true when the reader named it: then a file that warmside did not make may be written over
 * @param mark - how to know a file that warmside made
 * @param inputs - absolute paths of the files that were read; none of them is ever written over
 * @param context - where the user stands
 * @returns the place
 * @throws CommandProblem when it must not be written
 */
export function outputPlace(
  wanted: string,
  named: boolean,
  mark: OwnMark,
  inputs: readonly string[],
  context: CommandContext,
): OutputPlace {
  if (wanted === "" || wanted.includes("\0")) {
    throw new CommandProblem("no-name", "The name after --out is empty or impossible. Name a file.");
  }
  const address = kindOfAddress(wanted);
  if (address !== null) {
    throw new CommandProblem(
      "web-address",
      `${wanted} is ${address}, and warmside opens none. Name a file on this machine.`,
    );
  }
  const path = linksFollowed(resolve(context.folder, wanted));
  const shown = named ? wanted : fromWhereUserStands(path, context);
  if (/[/\\]$/.test(wanted))
    throw new CommandProblem("is-a-folder", `${shown} names a folder. Add the name of a file.`);
  const there = statIfThere(path, shown);
  if (there === null) {
    checkFolder(dirname(path), shown);
    return { path, shown };
  }
  if (there.isDirectory()) {
    throw new CommandProblem("is-a-folder", `${shown} is a folder. Add the name of a file.`);
  }
  if (!there.isFile()) {
    throw new CommandProblem("no-plain-file", `${shown} is not a plain file. Name another place for the report.`);
  }
  if (inputs.some((input) => isSameFile(input, there))) {
    throw new CommandProblem("output-over-input", `${shown} is one of the input files. Name another file with --out.`);
  }
  if ((there.mode & MAY_BE_WRITTEN) === 0) {
    throw new CommandProblem("read-only", `${shown} is read-only. Make it writable, or name another place with --out.`);
  }
  if (!named) checkOwn(path, shown, mark);
  return { path, shown };
}

/** Permission to write, for anyone. */
const MAY_BE_WRITTEN = 0o222;

/** A file that the user did not name is overwritten only if warmside wrote it and nobody has changed it since. */
function checkOwn(path: string, shown: string, mark: OwnMark): void {
  const there = `${shown} is there already and was`;
  const advice = "Move it away, or name the place to write with --out.";
  try {
    if (!bears(path, mark))
      throw new CommandProblem("not-made-by-warmside", `${there} not made by warmside. ${advice}`);
    if (mark.fingerprinted === true && isChangedByHand(path))
      throw new CommandProblem(
        "changed-by-hand",
        `${there} changed since warmside wrote it, or written by an earlier version. ${advice}`,
      );
  } catch (error) {
    throw fileFault(error, "read", shown);
  }
}

/** Whether a file has the mark of what warmside makes. */
function bears(path: string, { where, text }: OwnMark): boolean {
  return withOpenFile(path, (file) => {
    const start = where === "beginning" ? 0 : Math.max(0, fstatSync(file).size - LOOKED_AT);
    return Buffer.concat([...piecesOf(file, LOOKED_AT, start)]).includes(text);
  });
}

/** How much of a file is looked at for our mark [bytes]. */
const LOOKED_AT = 2048;

function fromWhereUserStands(path: string, context: CommandContext): string {
  const short = relative(context.folder, path);
  return short !== "" && !short.startsWith("..") ? short : path;
}

/** A link that leads nowhere or in a circle is refused: it would be replaced itself, which may not be meant. */
function linksFollowed(path: string): string {
  try {
    return realpathSync(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ELOOP") throw fileFault(error, "written", path);
    const end = endOfLink(path);
    if (end === null) return path;
    throw new CommandProblem(
      "dangling-link",
      `${path} is a link to ${end}, which is not there. Remove the link, or name another place with --out.`,
    );
  }
}

/** Where a link leads; null for what is none. */
function endOfLink(path: string): string | null {
  try {
    return readlinkSync(path);
  } catch {
    return null;
  }
}

function statIfThere(path: string, shown: string): Stats | null {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch (error) {
    throw fileFault(error, "written", shown);
  }
}

function checkFolder(folder: string, shown: string): void {
  const stats = statIfThere(folder, shown);
  if (stats === null) {
    throw new CommandProblem(
      "no-such-folder",
      `${shown} could not be written: there is no folder ${folder}. Make it first.`,
    );
  }
  if (!stats.isDirectory()) {
    throw new CommandProblem("no-such-folder", `${shown} could not be written: ${folder} is a file, not a folder.`);
  }
}

function isSameFile(input: string, output: Stats): boolean {
  const stats = statSync(input, { throwIfNoEntry: false });
  return stats !== undefined && stats.dev === output.dev && stats.ino === output.ino;
}
