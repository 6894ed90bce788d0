import type { JudgementWord, VerdictWord } from "@warmside/core";
import { type Html, html } from "./html.ts";

/**
 * A verdict in a cell of a table.
 *
 * @param verdict - the verdict
 * @returns the word
 */
export function verdictCell(verdict: VerdictWord): Html {
  return html`<em class="verdict">${verdict}</em>`;
}

/**
 * A judgement in a cell of a table.
 *
 * @param word - the judgement
 * @returns the word
 */
export function judgementCell(word: JudgementWord): Html {
  return html`<strong class="judgement">${word}</strong>`;
}

/** What the verdicts and judgements of a table do not cover, once below it. */
export const COVERED_BY_TABLE: Html = html`<p class="aside">“Dry”, “dries out” and “sound” cover <a href="#left-out">vapour diffusion only</a>.</p>`;
