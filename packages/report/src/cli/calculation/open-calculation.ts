import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { CommandProblem } from "../command-result.ts";
import { type Calculation, calculationHere, type Step } from "./calculation.ts";
import type { Asked, Heard } from "./calculation-thread.ts";
import { threadLost } from "./thread-lost.ts";

/** Where the bundle puts the thread's code: beside the command. */
const THREAD_FILE = fileURLToPath(new URL("./calculation-thread.mjs", import.meta.url));

/**
 * Does work with a calculation on a thread of its own, or in this thread if the code of the other is not beside this file,
 * as when the command runs from its sources.
 *
 * @param tell - called as the calculation goes on
 * @param work - what is asked of the calculation
 * @param file - the thread's code
 * @returns what the work gives; the thread has ended then
 * @throws CommandProblem when the thread ended before its work was done, and what the calculation throws
 */
export async function withCalculation<Given>(
  tell: (step: Step) => void,
  work: (calculation: Calculation) => Promise<Given>,
  file: string = THREAD_FILE,
): Promise<Given> {
  if (!existsSync(file)) return await work(calculationHere(tell));
  const thread = new Worker(file);
  try {
    return await work(calculationOn(thread, tell));
  } finally {
    await thread.terminate();
  }
}

interface Waiting {
  resolve(value: unknown): void;
  reject(error: unknown): void;
}

function calculationOn(thread: Worker, tell: (step: Step) => void): Calculation {
  const waiting = new Map<number, Waiting>();
  let number = 0;
  let lost: CommandProblem | null = null;
  thread.on("message", (heard: Heard) => {
    if ("step" in heard) return tell(heard.step);
    const { resolve, reject } = waiting.get(heard.number)!;
    waiting.delete(heard.number);
    if ("value" in heard) return resolve(heard.value);
    reject("fault" in heard ? heard.fault : commandProblem(heard.problem));
  });
  const lose = (error: unknown): void => {
    lost ??= threadLost(error);
    for (const { reject } of waiting.values()) reject(lost);
  };
  thread.on("error", lose);
  thread.on("exit", lose);
  const ask = (step: keyof Calculation, ...words: readonly unknown[]): Promise<never> =>
    new Promise((resolve, reject) => {
      if (lost !== null) return reject(lost);
      number += 1;
      waiting.set(number, { resolve: resolve as Waiting["resolve"], reject });
      thread.postMessage({ number, step, words } satisfies Asked);
    });
  return {
    read: (...words) => ask("read", ...words),
    workOut: (...words) => ask("workOut", ...words),
    render: (...words) => ask("render", ...words),
    soFar: () => ask("soFar"),
  };
}

function commandProblem({ code, message, why }: { code: string; message: string; why: string }): CommandProblem {
  return new CommandProblem(code, message, why);
}
