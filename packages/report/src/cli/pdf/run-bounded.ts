import { type ChildProcess, spawn } from "node:child_process";
import { setTimeout as after } from "node:timers/promises";
import { CommandProblem } from "../command-result.ts";
import { whenInterrupted } from "../interruption.ts";

/** How a program ran. */
export interface Ran {
  /** False when it had to be ended. */
  inTime: boolean;
  /** The end of what it said on standard error. */
  said: string;
}

/** Time between asking a program to end and ending it [ms]. */
const GRACE = 1000;
/** Time for reading the rest of a program's output if its children keep the streams open [ms]. */
const LAST_WORDS = 100;

/**
 * Runs a program and all that it starts for a limited time, whatever it does: its streams are not waited for, and its
 * whole process group is ended.
 *
 * @param program - its path
 * @param words - its arguments
 * @param longest - it is ended after this time [ms]
 * @returns how it ran
 * @throws CommandProblem when it cannot be started
 */
export async function runBounded(program: string, words: readonly string[], longest: number): Promise<Ran> {
  const child = spawn(program, words, { stdio: ["ignore", "ignore", "pipe"], detached: process.platform !== "win32" });
  const forget = whenInterrupted(() => endGroup(child, "SIGKILL"));
  let said = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    said = (said + text).slice(-LONGEST_MESSAGE);
  });
  const ended = new Promise<true>((resolve, reject) => {
    child.once("error", (error) => reject(cannotStart(program, error)));
    child.once("exit", () => resolve(true));
  });
  const closed = new Promise((resolve) => {
    child.once("close", resolve);
  });
  const timer = new AbortController();
  try {
    const inTime = await Promise.race([ended, after(longest, false, { signal: timer.signal })]);
    if (!inTime) {
      endGroup(child, "SIGTERM");
      await Promise.race([ended, after(GRACE, false, { signal: timer.signal })]);
    }
    await Promise.race([closed, after(LAST_WORDS, undefined, { signal: timer.signal })]);
    return { inTime, said };
  } finally {
    timer.abort();
    forget();
    endGroup(child, "SIGKILL");
    child.stderr.destroy();
    child.unref();
  }
}

const LONGEST_MESSAGE = 2000;

/** A signal for a program and all that it has started and that still belongs to it. */
function endGroup({ pid }: ChildProcess, signal: NodeJS.Signals): void {
  try {
    if (pid !== undefined) process.kill(process.platform === "win32" ? pid : -pid, signal);
  } catch {
    // Nothing of it is left.
  }
}

function cannotStart(program: string, error: Error): CommandProblem {
  return new CommandProblem("no-pdf", `${program} could not be started: ${error.message}. Nothing was written.`);
}
