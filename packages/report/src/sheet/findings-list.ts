import type { BuildUpResult, Finding } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { severitySign } from "../signs.ts";
import { withCode } from "../with-code.ts";
import { JUDGEMENT_MEANING, SEVERITY_WORDS, sentence } from "../words.ts";

/**
 * What was found, worst first, in a sentence each with its figures; the annex has the whole of it.
 *
 * @param buildUp - a build-up of the result
 * @returns the judgement and a list
 */
export function findingsList({ findings, judgement }: BuildUpResult): Html {
  const worst = ordered(findings);
  const notes = worst.filter(({ severity }) => severity === "note").slice(0, MOST_NOTES);
  const order = worst.filter((finding) => finding.severity !== "note" || notes.includes(finding));
  return html`<h3>Findings</h3><p class="judged">Judgement: <strong>${judgement.word}</strong>, ${JUDGEMENT_MEANING[judgement.word]}.</p>
${order.length === 0 ? null : html`<ul class="findings">${order.map(({ severity, short }) => html`<li class="${severity}">${severitySign(severity)}<span><strong>${SEVERITY_WORDS[severity]}.</strong> ${withCode(sentence(short))}</span></li>`)}</ul>`}`;
}

/** Faults and cautions all stand on the sheet; of the notes so many, the others in the annex. */
const MOST_NOTES = 3;

/**
 * Findings, worst first.
 *
 * @param findings - of a build-up
 * @returns a copy
 */
export function ordered(findings: readonly Finding[]): Finding[] {
  return [...findings].sort((one, other) => RANK[one.severity] - RANK[other.severity]);
}

const RANK = { fault: 0, caution: 1, note: 2 } as const;
