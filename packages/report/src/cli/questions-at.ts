import { createInterface } from "node:readline/promises";
import { CommandProblem } from "./command-result.ts";
import type { Line } from "./lines.ts";
import { type Terminal, textFor } from "./terminal.ts";

/** Shows lines and a prompt to somebody at a terminal; gives what was written. */
export type Ask = (lines: readonly Line[], prompt: string) => Promise<string>;

/** Does work that asks. */
export type Questions = <Given>(work: (ask: Ask) => Promise<Given>) => Promise<Given>;

/**
 * Questions at a terminal, one line each.
 *
 * @param input - what is typed
 * @param terminal - what the questions are shown on, standard output
 * @returns does work that asks; an interruption while it waits is passed on
 */
export function questionsAt(input: NodeJS.ReadStream, terminal: Terminal): Questions {
  return async (work) => {
    const reader = createInterface({ input, output: process.stdout });
    reader.on("SIGINT", () => process.kill(process.pid, "SIGINT"));
    const closed = new Promise<never>((_, reject) => {
      reader.once("close", () => reject(new CommandProblem("no-answer", "No answer was given. Nothing was written.")));
    });
    closed.catch(() => undefined);
    try {
      return await work((lines, prompt) => {
        process.stdout.write(textFor(lines, terminal));
        return Promise.race([reader.question(prompt), closed]);
      });
    } finally {
      reader.close();
    }
  };
}
