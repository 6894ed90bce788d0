import { Html, html, type Insertion, markup } from "./html.ts";
import { alignOnPoint } from "./numbers.ts";

/** A column: words flush left, or figures aligned on their points. */
export interface Column {
  head: Insertion;
  /** Unit, set below the head. */
  unit?: string;
  kind: "words" | "figures";
}

/** A column of words. */
export function wordsUnder(head: Insertion): Column {
  return { head, kind: "words" };
}

/** A column of figures, with their unit below the head where they have one. */
export function figuresUnder(head: Insertion, unit: string | null = null): Column {
  return unit === null ? { head, kind: "figures" } : { head, unit, kind: "figures" };
}

/** A cell: a figure or short text, or a piece of markup. */
export type Cell = string | Html;

/** A table of the page. The first cell of every row is its head. */
export interface Table {
  /** Its caption, above it. */
  caption: string;
  columns: readonly Column[];
  rows: readonly (readonly Cell[])[];
  /** Rows of sums below a rule. */
  sums?: readonly (readonly Cell[])[];
  /** Rows, by number, that are marked as the ones that matter. */
  marked?: readonly number[];
  /** A note below it that holds for all its words, such as what a verdict does not cover. */
  note?: Html;
}

/**
 * A table with a caption, row and column heads, and figures aligned on the decimal point.
 *
 * @param table - its columns and rows
 * @returns the table inside a frame that scrolls by itself where the page is narrow
 */
export function tableMarkup(table: Table): Html {
  const { columns, rows, sums = [], marked = [], note = null } = table;
  const kinds = columns.map(({ kind }, column) => (kind === "words" ? wordsClass(rows, column) : null));
  const aligned = alignColumns(columns, [...rows, ...sums]);
  const body = aligned.slice(0, rows.length).map((row, index) => rowMarkup(row, kinds, marked.includes(index)));
  const foot = aligned.slice(rows.length).map((row) => rowMarkup(row, kinds, false));
  const heads = columns.map(
    ({ head, unit, kind }) =>
      html`<th scope="col"${kind === "words" ? WORDS : null}>${head}${unit ? html`<span class="unit">${unit}</span>` : null}</th>`,
  );
  const longestHead = Math.max(0, ...rows.map(([head]) => lettersOf(head)));
  const longHeads = rows.some(([head]) => head instanceof Html) || longestHead > LONG_HEAD_FROM;
  const ofHeads = longestHead > SENTENCE_FROM ? SENTENCES : longHeads ? LONG : null;
  return html`<div class="scroll" tabindex="0" role="group" aria-label="${table.caption}"><table${ofHeads}><caption><span>${
    table.caption
  }</span></caption><thead><tr>${heads}</tr></thead><tbody>${body}</tbody>${
    foot.length > 0 ? html`<tfoot>${foot}</tfoot>` : null
  }</table>${note}</div>`;
}

/**
 * A table without the columns that say nothing in any row: a dash, or that there is none.
 *
 * @param table - its columns and rows; the first column always stays
 * @returns the same with fewer columns
 */
export function withoutEmptyColumns(table: Table): Table {
  const saysSomething = (cell: Cell | undefined): boolean => typeof cell !== "string" || !EMPTY.test(cell);
  const stays = table.columns.map((_, column) => column === 0 || table.rows.some((row) => saysSomething(row[column])));
  const kept = <Item>(items: readonly Item[]): Item[] => items.filter((_, column) => stays[column]);
  return {
    ...table,
    columns: kept(table.columns),
    rows: table.rows.map(kept),
    ...(table.sums === undefined ? {} : { sums: table.sums.map(kept) }),
  };
}

/** A dash, nothing, or no hundredth at all. */
const EMPTY = /^(?:–|0\s%)?$/;

/** Row heads longer than this get a column of their own width [characters]. */
const LONG_HEAD_FROM = 12;
const LONG = markup(' class="long"');
/** Row heads longer than this are sentences [characters]. */
const SENTENCE_FROM = 60;
const SENTENCES = markup(' class="long sentences"');

/** Cells hold figures unless they say otherwise. */
const WORDS = markup(' class="w"');

/** How wide a column of words has to stay on a telephone, by its longest text. */
function wordsClass(rows: readonly (readonly Cell[])[], column: number): Html {
  const longest = Math.max(0, ...rows.map((row) => lettersOf(row[column])));
  return longest > PROSE_FROM ? PROSE : longest > PHRASE_FROM ? PHRASE : WORDS;
}

function lettersOf(cell: Cell | undefined): number {
  return cell instanceof Html ? cell.text.replace(/<[^>]*>/g, "").length : (cell ?? "").length;
}

/** Longer texts than these are a phrase, or prose [characters]. */
const PHRASE_FROM = 22;
const PROSE_FROM = 90;
const PHRASE = markup(' class="w phrase"');
const PROSE = markup(' class="w prose"');

function rowMarkup(row: readonly Cell[], kinds: readonly (Html | null)[], marked: boolean): Html {
  const cells = row.map((cell, index) => {
    return index === 0 ? html`<th scope="row">${cell}</th>` : html`<td${kinds[index]}>${cell}</td>`;
  });
  return marked ? html`<tr class="marked">${cells}</tr>` : html`<tr>${cells}</tr>`;
}

function alignColumns(columns: readonly Column[], rows: readonly (readonly Cell[])[]): Cell[][] {
  const result = rows.map((row) => [...row]);
  columns.forEach(({ kind }, column) => {
    if (kind !== "figures") return;
    const texts = alignOnPoint(result.map((row) => (typeof row[column] === "string" ? (row[column] as string) : "")));
    result.forEach((row, index) => {
      if (typeof row[column] === "string") row[column] = texts[index]!;
    });
  });
  return result;
}
