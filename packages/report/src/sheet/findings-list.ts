import type { BuildUpResult, Finding } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { type Html, html } from "../html.ts";
import { severityIcon } from "../judgement-icons.ts";
import { JUDGEMENT_MEANING, SEVERITY_WORDS, sentence } from "../words.ts";

/**
 * The findings, worst first, each in a sentence with its figures; the annex has them in full.
 *
 * @param buildUp - a build-up of the result
 * @returns the judgement and a list
 */
export function findingsList({ findings, judgement }: BuildUpResult): Html {
  const worst = ordered(findings);
  const order = fitting(worst);
  return html`<h3>Findings</h3><p class="judged">Judgement: <strong>${judgement.word}</strong>, ${JUDGEMENT_MEANING[judgement.word]}.</p>
${order.length === 0 ? null : html`<ul class="findings">${order.map(({ severity, short }) => html`<li class="${severity}">${severityIcon(severity)}<span><strong>${SEVERITY_WORDS[severity]}.</strong> ${backticksAsCode(sentence(short))}</span></li>`)}</ul>`}${order.length < worst.length ? html`<p class="aside">${worst.length - order.length} more in the annex.</p>` : null}`;
}

/** Every fault, and as many of the other findings as fit on the sheet. */
function fitting(worst: readonly Finding[]): Finding[] {
  let lines = 0;
  return worst.filter(({ severity, short }) => {
    lines += Math.ceil(short.length / LINE_LENGTH);
    return severity === "fault" || lines <= MOST_LINES;
  });
}

/** Lines for findings on the back of a sheet, and the characters of one on paper. */
const MOST_LINES = 12;
const LINE_LENGTH = 105;

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
