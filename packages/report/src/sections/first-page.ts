import { type BuildUpResult, meetsTarget, type ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { fixed, gramsPerArea } from "../numbers.ts";
import { CLASSES, judgementSign } from "../signs.ts";
import { firstSentence, sentence, sideWords } from "../words.ts";
import { judgementWords, verdictWords } from "./coverage.ts";

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
<div class="answers"><dt>Answer</dt><dd><ol>${result.buildUps.map(answer)}</ol></dd></div>
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

function answer(buildUp: BuildUpResult, index: number): Html {
  const { judgement, moisture, heat } = buildUp;
  const figures = [
    moisture && moisture.peak.amount > 0
      ? `at most ${gramsPerArea(moisture.peak.amount)}, in ${moisture.peak.month}`
      : null,
    heat ? `U ${fixed(heat.transmittance, 2)} W/(m²·K)${targetWords(buildUp)}` : null,
  ].filter((figure) => figure !== null);
  return html`<li class="answer ${CLASSES[judgement.word]}">${judgementSign(judgement.word)}<div>
<p class="name"><a href="#build-up-${index + 1}">${shorten(buildUp.name, LONGEST_NAME)}</a>: ${judgementWords(judgement.word, "cell")}</p>
<p>${firstSentence(sentence(judgement.message))}</p>
<p class="figures">${moisture ? html`Verdict ${verdictWords(moisture.verdict)}${figures.length > 0 ? "; " : null}` : null}${figures.join("; ")}</p>
</div></li>`;
}

const LONGEST_NAME = 160;

/**
 * How a transmittance stands to its target, compared at two decimals.
 *
 * @param buildUp - a build-up of the result
 * @returns such as ", target 0.25: met"; empty without a target
 */
export function targetWords({ heat, target }: Pick<BuildUpResult, "heat" | "target">): string {
  if (!heat || target === null) return "";
  const met = meetsTarget(heat.transmittance, target);
  return `, target ${fixed(target, 2)}: ${met ? "met" : "not met"}`;
}

function conditions(result: ProjectResult): Html {
  const { climate, rooms } = result;
  const first = html`<li>Climate ${climate.name}, ${climate.severity}${rooms.map(
    (room) =>
      html`; ${sideWords({ room: room.name, faces: "outdoors", element: "wall" }).room}: ${room.temperatureRule}, ${room.humidityRule}`,
  )}.</li>`;
  const uses = new Map<string, string[]>();
  for (const { name, judgement } of result.buildUps) {
    for (const condition of judgement.conditions) uses.set(condition, [...(uses.get(condition) ?? []), name]);
  }
  const rest = [...uses].map(([condition, names]) =>
    names.length === result.buildUps.length
      ? html`<li>${condition}</li>`
      : html`<li>${condition} <span class="aside">(${names.map((name) => shorten(name, 40)).join(", ")})</span></li>`,
  );
  return html`<ul class="conditions">${first}${rest}</ul>`;
}
