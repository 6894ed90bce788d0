import { JUDGEMENTS, type JudgementWord } from "@warmside/core";
import { type Html, html, markup } from "../html.ts";
import { MARKS } from "../plots/judgement-marks.ts";

/**
 * The key of a plot's marks: each judgement that occurs with its shape and colour.
 *
 * @param words - the judgements of the marks
 * @returns a line for a caption
 */
export function judgementKey(words: readonly JudgementWord[]): Html {
  const used = JUDGEMENTS.filter((word) => words.includes(word));
  return html`<span class="mark-key">${used.map((word) => html`<span>${shape(word)} ${word}</span>`)}</span>`;
}

function shape(word: JudgementWord): Html {
  return markup(
    `<svg class="mark-shape" viewBox="-6 -6 12 12" width="12" height="12" aria-hidden="true"><path d="${SHAPES[word]}" fill="${MARKS[word].colour}"/></svg>`,
  );
}

/** The plots' shapes, as paths about the middle. */
const SHAPES: Readonly<Record<JudgementWord, string>> = {
  sound: "M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z",
  "sound with conditions": "M-4.5 -4.5h9v9h-9z",
  "change it": "M0 -5L5.5 4.5h-11z",
  "beyond this method": "M0 -6L6 0L0 6L-6 0z",
};
