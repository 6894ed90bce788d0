import { type BuildUpResult, meetsTarget, type ProjectResult, type Remedy } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { coldestSurface } from "../coldest-surface.ts";
import { thumbnail } from "../drawing/section-drawing.ts";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { MARK_CLASSES, markIcon } from "../judgement-icons.ts";
import { fixed, millimetres } from "../numbers.ts";
import { standardWords } from "../standard-words.ts";
import { ELEMENT_WORDS, sentence } from "../words.ts";
import { answerSentence } from "./answer-sentence.ts";
import { type Mark, type Marks, marksOf, surfaceWord, worstOf } from "./marks.ts";

/**
 * The decision: the question, one sentence that answers it, and a row for every build-up with its three marks.
 *
 * @param result - the project's result
 * @param order - build-ups by index, as `rowOrder` gives them
 * @param breaks - indices of build-ups whose row begins a page in print
 * @returns question, answer and rows
 */
export function decision(result: ProjectResult, order: readonly number[], breaks: readonly number[]): Html {
  const asked = result.buildUps.map((buildUp) => ({
    name: shorten(buildUp.name, LONGEST_NAME),
    judgement: buildUp.judgement.word,
    meetsTarget: meets(marksOf(buildUp)),
  }));
  const { word, sentence: answer } = answerSentence(asked);
  return html`<p class="question">${result.query?.question ?? "May the build-ups be closed as drawn?"}</p>
<p class="verdict-line ${ANSWER_CLASSES[word]}"><strong>${word}</strong>${answer.slice(word.length)}</p>
<ol class="rows">${order.map((index) => row(result.buildUps[index]!, index, breaks.includes(index)))}</ol>
<p class="aside">Sound, dry and dries out cover vapour diffusion through unbroken layers only. <a href="#left-out">What is left out</a></p>`;
}

const LONGEST_NAME = 60;

/**
 * Build-ups in the order of the rows: those that must change come first.
 *
 * @param result - the project's result
 * @returns indices; else the order of the file
 */
export function rowOrder({ buildUps }: ProjectResult): number[] {
  const mustChange = (index: number): number => (buildUps[index]!.judgement.word === "change it" ? 0 : 1);
  return buildUps.map((_, index) => index).sort((one, other) => mustChange(one) - mustChange(other) || one - other);
}

const ANSWER_CLASSES = { Yes: "sound", "Yes, on conditions": "conditional", No: "change", "No answer": "beyond" };

function meets({ heat }: Marks): boolean | null {
  return heat === null || heat === "untold" ? null : heat === "pass";
}

function row(buildUp: BuildUpResult, index: number, breaks: boolean): Html {
  const marks = marksOf(buildUp);
  const lines = rowLines(buildUp);
  return html`<li class="row ${MARK_CLASSES[worstOf(marks)]}${breaks ? " breaks" : null}">${thumbnail(buildUp, `thumb-${index + 1}`)}<div>
<p class="name"><a href="#build-up-${index + 1}">${index + 1} ${shorten(buildUp.name, LONGEST_NAME)}</a> <span class="aside">${ELEMENT_WORDS[buildUp.element].toLowerCase()}</span></p>
<ul class="marks">${markWords(buildUp, marks).map(([mark, words]) => html`<li>${mark === null ? null : markIcon(mark)}${words}</li>`)}</ul>
${lines.map(({ head, words }) => html`<p>${head === null ? null : html`<strong>${head}</strong> `}${backticksAsCode(words)}</p>`)}
</div></li>`;
}

/** The three marks with their words. */
function markWords({ heat, target }: BuildUpResult, marks: Marks): [Mark | null, string][] {
  const required = heat?.requiredTemperatureFactor ?? null;
  const factor = heat === null ? "" : ` ${fixed(heat.temperatureFactor, 2)}`;
  const against = required === null ? (heat === null ? "" : ", none required") : `, required ${fixed(required, 2)}`;
  const surface = surfaceWord(marks.surface, required);
  const u =
    heat === null
      ? "U-value: not available"
      : `U-value ${fixed(heat.transmittance, 2)} W/(m²·K)${target === null ? ", no target" : `, target ${fixed(target, 2)}: ${HEAT_WORDS[marks.heat ?? "untold"]}`}`;
  return [
    [marks.moisture, `Moisture: ${MOISTURE_WORDS[marks.moisture]}`],
    [marks.surface, `Inside surface fRsi${factor}${against}${surface === null ? "" : `: ${surface}`}`],
    [marks.heat, u],
  ];
}

const MOISTURE_WORDS: Readonly<Record<Mark, string>> = {
  pass: "sound",
  conditions: "sound with conditions",
  fail: "change it",
  untold: "not available",
};
const HEAT_WORDS: Readonly<Record<Mark, string>> = {
  pass: "met",
  conditions: "met",
  fail: "missed",
  untold: "not available",
};

/** A paragraph of a row. */
export interface RowLine {
  head: string | null;
  words: string;
}

/**
 * The text of a row: the decisive finding, further faults, the standard's own result if it differs, and the change to
 * make.
 *
 * @param buildUp - a build-up of the result
 * @returns paragraphs
 */
export function rowLines(buildUp: BuildUpResult): RowLine[] {
  const { judgement, beyond } = buildUp;
  if (beyond !== null) return [line(null, `${sentence(beyond.reason)} ${sentence(beyond.askFor)}`)];
  const felt = coldestSurface(buildUp);
  const also = alsoFound(buildUp);
  const standard = standardWords(buildUp);
  const remedy = remedyWords(buildUp);
  return [
    line(null, `${felt === null ? "" : `${felt} `}${sentence(judgement.short)}`),
    ...(also === "" ? [] : [line("Also:", also)]),
    ...(standard?.differs ? [line("ISO 13788 alone:", standard.words)] : []),
    ...(remedy === null ? [] : [remedy]),
  ];
}

function line(head: string | null, words: string): RowLine {
  return { head, words };
}

/** Findings named beside the decisive one, wherever they are in the list: dripping water, faults, wet wood. */
const NAMED = new Set(["surface-condensation", "surface-drops", "wood-moisture", "junction-condensation"]);
const MOST_ALSO = 2;

function alsoFound({ findings, judgement }: BuildUpResult): string {
  return findings
    .filter(({ id, code, severity, short }) => {
      if (id === judgement.decisive || short === judgement.short) return false;
      return severity === "fault" || (severity === "caution" && NAMED.has(code));
    })
    .slice(0, MOST_ALSO)
    .map(({ short }) => sentence(short))
    .join(" ");
}

/**
 * The first remedy with its outcome; if U misses its target, the first remedy that meets it; if none was found, the advice.
 */
function remedyWords(buildUp: BuildUpResult): RowLine | null {
  const { remedies, target } = buildUp;
  const misses = marksOf(buildUp).heat === "fail";
  if (buildUp.judgement.word !== "change it" && !misses) return null;
  const meeting = remedies.find(({ transmittance }) => target !== null && meetsTarget(transmittance, target));
  const best = (misses ? meeting : undefined) ?? remedies[0];
  if (best !== undefined) {
    const over = misses && best !== meeting ? ", which still misses the target" : "";
    return line("Change it to:", `${sentence(best.change)}: then ${outcomeWords(best)}${over}.`);
  }
  const decisive = buildUp.findings.find(({ id }) => id === buildUp.judgement.decisive);
  if (decisive?.advice) return line("To do:", sentence(decisive.advice));
  return buildUp.remedySearch === null ? null : line(null, buildUp.remedySearch);
}

function outcomeWords({ judgement, transmittance, thicknessInside, thicknessOutside }: Remedy): string {
  const added = thicknessInside + thicknessOutside;
  const thicker =
    added > 0 ? `, ${millimetres(added)} mm thicker` : added < 0 ? `, ${millimetres(-added)} mm thinner` : "";
  return `${judgement}, U ${fixed(transmittance, 2)}${thicker}`;
}
