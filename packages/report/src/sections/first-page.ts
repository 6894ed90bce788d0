import type { BuildUpResult, ClimateResult, MoistureResult, ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { targetWords } from "../heat-target.ts";
import { type Html, html } from "../html.ts";
import { fixed, NO_BREAK_SPACE } from "../numbers.ts";
import { CLASSES, judgementSign } from "../signs.ts";
import { surfaceFelt } from "../surface-felt.ts";
import { waterHeadline } from "../water-headline.ts";
import { climatePlace, roomWords, sentence } from "../words.ts";
import { judgementBesideHeat, verdictWords } from "./coverage.ts";

/**
 * The first page: what was asked, the answer for each build-up, what it rests on, by which method, and its limits.
 *
 * @param result - the project's result
 * @param date - date of the report as the caller words it; nothing is printed without
 * @returns the page's header
 */
export function firstPage(result: ProjectResult, date: string | null): Html {
  return html`<header class="first" id="answer">
<p class="kicker">Moisture and heat of ${countWords(result.buildUps.length)}${result.reference ? html` · reference ${result.reference}` : null}</p>
<h1>${result.project}</h1>
${particulars(result, date)}
<dl class="five">
<div><dt>Question</dt><dd>${question(result)}</dd></div>
<div class="answers"><dt>Answer</dt><dd><ol>${result.buildUps.map((buildUp, index) => answer(buildUp, index, result.rooms))}</ol></dd></div>
<div><dt>Conditions</dt><dd>${conditions(result)}</dd></div>
<div><dt>Method</dt><dd>Monthly vapour pressure method, ${result.method}; transmittance to ISO 6946:2017; floors to ISO 13370:2017. <a href="#method">Method and edition</a></dd></div>
<div><dt>Limits</dt><dd>One dimension, steady months, vapour by diffusion. Rain, leaks, moving air, sun, stored and built-in water are outside it. <a href="#left-out">What is left out</a></dd></div>
</dl>
</header>`;
}

function countWords(count: number): string {
  return count === 1 ? "one build-up" : `${count} build-ups`;
}

function particulars(result: ProjectResult, date: string | null): Html | null {
  const query = result.query;
  const entries: [string, string | null | undefined][] = [
    ["Asked of", query?.to],
    ["Site", query?.site],
    ["Prepared by", query?.preparedBy],
    ["Date", query?.date],
    ["Drawings", query?.drawings.length ? query.drawings.join("; ") : null],
    ["Report made", date],
  ];
  const given = entries.filter(([, value]) => value);
  if (given.length === 0) return null;
  return html`<dl class="particulars">${given.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>`;
}

function question(result: ProjectResult): Html {
  const asked = result.query?.question;
  return asked
    ? html`${asked}`
    : html`Does vapour condense inside each build-up, does it dry within the year, and is the build-up sound? <span class="aside">(No question is written in the project file.)</span>`;
}

function answer(buildUp: BuildUpResult, index: number, rooms: ProjectResult["rooms"]): Html {
  const felt = surfaceFelt(buildUp, rooms);
  const { judgement, moisture, heat } = buildUp;
  const water = moisture ? waterWords(moisture) : null;
  const transmittance = heat ? `U ${fixed(heat.transmittance, 2)} W/(m²·K)${targetWords(buildUp)}` : null;
  return html`<li class="answer ${CLASSES[judgement.word]}">${judgementSign(judgement.word)}<div>
<p class="name"><a href="#build-up-${index + 1}">${shorten(buildUp.name, LONGEST_NAME)}</a>: ${judgementBesideHeat(buildUp, "cell")}</p>
<p>${felt === null ? null : `${felt} `}${sentence(judgement.short)}</p>
<p class="figures">${water}${water && transmittance ? "; " : null}${transmittance}</p>
</div></li>`;
}

const LONGEST_NAME = 160;

/** Verdict and figures of the year that the judgement follows, and of the standard's where it reads otherwise. */
function waterWords(moisture: MoistureResult): Html {
  const { verdict, words, byStandard } = waterHeadline(moisture);
  if (byStandard === null)
    return html`Verdict ${verdictWords(verdict)}${moisture.peak.month === null ? null : html`; ${words}`}`;
  return html`With drying counted inside the month, which the judgement follows: ${verdictWords(verdict)}, ${words}. By the standard’s month-end rule: ${verdictWords(byStandard.verdict)}, ${byStandard.words}`;
}

/** What the answers take as given, and what has to be met for them to hold: two lists. */
function conditions(result: ProjectResult): Html {
  const { climate, rooms } = result;
  const assumed = [
    html`<li>Climate ${climatePlace(climate)}, ${climate.severity}${altitudeWords(climate)}.</li>`,
    ...rooms.map(
      (room) => html`<li>${sentence(roomWords(room.name))}: ${room.temperatureRule}; ${room.humidityRule}.</li>`,
    ),
  ];
  return html`<p>Worked out for:</p><ul class="conditions">${assumed}</ul><p>To be met:</p><ul class="conditions">${toBeMet(result)}</ul>`;
}

function altitudeWords({ altitudeCorrection }: ClimateResult): string {
  return altitudeCorrection === null
    ? ""
    : `, corrected to the site’s ${fixed(altitudeCorrection.siteAltitude, 0)}${NO_BREAK_SPACE}m above the sea`;
}

/** The conditions of the judgements, each once, with the build-ups it is for. */
function toBeMet({ buildUps }: ProjectResult): Html[] {
  const uses = new Map<string, string[]>();
  for (const { name, judgement } of buildUps) {
    for (const condition of judgement.conditions) uses.set(condition, [...(uses.get(condition) ?? []), name]);
  }
  if (uses.size === 0) return [html`<li>No judgement here is “sound with conditions”: none is set.</li>`];
  return [...uses].map(([condition, names]) =>
    names.length === buildUps.length
      ? html`<li>${condition}</li>`
      : html`<li>${condition} <span class="aside">(${names.map((name) => shorten(name, 40)).join(", ")})</span></li>`,
  );
}
