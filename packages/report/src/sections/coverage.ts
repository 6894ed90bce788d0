import type { JudgementWord, VerdictWord } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { NOT_COVERED } from "../words.ts";

/**
 * A verdict with, beside a dry one, what it does not cover.
 *
 * @param verdict - the verdict
 * @returns the word, and the limit as a link to what is left out
 */
export function verdictWords(verdict: VerdictWord): Html {
  return html`<em class="verdict">${verdict}</em>${verdict === "stays wet" ? null : limit(VAPOUR_ONLY)}`;
}

/**
 * A judgement with, beside a sound one, what it does not cover.
 *
 * @param word - the judgement
 * @param room - how much room there is for the limit
 * @returns the word, and the limit as a link to what is left out
 */
export function judgementWords(word: JudgementWord, room: "sentence" | "cell" = "sentence"): Html {
  const words = room === "cell" ? VAPOUR_ONLY : NOT_COVERED;
  return html`<strong class="judgement">${word}</strong>${word.startsWith("sound") ? limit(words) : null}`;
}

/** The limit where there is little room. */
const VAPOUR_ONLY = "vapour only";

function limit(words: string): Html {
  return html` <a class="limit" href="#left-out">(${words})</a>`;
}
