import { randomBytes } from "node:crypto";
import { rmSync } from "node:fs";
import { chmod, link, open, readdir, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { whenInterrupted } from "../interruption.ts";
import { isRunning } from "../is-running.ts";
import { fileFault } from "./file-fault.ts";

/** A file to be written. */
export interface OutputFile {
  /** Absolute. */
  path: string;
  /** As the reader knows it. */
  shown: string;
  content: string | Uint8Array;
  /** What to throw where something stands there by then; without it, it is replaced. */
  isThere?: () => Error;
}

/**
 * Writes files so that each is either unchanged or complete: all are first written beside their places, and renamed only
 * when all are on the disk.
 *
 * @param files - what to write where
 * @throws CommandProblem when there is no room, no permission or no such folder; nothing is changed then
 */
export async function writeWhole(files: readonly OutputFile[]): Promise<void> {
  const beside = files.map((file) => join(dirname(file.path), beginningFor(file.path) + randomEnding()));
  const forget = whenInterrupted(() => {
    for (const path of beside) rmSync(path, { force: true });
  });
  try {
    for (const file of files) await clearLeftovers(file.path);
    for (const [index, file] of files.entries()) await writeBeside(beside[index]!, file);
    await nextTurn();
    for (const [index, file] of files.entries()) await moveIntoPlace(beside[index]!, file);
  } finally {
    forget();
    for (const path of beside) await rm(path, { force: true }).catch(() => undefined);
  }
}

async function writeBeside(beside: string, file: OutputFile): Promise<void> {
  try {
    const handle = await open(beside, "wx");
    try {
      await handle.writeFile(file.content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    const before = await stat(file.path).catch(() => null);
    if (before !== null) await chmod(beside, before.mode & PERMISSION_BITS).catch(() => undefined);
  } catch (error) {
    throw fileFault(error, "written", file.shown);
  }
}

async function moveIntoPlace(beside: string, file: OutputFile): Promise<void> {
  try {
    if (file.isThere === undefined || !(await linkedInto(beside, file.path, file.isThere)))
      await rename(beside, file.path);
  } catch (error) {
    throw fileFault(error, "written", file.shown);
  }
}

/** A link is made only if nothing is there, whatever another command does meanwhile; false on disks without links. */
async function linkedInto(beside: string, path: string, isThere: () => Error): Promise<boolean> {
  try {
    await link(beside, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") throw isThere();
    return false;
  }
}

const PERMISSION_BITS = 0o777;

function beginningFor(path: string): string {
  return `.${basename(path).slice(0, 100)}.`;
}

function randomEnding(): string {
  return `${process.pid}-${randomBytes(4).toString("hex")}.part`;
}

/** Removes what a command that was killed had written beside the same file. */
async function clearLeftovers(path: string): Promise<void> {
  const beginning = beginningFor(path);
  for (const name of await readdir(dirname(path)).catch(() => [])) {
    const [, writer] = name.startsWith(beginning) ? (ENDING.exec(name.slice(beginning.length)) ?? []) : [];
    if (writer !== undefined && !isRunning(Number(writer))) await rm(join(dirname(path), name)).catch(() => undefined);
  }
}

const ENDING = /^(\d+)-[0-9a-f]{8}\.part$/;
