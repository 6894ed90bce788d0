import type { JudgementWord } from "@warmside/core";
import { PALETTE } from "../palette.ts";
import { type Nominal, nominal } from "./plot.ts";

/** Each judgement has a shape and the colour used everywhere on the page, so that either alone is enough. */
export const MARKS: Readonly<Record<JudgementWord, { shape: string; colour: string }>> = {
  sound: { shape: "circle", colour: PALETTE.sound.light },
  "sound with conditions": { shape: "square", colour: PALETTE.conditions.light },
  "change it": { shape: "triangle-up", colour: PALETTE.change.light },
  "beyond this method": { shape: "diamond", colour: PALETTE.beyond.light },
};

const WORDS = Object.keys(MARKS);

/**
 * How judgements are marked in a plot: by shape and colour. The key stands in the caption.
 *
 * @returns vega-lite channels `shape` and `fill` over the field `judgement`
 */
export function judgementChannels(): Record<"shape" | "fill", Nominal<string>> {
  const marks = Object.values(MARKS);
  return {
    shape: nominal(
      "judgement",
      WORDS,
      marks.map(({ shape }) => shape),
    ),
    fill: nominal(
      "judgement",
      WORDS,
      marks.map(({ colour }) => colour),
    ),
  };
}
