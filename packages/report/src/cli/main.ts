#!/usr/bin/env node

/** The command: reads the command line, prints what it came to, and ends. */

import { contextOf } from "./command-context.ts";
import type { CommandResult } from "./command-result.ts";
import { faultOfProgram } from "./fault-of-program.ts";
import { clearAfterInterruption } from "./interruption.ts";
import { answer } from "./program.ts";

const INTERRUPTED = 130;
const FAULT_OF_PROGRAM = 2;
/** Node's own code when nothing is left to do and the work is not finished. */
const NEVER_SETTLED = 13;

process.on("SIGINT", () => {
  clearAfterInterruption();
  process.stderr.write("\nInterrupted. What was there before is as it was.\n");
  process.exit(INTERRUPTED);
});
process.on("uncaughtException", endWithFault);
process.on("unhandledRejection", endWithFault);
process.on("exit", (code) => {
  if (code !== NEVER_SETTLED) return;
  process.stderr.write(faultOfProgram(new Error("it stopped before it was done"), process.env));
  process.exitCode = FAULT_OF_PROGRAM;
});

try {
  const outcome = await answer(process.argv.slice(2), contextOf(process));
  process.exitCode = await print(outcome);
} catch (error) {
  endWithFault(error);
}

/** Prints on both streams; a reader that stops reading early is no fault, a full disk behind a stream is told. */
async function print(outcome: CommandResult): Promise<number> {
  await write(process.stderr, outcome.messages);
  const fault = await write(process.stdout, outcome.answer);
  if (fault === null || fault.code === "EPIPE") return outcome.exit;
  await write(
    process.stderr,
    `The answer could not be printed whole: the system says ${fault.code ?? fault.message}.\n`,
  );
  return 1;
}

function write(stream: NodeJS.WriteStream, text: string): Promise<NodeJS.ErrnoException | null> {
  if (text === "") return Promise.resolve(null);
  return new Promise((resolve) => {
    stream.once("error", resolve);
    stream.write(text, (error) => resolve(error ?? null));
  });
}

function endWithFault(error: unknown): never {
  clearAfterInterruption();
  process.stderr.write(faultOfProgram(error, process.env));
  process.exit(FAULT_OF_PROGRAM);
}
