import type { Finding } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { type Html, html } from "../html.ts";
import { severityIcon } from "../judgement-icons.ts";
import { ordered } from "../sheet/findings-list.ts";
import { SEVERITY_WORDS, sentence } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** Every finding in full, worst first, with what to do and its source. */
export function findingsPart({ buildUp }: AnnexOf): Part | null {
  const { findings, judgement } = buildUp;
  if (findings.length === 0) return null;
  const reasons = new Set(judgement.reasons);
  return {
    heading: "Findings in full",
    body: html`<ul class="findings">${ordered(findings).map((finding) => entry(finding, reasons.has(finding.id)))}</ul>`,
  };
}

function entry(finding: Finding, isReason: boolean): Html {
  return html`<li class="${finding.severity}">${severityIcon(finding.severity)}<span><strong>${SEVERITY_WORDS[finding.severity]}.</strong> ${backticksAsCode(sentence(finding.message))}${finding.advice ? html` <em>What to do:</em> ${backticksAsCode(sentence(finding.advice))}` : null} <span class="aside">${isReason ? "A reason for the judgement. " : null}Source: ${finding.source}. <code>${finding.code}</code></span></span></li>`;
}
