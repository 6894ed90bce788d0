/** The calculation thread: it is asked for steps, and answers with the result, the progress, or the failure. */
import { parentPort } from "node:worker_threads";
import { CommandProblem } from "../command-result.ts";
import { type Calculation, calculationHere, type Step } from "./calculation.ts";

/** A step that is asked for. */
export interface Asked {
  number: number;
  step: keyof Calculation;
  words: readonly unknown[];
}

/** What comes back. */
export type Heard =
  | { step: Step }
  | { number: number; value: unknown }
  | { number: number; problem: { code: string; message: string; why: string } }
  | { number: number; fault: Error };

const say = (heard: Heard): void => parentPort?.postMessage(heard);
const calculation = calculationHere((step) => say({ step }));

parentPort?.on("message", async ({ number, step, words }: Asked) => {
  try {
    const work = calculation[step] as (...words: readonly unknown[]) => Promise<unknown>;
    say({ number, value: await work(...words) });
  } catch (error) {
    if (error instanceof CommandProblem) {
      const { code, message, why } = error;
      say({ number, problem: { code, message, why } });
    } else {
      say({ number, fault: error instanceof Error ? error : new Error(String(error)) });
    }
  }
});
