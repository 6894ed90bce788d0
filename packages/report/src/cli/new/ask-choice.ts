import { type Line, line, paragraph } from "../lines.ts";
import type { Ask } from "../questions-at.ts";

/** One of several answers. */
export interface Choice<Value> {
  words: string;
  value: Value;
}

/**
 * Asks a question with several answers until one of them is chosen, by its number or its beginning.
 *
 * @param ask - who is asked
 * @param question - a sentence
 * @param choices - the answers; Enter alone takes the first
 * @returns the value of the chosen answer
 */
export async function askChoice<Value>(
  ask: Ask,
  question: string,
  choices: readonly [Choice<Value>, ...Choice<Value>[]],
): Promise<Value> {
  const list = choices.map(({ words }, place) => line(`  ${place + 1}  ${words}`));
  let lines: readonly Line[] = [line(), paragraph(question), ...list];
  for (;;) {
    const written = (await ask(lines, "Number [1]: ")).trim().toLowerCase();
    const chosen = written === "" ? choices[0] : (choices[Number(written) - 1] ?? onlyOne(choices, written));
    if (chosen !== undefined) return chosen.value;
    lines = [paragraph(`Write a number from 1 to ${choices.length}.`)];
  }
}

function onlyOne<Value>(choices: readonly Choice<Value>[], written: string): Choice<Value> | undefined {
  const found = choices.filter(({ words }) => words.toLowerCase().startsWith(written));
  return found.length === 1 ? found[0] : undefined;
}
