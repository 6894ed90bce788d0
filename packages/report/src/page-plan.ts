import type { ProjectResult } from "@warmside/core";
import type { Entry } from "./contents.ts";
import { conditionsOf } from "./decision/conditions.ts";
import { rowLines } from "./decision/decision-page.ts";
import { isAsOutdoors, ROOMS_A_TABLE } from "./design-conditions.ts";
import { shorten } from "./escape.ts";
import type { Study } from "./studies/study.ts";

/** The page on which each part begins in print, and the breaks between the decision's rows. */
export interface PagePlan {
  entries: Entry[];
  /** Places of the rows, in the order of the page, that begin a page. */
  breaks: number[];
  /** Whether conditions and contents begin a page of their own. */
  conditionsApart: boolean;
}

/**
 * The pages of a report on A4. Browsers do not number entries of a list by themselves, so the pages are laid out to be
 * known: every part begins a page, a sheet has two, and the decision's rows are counted by the lines they take at most.
 *
 * @param result - the project's result
 * @param order - build-ups by index in the order of the decision's rows
 * @returns entries with their pages, and the breaks
 */
export function pagePlan(result: ProjectResult, order: readonly number[]): PagePlan {
  const heights = order.map((index) => rowHeight(result, index));
  const breaks: number[] = [];
  let page = 1;
  let used = headHeight(result);
  heights.forEach((height, place) => {
    if (used + height > PAGE && place > 0) {
      breaks.push(place);
      page += 1;
      used = 0;
    }
    used += height;
  });
  const closing = closingHeight(result);
  const conditionsApart = used + closing > PAGE;
  if (conditionsApart) page += 1;
  const conditions = page;
  const design = conditions + 1;
  const sheets = design + Math.ceil(tablesOfAir(result) / TABLES_A_PAGE);
  const method = sheets + 2 * result.buildUps.length;
  return {
    breaks,
    conditionsApart,
    entries: [
      { id: "answer", title: "Decision", page: 1 },
      { id: "conditions", title: "Conditions", page: conditions },
      { id: "design-conditions", title: "Design conditions", page: design },
      ...result.buildUps.map(({ name }, index) => ({
        id: `build-up-${index + 1}`,
        title: `${index + 1} ${shorten(name, 60)}`,
        page: sheets + 2 * index,
      })),
      { id: "method", title: "Method and sources", page: method },
      { id: "checklist", title: "Site checklist and signature", page: method + 1 },
    ],
  };
}

/**
 * The pages of a study. One of a single build-up begins with its plot and table, and its contents stand above the design
 * conditions; one of several begins with answers and contents, each build-up on a page of its own behind. Details of any
 * length come last.
 *
 * @param result - the project's result
 * @param study - the study
 * @returns entries; without a page behind a part whose length is not known before printing
 */
export function studyPages(result: ProjectResult, { parts, answers, details }: Study): Entry[] {
  const entries: Entry[] = [{ id: "answer", title: "Answer", page: 1 }];
  const isAlone = answers.length === 1;
  let page = isAlone ? behindOnly(parts) : firstPage(result, answers, parts.length);
  const add = (id: string, name: string, pages: number | null): void => {
    entries.push({ id, title: name, page });
    page = page === null || pages === null ? null : page + pages;
  };
  const apart = isAlone ? [] : parts;
  for (const { name, number, pages } of apart) add(`study-${number}`, `${number} ${shorten(name, 60)}`, pages);
  const tables = tablesOfAir(result);
  add("design-conditions", "Design conditions", isAlone && tables > 1 ? null : Math.ceil(tables / TABLES_A_PAGE));
  for (const { number } of answers)
    add(`build-up-${number}`, `Sheet ${number} ${shorten(result.buildUps[number - 1]!.name, 60)}`, 2);
  add("method", "Method and sources", 1);
  if (details !== null) add("details", DETAILS, null);
  return entries;
}

/** Heading of what follows a study. */
export const DETAILS = "Continuity, costs and quantities";

/** The page behind the only part, which begins on the first; without one the answer alone stands there. */
function behindOnly([part]: Study["parts"]): number | null {
  if (part === undefined) return 2;
  return part.pages === null ? null : 1 + part.pages;
}

/** The page behind answers and contents; null where they may not fit on one. */
function firstPage(result: ProjectResult, answers: Study["answers"], parts: number): number | null {
  const said = paragraphsHeight(answers.map(({ name, answer }) => `${name}: ${answer}`));
  return headHeight(result) + said + contentsHeight(parts + answers.length + 4) > PAGE ? null : 2;
}

function tablesOfAir({ rooms, climate }: ProjectResult): number {
  return Math.max(1, Math.ceil(rooms.filter((room) => !isAsOutdoors(room, climate)).length / ROOMS_A_TABLE));
}

/** Height of a page for text [mm], with some left over for what the count misses. */
const PAGE = 261;
/** Tables of air that a page of design conditions holds beside its words. */
const TABLES_A_PAGE = 2;
/** Title, strip and answer [mm]; each further line of question, title or drawings counts beside it. */
const HEAD = 44;
/** A line of text [mm], and characters in one of full width and of a row. */
const LINE = 4.4;
const WIDE_LINE = 105;
const ROW_LINE = 95;
/** A heading, and an entry of the contents [mm]. */
const HEADING = 12;
const ENTRY = 4.8;

function lines(text: string, width: number): number {
  return Math.ceil(text.length / width);
}

/** Title, strip, question and answer. */
function headHeight({ query, project }: ProjectResult): number {
  const question = query?.question ?? "";
  return HEAD + LINE * (lines(question, WIDE_LINE) + lines(project, 55) + lines(query?.drawings.join("; ") ?? "", 40));
}

/** Name, marks, and the row's paragraphs. */
function rowHeight(result: ProjectResult, index: number): number {
  const said = rowLines(result.buildUps[index]!);
  const text = said.reduce((sum, { head, words }) => sum + lines(`${head ?? ""}${words}`, ROW_LINE), 0);
  return 17 + LINE * text + 0.6 * said.length;
}

/** Conditions and contents. */
function closingHeight({ buildUps }: ProjectResult): number {
  const conditions = paragraphsHeight(conditionsOf(buildUps).map(({ condition }) => condition));
  return HEADING + conditions + contentsHeight(buildUps.length + 5);
}

function paragraphsHeight(texts: readonly string[]): number {
  return texts.reduce((sum, text) => sum + lines(text, WIDE_LINE) * LINE + 1, 0);
}

/** Heading and entries, two beside each other. */
function contentsHeight(entries: number): number {
  return HEADING + 2 + Math.ceil(entries / 2) * ENTRY;
}
