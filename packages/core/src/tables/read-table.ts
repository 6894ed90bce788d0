import { CsvError, parse } from "#csv-parse";
import { nearNames } from "../problems/near-names.ts";
import type { Problem } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import { columnOfCell } from "./column-of-cell.ts";
import { splitLines } from "./split-lines.ts";
import { tableProblem } from "./table-problem.ts";
import { linesOf, looksBinary, type TextLine } from "./text-lines.ts";

/** A row of a table: its line in the text, and its cells by column, trimmed. */
export interface TableRow {
  line: number;
  cells: Readonly<Record<string, string>>;
  /** Position in its line at which the cell of a column begins, from 1. */
  columnOf(column: string): number;
}

/** Which columns a table has. */
export interface TableForm {
  /** What the table is, in words: "material table". */
  what: string;
  required: readonly string[];
  optional: readonly string[];
}

/** The contents of a table, and every problem of its form. */
export interface TableReading {
  /** The lines that begin with `#`, in order. */
  comments: readonly TextLine[];
  /** The rows with as many cells as headings; none if the headings are wrong. */
  rows: TableRow[];
  problems: Problem[];
}

/** Longest table that is read [characters]. */
export const LONGEST_TABLE = 2_000_000;
/** Most rows that are read: a hundred times the shipped table. */
export const MOST_ROWS = 20_000;

/**
 * Reads a table of comma-separated values with headings, as used for materials, prices and climates. Lines that begin
 * with `#` give its origin.
 *
 * @param text - the table
 * @param form - its columns
 * @returns comments, rows in order, and every problem of form
 */
export function readTable(text: string, form: TableForm): TableReading {
  const wholeProblem = problemOfWhole(text, form);
  if (wholeProblem !== null) return { comments: [], rows: [], problems: [wholeProblem] };
  const lines = linesOf(text);
  const comments = lines.filter(isComment);
  const refused = (...problems: Problem[]): TableReading => ({ comments, rows: [], problems });
  const split = splitRows(lines);
  if ("fault" in split) return refused(tableProblem("table-quotes", split.fault, lines[split.fault - 1]?.text ?? null));
  const [headings, ...rest] = split.rows;
  if (headings === undefined) return refused(problemOfForm("table-empty", null, form));
  if (headings.cells.length === 1 && /[;\t]/.test(headings.cells[0]!)) {
    return refused(problemOfForm("table-separator", headings.line, form));
  }
  const problems = problemsOfHeadings(headings, lines[headings.line - 1]!.text, form);
  if (problems.length > 0) return refused(...problems);
  if (rest.length === 0) return refused(problemOfForm("table-empty", null, form));
  if (rest.length > MOST_ROWS) return refused(problemOfForm("table-too-large", null, form));
  const columns = headings.cells.map((heading) => columnMeant(heading, form)!);
  const ragged = rest.filter(({ cells }) => cells.length !== columns.length);
  const whole = rest.filter(({ cells }) => cells.length === columns.length);
  return {
    comments,
    rows: whole.map(({ line, cells }) => ({
      line,
      cells: Object.fromEntries(columns.map((column, index) => [column, cells[index]!])),
      columnOf: (column) => columnOfCell(lines[line - 1]!.text, columns.indexOf(column)),
    })),
    problems: ragged.length === 0 ? [] : [raggedRows(ragged, lines, columns.length, form)],
  };
}

interface Row {
  line: number;
  cells: readonly string[];
}

function isComment({ text }: TextLine): boolean {
  return text.trimStart().startsWith("#");
}

function holdsData(line: TextLine): boolean {
  return line.text.trim() !== "" && !isComment(line);
}

function problemOfWhole(text: string, form: TableForm): Problem | null {
  if (text.length > LONGEST_TABLE) return problemOfForm("table-too-large", null, form);
  if (looksBinary(text)) return problemOfForm("table-not-text", null, form);
  return text.replace(/^\uFEFF/, "").trim() === "" ? problemOfForm("table-empty", null, form) : null;
}

function problemOfForm(code: ProblemCode, line: number | null, { what, required }: TableForm): Problem {
  return tableProblem(code, line, null, { what, columns: required });
}

/** The rows with the lines on which they end, without comments and blank rows; or the line with a faulty quotation. */
function splitRows(lines: readonly TextLine[]): { rows: Row[] } | { fault: number } {
  const withoutComments = lines.map((line) => (isComment(line) ? "" : line.text)).join("\n");
  const options = {
    relax_column_count: true,
    skip_empty_lines: true,
    trim: true,
    info: true,
    record_delimiter: "\n",
  } as const;
  try {
    const records = parse(withoutComments, options) as unknown as { record: string[]; info: { lines: number } }[];
    const rows = records.map(({ record, info }) => ({ line: info.lines, cells: record }));
    return { rows: rows.filter(({ cells }) => cells.some((cell) => cell !== "")) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const alone = splitLines(
      lines.map((line) => (holdsData(line) ? line : { ...line, text: "-" })),
      ",",
    );
    return { fault: alone.indexOf(null) + 1 };
  }
}

function columnMeant(heading: string, { required, optional }: TableForm): string | undefined {
  return [...required, ...optional].find((column) => column.toLowerCase() === heading.toLowerCase());
}

function problemsOfHeadings({ line, cells }: Row, text: string, form: TableForm): Problem[] {
  const { what, required, optional } = form;
  const known = [...required, ...optional];
  const meant = cells.map((heading) => columnMeant(heading, form));
  const missing = required.filter((column) => !meant.includes(column));
  const lacking = (received: string | null): Problem =>
    tableProblem("column-missing", line, received, { what, missing, known, all: optional.length === 0 ? known : [] });
  if (missing.length > 0 && cells.every((heading) => isForeign(heading, known))) return [lacking(null)];
  const problems: Problem[] = missing.length > 0 ? [lacking(text)] : [];
  for (const [index, heading] of cells.entries()) {
    const at = (code: ProblemCode, details: Problem["details"]): void => {
      problems.push(
        tableProblem(code, line, heading, { what, column: heading, ...details }, columnOfCell(text, index)),
      );
    };
    if (meant[index] === undefined) at("column-unknown", { near: nearNames(heading, known), known });
    else if (meant.indexOf(meant[index]) < index) at("column-twice", {});
  }
  return problems;
}

/** Whether a heading resembles none of the columns. A file with only such headings is of another kind. */
function isForeign(heading: string, known: readonly string[]): boolean {
  const isKnown = known.some((column) => column.toLowerCase() === heading.toLowerCase());
  return !isKnown && nearNames(heading, known).length === 0;
}

/** Rows with more or fewer cells than headings: one problem, as they nearly always share one cause. */
function raggedRows(rows: readonly Row[], lines: readonly TextLine[], expected: number, { what }: TableForm): Problem {
  const { line, cells } = rows[0]!;
  const named = rows.slice(0, MOST_LINES_NAMED).map((row) => String(row.line));
  const details = {
    what,
    name: cells[0] ?? "",
    cells: cells.length,
    columns: expected,
    lines: named,
    rows: rows.length,
  };
  return tableProblem("row-length", line, lines[line - 1]!.text, details);
}

const MOST_LINES_NAMED = 10;
