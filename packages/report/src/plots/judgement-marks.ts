import type { JudgementWord } from "@warmside/core";
import { PALETTE } from "../palette.ts";

/** Each judgement by a shape, and by the colour it has everywhere on the page, so that it reads without either. */
export const MARKS: Readonly<Record<JudgementWord, { shape: string; colour: string }>> = {
  sound: { shape: "circle", colour: PALETTE.sound.light },
  "sound with conditions": { shape: "square", colour: PALETTE.conditions.light },
  "change it": { shape: "triangle-up", colour: PALETTE.change.light },
  "beyond this method": { shape: "diamond", colour: PALETTE.beyond.light },
};

/**
 * How judgements are marked in a plot: by shape and colour, in one key.
 *
 * @param words - the judgements that occur
 * @returns vega-lite channels `shape`, `fill` and `stroke` over the field `judgement`
 */
export function judgementChannels(words: readonly JudgementWord[]): Record<string, unknown> {
  const domain = (Object.keys(MARKS) as JudgementWord[]).filter((word) => words.includes(word));
  const scale = (of: "shape" | "colour"): object => ({ domain, range: domain.map((word) => MARKS[word][of]) });
  const legend = { columns: 2, symbolSize: 110, symbolStrokeWidth: 1 };
  return {
    shape: { field: "judgement", type: "nominal", scale: scale("shape"), legend },
    fill: { field: "judgement", type: "nominal", scale: scale("colour"), legend },
  };
}
