import type { ProjectResult } from "@warmside/core";
import { annex } from "./annex/annex.ts";
import { contents } from "./contents.ts";
import { conditions } from "./decision/conditions.ts";
import { decision, rowOrder } from "./decision/decision-page.ts";
import { designConditions } from "./design-conditions.ts";
import { embeddedData } from "./embedded-data.ts";
import { shorten } from "./escape.ts";
import { type Html, html } from "./html.ts";
import { document } from "./page.ts";
import { DETAILS, pagePlan, studyPages } from "./page-plan.ts";
import { checklist } from "./sections/checklist.ts";
import { methodAndSources } from "./sections/closing.ts";
import { sheet } from "./sheet/sheet.ts";
import { documentStrip, fingerprintOf } from "./strip.ts";
import { type Study, studyAnswer, studyOf, studyParts } from "./studies/study.ts";
import { styleSheet } from "./style.ts";

/** Details of the document; only what the caller gives is printed. */
export interface DocumentStrip {
  /** As the caller words it. */
  date?: string;
  revision?: string;
  preparedBy?: string;
  checkedBy?: string;
}

/** Options of the caller; nothing else is added. */
export interface ReportOptions {
  /** Whether the annex is open, and so printed (default folded away). */
  annex?: boolean;
  strip?: DocumentStrip;
  /** Whether variants are summarised, shown in the annex, or are the subject of the document (default short). */
  comparison?: "short" | "whole";
  /** Style rules of the caller's own, after the page's own; its colours are custom properties. */
  style?: string;
}

/**
 * The report of a project: one self-contained HTML text. A result that holds a study becomes the study's own document.
 *
 * @param result - what `assessProject` gives, or a study
 * @param options - the strip, the annex, how much is told of variants, style rules
 * @returns the file's text; the same result and options give the same text everywhere
 * @throws Error when a figure of the result is not finite or a plot cannot be drawn
 */
export async function renderReport(result: ProjectResult, options: ReportOptions = {}): Promise<string> {
  const { comparison = "short" } = options;
  const study = await studyOf(result, comparison === "whole");
  const strip = documentStrip(result, options.strip ?? {}, await fingerprintOf(result));
  const { first, main } =
    study === null ? await assessment(result, strip, options.annex === true) : await ofStudy(result, strip, study);
  return document({
    title: shorten(
      study === null ? `${result.project}: moisture and heat report` : `${study.title}: ${result.project}`,
      LONGEST_TITLE,
    ),
    language: "en-GB",
    style: styleSheet(result, study?.title ?? null, options.style),
    first,
    main,
    data: embeddedData(result, comparison),
  });
}

const LONGEST_TITLE = 120;

interface Pages {
  first: Html;
  main: Html[];
}

/** Decision, conditions, design conditions, sheets, method, checklist, annex. */
async function assessment(result: ProjectResult, strip: Html, isAnnexOpen: boolean): Promise<Pages> {
  const order = rowOrder(result);
  const plan = pagePlan(result, order);
  const sheets = await Promise.all(result.buildUps.map((buildUp, index) => sheet(result, buildUp, index + 1, true)));
  const breaks = plan.breaks.map((index) => order[index]!);
  return {
    first: html`${head("Moisture and heat assessment", result.project, strip, decision(result, order, breaks))}
<div class="after-decision${plan.conditionsApart ? " page" : null}">${conditions(result)}${contents(plan.entries)}</div>`,
    main: [
      designConditions(result),
      ...sheets,
      methodAndSources(result),
      checklist(result),
      await annex(result, isAnnexOpen),
    ],
  };
}

/** The study's answer, plot and tables; behind it conditions, sheets and details. */
async function ofStudy(result: ProjectResult, strip: Html, study: Study): Promise<Pages> {
  const numbers = study.answers.map(({ number }) => number);
  const sheets = await Promise.all(numbers.map((number) => sheet(result, result.buildUps[number - 1]!, number, false)));
  const list = contents(studyPages(result, study));
  const isAlone = study.answers.length === 1;
  return {
    first: html`${head(result.project, study.title, strip, studyAnswer(study))}${isAlone ? null : list}`,
    main: [
      ...studyParts(study),
      ...(isAlone ? [html`<div class="page">${list}</div>`] : []),
      designConditions(result, isAlone),
      ...sheets,
      methodAndSources(result),
      ...(study.details === null
        ? []
        : [html`<section id="details" class="page"><h2>${DETAILS}</h2>${study.details}</section>`]),
    ],
  };
}

function head(kicker: string, title: string, strip: Html, body: Html): Html {
  return html`<header class="first" id="answer"><p class="kicker">${kicker}</p><h1>${title}</h1>${body}${strip}</header>`;
}
