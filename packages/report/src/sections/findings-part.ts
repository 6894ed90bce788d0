import type { Finding } from "@warmside/core";
import { missedTarget } from "../heat-target.ts";
import { type Html, html } from "../html.ts";
import { severitySign } from "../signs.ts";
import { withCode } from "../with-code.ts";
import { JUDGEMENT_MEANING, SEVERITY_WORDS, sentence } from "../words.ts";
import { judgementWords } from "./coverage.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The findings, worst first, and the judgement that follows from them. */
export function findingsPart({ buildUp, id }: BuildUpPage): Part {
  const { findings, judgement } = buildUp;
  const missed = missedTarget(buildUp);
  const reasons = new Set(judgement.reasons);
  const order = [...findings].sort((one, other) => RANK[one.severity] - RANK[other.severity]);
  const entries = order.map((finding) => entry(finding, reasons.has(finding.id), id, findings.indexOf(finding) + 1));
  const conditions =
    judgement.conditions.length > 0
      ? html`<h4>It rests on</h4><ul>${judgement.conditions.map((condition) => html`<li>${condition}</li>`)}</ul>`
      : null;
  return {
    key: "findings",
    heading: "Findings and judgement",
    body: html`${findings.length === 0 ? html`<p>No findings.</p>` : html`<ul class="findings">${entries}</ul>`}
<p class="judged">Judgement: ${judgementWords(judgement.word)} (${JUDGEMENT_MEANING[judgement.word]}). ${sentence(judgement.message)}${missed === null ? null : html` <strong>Heat: ${missed}.</strong>`}</p>${conditions}`,
  };
}

const RANK = { fault: 0, caution: 1, note: 2 } as const;

function entry(finding: Finding, isReason: boolean, id: string, number: number): Html {
  return html`<li class="finding ${finding.severity}" id="${id}-finding-${number}">${severitySign(finding.severity)}<div>
<p><strong>${SEVERITY_WORDS[finding.severity]}.</strong> ${withCode(sentence(finding.message))}</p>
${finding.advice ? html`<p class="advice">What to do: ${withCode(sentence(finding.advice))}</p>` : null}
<p class="aside">${isReason ? "A reason for the judgement. " : null}Source: ${finding.source}. <code>${finding.code}</code></p></div></li>`;
}
