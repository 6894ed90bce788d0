import { fixed } from "../../numbers.ts";
import { answerOf } from "./answer.ts";
import type { State } from "./state.ts";

/**
 * The answer for screen readers, in a sentence or two.
 *
 * @param state - what is shown
 * @returns the judgement, the verdict and the U-value; that the file has problems where it has
 */
export function answerInWords(state: State): string {
  if (state.text !== state.readable)
    return "The project file has problems. The answer is that of the last readable text.";
  const result = answerOf(state)?.result;
  if (result === undefined) return "";
  const { judgement, moisture, heat } = result;
  const parts = [judgement.word, moisture?.verdict, heat === null ? undefined : `U ${fixed(heat.transmittance, 2)}`];
  return `${result.name}: ${parts.filter((part) => part !== undefined).join(", ")}.`;
}
