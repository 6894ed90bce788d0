import type { BuildUpResult, ProjectResult } from "@warmside/core";
import { targetWords } from "../heat-target.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { governingView } from "../section-view.ts";
import { CLASSES, judgementSign } from "../signs.ts";
import { waterHeadline } from "../water-headline.ts";
import { ELEMENT_WORDS, fromRoomToFarSide, sentence, VERDICT_MEANING } from "../words.ts";
import { comparisonPart } from "./comparison-part.ts";
import { judgementBesideHeat, verdictWords } from "./coverage.ts";
import { decidingMonthPart } from "./deciding-month-part.ts";
import { drawingPart } from "./drawing-part.ts";
import { findingsPart } from "./findings-part.ts";
import { heatPart } from "./heat-part.ts";
import { otherChecksPart } from "./other-checks-part.ts";
import type { BuildUpPage } from "./part.ts";
import { placementPart } from "./placement-part.ts";
import { remediesPart } from "./remedies-part.ts";
import { sensitivityPart } from "./sensitivity-part.ts";
import { spreadPart } from "./spread-part.ts";
import { surfacePart } from "./surface-part.ts";
import { sweepPart } from "./sweep-part.ts";
import { trappedWaterPart } from "./trapped-water-part.ts";
import { twelveMonthsPart } from "./twelve-months-part.ts";
import { vapourLayerPart } from "./vapour-layer-part.ts";
import { woodPart } from "./wood-part.ts";
import { yearOfWaterPart } from "./year-of-water-part.ts";

/**
 * The pages of one build-up: its answer, then everything the answer is made from.
 *
 * @param result - the project's result
 * @param buildUp - one of its build-ups
 * @param number - which one, from 1
 * @param comparison - how much is told of its variants
 * @returns the section
 */
export async function buildUpPages(
  result: ProjectResult,
  buildUp: BuildUpResult,
  number: number,
  comparison: BuildUpPage["comparison"] = "short",
): Promise<Html> {
  const id = `build-up-${number}`;
  const page: BuildUpPage = { result, buildUp, number, id, view: governingView(buildUp), comparison };
  const made = await Promise.all([
    drawingPart(page),
    heatPart(page),
    surfacePart(page),
    decidingMonthPart(page),
    twelveMonthsPart(page),
    yearOfWaterPart(page),
    vapourLayerPart(page),
    placementPart(page),
    sensitivityPart(page),
    spreadPart(page),
    woodPart(page),
    trappedWaterPart(page),
    otherChecksPart(page),
    findingsPart(page),
    remediesPart(page),
    comparisonPart(page),
    sweepPart(page),
  ]);
  const parts = made
    .filter((part) => part !== null)
    .map((part, index) => ({ ...part, id: `${id}-${part.key}`, title: `${number}.${index + 1} ${part.heading}` }));
  return html`<section class="build-up page-${number}" id="${id}"><h2>${number} ${buildUp.name}</h2>
<p class="kicker">${ELEMENT_WORDS[buildUp.element]}, ${fromRoomToFarSide(buildUp)}</p>
${banner(buildUp)}
${beyond(buildUp)}
<nav class="parts" aria-label="Parts of build-up ${number}"><ul>${parts.map((part) => html`<li><a href="#${part.id}">${part.title}</a></li>`)}</ul></nav>
${parts.map((part) => html`<section class="part" id="${part.id}"><h3>${part.title}</h3>${part.body}</section>`)}
</section>`;
}

function banner(buildUp: BuildUpResult): Html {
  const { judgement, moisture, heat } = buildUp;
  const facts: [string, Html | string][] = [];
  if (moisture) {
    const { verdict, words, byStandard } = waterHeadline(moisture);
    const followed = byStandard === null ? null : " With drying counted inside the month, which the judgement follows.";
    facts.push(["Verdict", html`${verdictWords(verdict)}: ${VERDICT_MEANING[verdict]}.${followed}`]);
    facts.push(["Water", sentence(words)]);
    if (byStandard !== null)
      facts.push(["By the standard’s month-end rule", html`${verdictWords(byStandard.verdict)}, ${byStandard.words}`]);
  }
  if (heat) {
    facts.push(["U", `${fixed(heat.transmittance, 2)} W/(m²·K)${targetWords(buildUp)}`]);
    const required = heat.requiredTemperatureFactor;
    facts.push([
      "Inside surface",
      `temperature factor ${fixed(heat.temperatureFactor, 2)}${required === null ? ", none required" : `, required ${fixed(required, 2)} in ${heat.criticalMonth}`}`,
    ]);
  }
  return html`<div class="banner ${CLASSES[judgement.word]}">${judgementSign(judgement.word)}<div><p class="word">${judgementBesideHeat(buildUp)}</p><p>${sentence(judgement.message)}</p><dl class="facts">${facts.map(
    ([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`,
  )}</dl></div></div>`;
}

function beyond({ beyond: reason }: BuildUpResult): Html | null {
  return reason
    ? html`<p class="beyond-words"><strong>Beyond this method:</strong> ${sentence(reason.reason)} ${sentence(reason.askFor)}</p>`
    : null;
}
