import { CommandProblem } from "../command-result.ts";

/**
 * A thread that ended before its work was done.
 *
 * @param error - what it ended with, or its exit code
 * @returns what to tell the reader
 */
export function threadLost(error: unknown): CommandProblem {
  const outOfMemory = (error as NodeJS.ErrnoException | null)?.code === "ERR_WORKER_OUT_OF_MEMORY";
  const why = outOfMemory ? "it ran out of memory" : `it ended with ${error instanceof Error ? error.message : error}`;
  return new CommandProblem(
    "thread-lost",
    `A thread of the calculation was lost: ${why}. Nothing was written. Try again with fewer build-ups, samples or workers.`,
    why,
  );
}
