import type { ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { sentence } from "../words.ts";
import { comparisonDetails, comparisonPages, comparisonPart } from "./comparison-part.ts";
import { placementPages, placementPart } from "./placement-part.ts";
import { spreadPages, spreadPart } from "./spread-part.ts";
import { variationPages, variationPart } from "./variation-part.ts";

/** Plot and table of one build-up. */
export interface StudyPart {
  name: string;
  number: number;
  body: Html;
  /** Pages that it takes in print; null where they are not known before printing. */
  pages: number | null;
}

/** A study as a document of its own: its title, its answer, and what the answer is made from. */
export interface Study {
  title: string;
  question: string;
  /** A sentence for each build-up in question. */
  answers: { name: string; number: number; answer: string }[];
  /** Plot and table of each, in the same order. */
  parts: StudyPart[];
  /** What follows the fronts of the sheets: details not needed for the answer. */
  details: Html | null;
}

/**
 * The study in a result.
 *
 * @param result - the project's result
 * @param isComparison - whether the comparison was asked for: every result of a file with variants holds one
 * @returns the study; null for an assessment alone
 */
export async function studyOf(result: ProjectResult, isComparison: boolean): Promise<Study | null> {
  if (result.variation !== undefined) return await variationStudy(result, result.variation);
  if (result.placement !== undefined) return placementStudy(result, result.placement);
  if (result.buildUps.some(({ spread }) => spread !== undefined)) return await spreadStudy(result);
  return isComparison && result.comparison !== undefined ? await comparisonStudy(result, result.comparison) : null;
}

async function variationStudy(
  result: ProjectResult,
  variation: NonNullable<ProjectResult["variation"]>,
): Promise<Study> {
  const number = numberOf(result, variation.buildUp.slug);
  const { name } = variation.buildUp;
  return {
    title: `How thick: ${shorten(variation.layer.name, LONGEST_NAME)}`,
    question: `How thick must ${variation.layer.name} be in ${name}?`,
    answers: [{ name, number, answer: sentence(variation.message) }],
    parts: [{ name, number, body: await variationPart(variation), pages: variationPages(variation) }],
    details: null,
  };
}

function placementStudy(result: ProjectResult, placement: NonNullable<ProjectResult["placement"]>): Study {
  const of = placement.buildUps.map((study) => ({ study, number: numberOf(result, study.slug) }));
  return {
    title: "Where the vapour layer may lie",
    question: "In which position is each build-up sound, here and in other climates, heated and cooled?",
    answers: of.map(({ study, number }) => ({
      name: study.name,
      number,
      answer: study.message ?? study.leftOut ?? "",
    })),
    parts: of
      .filter(({ study }) => study.layer !== null)
      .map(({ study, number }) => ({
        name: study.name,
        number,
        body: placementPart(study, result.buildUps[number - 1]!),
        pages: placementPages(study),
      })),
    details: null,
  };
}

async function spreadStudy(result: ProjectResult): Promise<Study> {
  const of = result.buildUps.flatMap(({ name, spread }, index) =>
    spread === undefined ? [] : [{ name, number: index + 1, spread }],
  );
  return {
    title: "How sure the answer is",
    question: "With every value somewhere within its spread, how often does each answer come out?",
    answers: of.map(({ name, number, spread }) => ({ name, number, answer: spread.message })),
    parts: await Promise.all(
      of.map(async ({ name, number, spread }) => ({
        name,
        number,
        body: await spreadPart(spread, `study-${number}`),
        pages: spreadPages(spread),
      })),
    ),
    details: null,
  };
}

async function comparisonStudy(
  result: ProjectResult,
  comparison: NonNullable<ProjectResult["comparison"]>,
): Promise<Study> {
  const of = comparison.buildUps.map((study) => ({ study, number: numberOf(result, study.slug) }));
  return {
    title: "Variants compared",
    question: "Which variant is worth it?",
    answers: of.map(({ study, number }) => ({ name: study.name, number, answer: bestWords(study.rows) })),
    parts: await Promise.all(
      of.map(async ({ study, number }) => ({
        name: study.name,
        number,
        body: await comparisonPart(study, result.buildUps[number - 1]?.target ?? null, `study-${number}`),
        pages: comparisonPages(study),
      })),
    ),
    details: html`${of.map(({ study, number }) => html`<h3>${number} ${study.name}</h3>${comparisonDetails(comparison, study)}`)}<h3>Assumptions</h3><ul>${comparison.assumptions.map((assumption) => html`<li>${assumption}</li>`)}</ul>`,
  };
}

type Row = NonNullable<ProjectResult["comparison"]>["buildUps"][number]["rows"][number];

/** The soundest variants, and among them the one with the least U. */
function bestWords(rows: readonly Row[]): string {
  const rank = ({ judgement }: Row): number => RANKS.indexOf(judgement);
  const least = Math.min(...rows.map(rank));
  const sound = rows.filter((row) => rank(row) === least);
  const name = ({ variant }: Row): string => variant ?? "as drawn";
  const best = sound.reduce((one, other) =>
    (other.transmittance ?? Number.POSITIVE_INFINITY) < (one.transmittance ?? Number.POSITIVE_INFINITY) ? other : one,
  );
  const all = sound.length === rows.length ? "All are" : `${sound.length} of ${rows.length} are`;
  return `${all} “${RANKS[least]}”. Among them ${name(best)} has the least U.`;
}

const RANKS: readonly string[] = ["sound", "sound with conditions", "change it", "beyond this method"];
const LONGEST_NAME = 50;

function numberOf(result: ProjectResult, slug: string): number {
  return result.buildUps.findIndex((buildUp) => buildUp.slug === slug) + 1;
}

/**
 * The question of a study and its answers, one for each build-up.
 *
 * @param study - the study
 * @returns what stands below its title
 */
export function studyAnswer(study: Study): Html {
  const { question, answers } = study;
  const isAlone = answers.length === 1;
  return html`<p class="question">${question}</p>
<ul class="study-answers">${answers.map(({ name, number, answer }) => html`<li>${isAlone ? html`<strong>${answer}</strong>` : html`${named(study, number, name)}: ${answer}`}</li>`)}</ul>`;
}

/** The name of a build-up, leading to its part where it has one. */
function named({ parts }: Study, number: number, name: string): Html {
  const title = `${number} ${name}`;
  return parts.some((part) => part.number === number) ? html`<a href="#study-${number}">${title}</a>` : html`${title}`;
}

/**
 * Plot and table of each build-up of a study; every one begins a page, but for one that stands alone.
 *
 * @param study - the study
 * @returns sections
 */
export function studyParts({ parts, answers }: Study): Html[] {
  const isAlone = answers.length === 1;
  return parts.map(
    ({ name, number, body }) =>
      html`<section class="study-part${isAlone ? null : " page"}" id="study-${number}">${isAlone ? null : html`<h2>${number} ${name}</h2>`}${body}</section>`,
  );
}
