import type { BuildUpResult, JudgementWord, VerdictWord } from "@warmside/core";
import { missedTarget } from "../heat-target.ts";
import { type Html, html } from "../html.ts";
import { NOT_COVERED } from "../words.ts";

/**
 * A verdict with, beside a dry one, what it does not cover.
 *
 * @param verdict - the verdict
 * @returns the word, and the limit as a link to what is left out
 */
export function verdictWords(verdict: VerdictWord): Html {
  return html`${verdictCell(verdict)}${verdict === "stays wet" ? null : limit(VAPOUR_ONLY)}`;
}

/**
 * A verdict in a cell of a table, below which `COVERED_BY_TABLE` stands.
 *
 * @param verdict - the verdict
 * @returns the word
 */
export function verdictCell(verdict: VerdictWord): Html {
  return html`<em class="verdict">${verdict}</em>`;
}

/**
 * A judgement in a cell of a table, below which `COVERED_BY_TABLE` stands.
 *
 * @param word - the judgement
 * @returns the word
 */
export function judgementCell(word: JudgementWord): Html {
  return html`<strong class="judgement">${word}</strong>`;
}

/** What the verdicts and judgements of a table do not cover, once below it. */
export const COVERED_BY_TABLE: Html = html`<p class="covers">“Dry”, “dries out” and “sound” speak of <a class="limit" href="#left-out">${NOT_COVERED}</a>.</p>`;

/**
 * A judgement with, beside a sound one, what it does not cover.
 *
 * @param word - the judgement
 * @param room - how much room there is for the limit
 * @returns the word, and the limit as a link to what is left out
 */
export function judgementWords(word: JudgementWord, room: "sentence" | "cell" = "sentence"): Html {
  const words = room === "cell" ? VAPOUR_ONLY : NOT_COVERED;
  return html`${judgementCell(word)}${word.startsWith("sound") ? limit(words) : null}`;
}

/**
 * A judgement, which speaks of moisture alone, beside what must not be read into it: a target of heat that is missed.
 *
 * @param buildUp - a build-up of the result
 * @param room - how much room there is for what a sound one does not cover
 * @returns the judgement, or "Moisture: … Heat: misses its target, 0.26 against 0.20"
 */
export function judgementBesideHeat(buildUp: BuildUpResult, room: "sentence" | "cell" = "sentence"): Html {
  const judgement = judgementWords(buildUp.judgement.word, room);
  const missed = missedTarget(buildUp);
  return missed === null ? judgement : html`Moisture: ${judgement}. Heat: <strong>${missed}</strong>`;
}

/** The limit where there is little room. */
const VAPOUR_ONLY = "vapour only";

function limit(words: string): Html {
  return html` <a class="limit" href="#left-out">(${words})</a>`;
}
