#!/usr/bin/env node
/** The command: reads the command line, prints what it came to, and ends. */

import { writeSync } from "node:fs";
import { setTimeout as after } from "node:timers/promises";
import { type CommandContext, contextOf } from "./command-context.ts";
import { faultOfProgram } from "./fault-of-program.ts";
import { clearAfterInterruption } from "./interruption.ts";
import { line } from "./lines.ts";
import { type Answer, answer } from "./program.ts";
import { textFor } from "./terminal.ts";

/** Signals that end the command, with their exit codes: 128 plus the signal's number, as in shells. */
const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
const FAULT_OF_PROGRAM = 2;
/** Node's own code when nothing is left to do and the work is not finished. */
const NEVER_SETTLED = 13;
/** Longest wait for the message after an interruption [ms]. */
const LONGEST_FAREWELL = 2000;

const STANDARD_ERROR = 2;
const context = contextWhereStarted();

// A reader that has gone is not a fault: each write reports itself what could not be written.
process.stdout.on("error", () => undefined);
process.stderr.on("error", () => undefined);
for (const [signal, exit] of Object.entries(SIGNALS)) process.on(signal, () => void endInterrupted(exit));
process.on("uncaughtException", endWithFault);
process.on("unhandledRejection", endWithFault);
process.on("exit", (code) => {
  if (code !== NEVER_SETTLED) return;
  tell(faultOfProgram(new Error("it stopped before it was done"), process.env));
  process.exitCode = FAULT_OF_PROGRAM;
});

try {
  process.exitCode = await print(await answer(process.argv.slice(2), context));
} catch (error) {
  endWithFault(error);
}

/** Where the command stands; a folder that was removed meanwhile is no place to stand. */
function contextWhereStarted(): CommandContext {
  try {
    return contextOf(process);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall !== "uv_cwd") throw error;
    writeSync(STANDARD_ERROR, "The folder you are in is no longer there. Change to another one.\n");
    process.exit(1);
  }
}

/** Prints on both streams; a reader that stops reading early is no fault, a full disk behind a stream is told. */
async function print({ exit, answer, messages }: Answer): Promise<number> {
  await write(process.stderr, messages);
  const fault = await write(process.stdout, answer);
  if (fault === null || fault.code === "EPIPE") return exit;
  tell([line(`Output is incomplete: the system says ${fault.code ?? fault.message}.`)]);
  return 1;
}

function write(stream: NodeJS.WriteStream, text: string): Promise<NodeJS.ErrnoException | null> {
  if (text === "") return Promise.resolve(null);
  return new Promise((resolve) => {
    stream.write(text, (error) => resolve(error ?? null));
  });
}

/** Prints a message at once, without waiting: the command is about to end. */
function tell(lines: Parameters<typeof textFor>[0]): void {
  try {
    writeSync(STANDARD_ERROR, textFor(lines, context.messages));
  } catch {
    // Nobody is left to be told.
  }
}

let interrupted = false;

/** The first signal ends the command tidily, a second one at once. */
async function endInterrupted(exit: number): Promise<void> {
  if (interrupted) process.exit(exit);
  interrupted = true;
  const cleared = clearAfterInterruption();
  tell([line(), line("Interrupted. Existing files are unchanged.")]);
  await Promise.race([cleared, after(LONGEST_FAREWELL)]);
  process.exit(exit);
}

function endWithFault(error: unknown): void {
  if (interrupted) return;
  void clearAfterInterruption();
  tell(faultOfProgram(error, process.env));
  process.exit(FAULT_OF_PROGRAM);
}
