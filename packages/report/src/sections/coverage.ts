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
  return html`<em class="verdict">${verdict}</em>${verdict === "stays wet" ? null : limit("vapour only")}`;
}

/**
 * A judgement with, beside a sound one, what it does not cover.
 *
 * @param word - the judgement
 * @returns the word, and the limit as a link to what is left out
 */
export function judgementWords(word: JudgementWord): Html {
  return html`<strong class="judgement">${word}</strong>${word.startsWith("sound") ? limit(NOT_COVERED) : null}`;
}

function limit(words: string): Html {
  return html` <a class="limit" href="#left-out">(${words})</a>`;
}
