import { type CsvError, parse } from "csv-parse/browser/esm/sync";
import { nearNames } from "../problems/near-names.ts";
import type { Problem } from "../problems/types.ts";

/** A row of a table: its line in the text, and its cells by column, trimmed. */
export interface TableRow {
  line: number;
  cells: Readonly<Record<string, string>>;
}

/** Which columns a table has. */
export interface TableForm {
  /** What the table is, in words: "material table". */
  what: string;
  required: readonly string[];
  optional: readonly string[];
}

/** Longest table that is read [characters]. */
export const LONGEST_TABLE = 2_000_000;
/** Rows read at most: a hundred times the shipped table. */
export const MOST_ROWS = 20_000;

/**
 * Reads a table of comma-separated values with a header; lines that begin with `#` tell its origin.
 *
 * @param text - the table
 * @param file - its path, for messages
 * @param form - its columns
 * @returns rows in order, and every problem of form; no rows where the header is wrong
 */
export function readTable(text: string, file: string, form: TableForm): { rows: TableRow[]; problems: Problem[] } {
  const wrong = (
    code: string,
    line: number | null,
    details: Problem["details"] = {},
    received: string | null = null,
  ) => ({
    rows: [],
    problems: [tableProblem(code, file, line, { what: form.what, ...details }, received)],
  });
  if (text.length > LONGEST_TABLE) return wrong("table-too-large", null);
  if (text.includes("\0") || text.includes("\uFFFD")) return wrong("table-not-text", null);
  const lines = parseCsv(text);
  if (!Array.isArray(lines)) return wrong("table-quotes", lines.line);
  const [header, ...rest] = lines;
  if (header === undefined) return wrong("table-empty", null, { columns: form.required });
  if (header.cells.length === 1 && /[;\t]/.test(header.cells[0] ?? "")) return wrong("table-separator", header.line);
  const problems = problemsOfHeader(header, file, form);
  if (problems.length > 0) return { rows: [], problems };
  if (rest.length === 0) return wrong("table-empty", null, { columns: form.required });
  if (rest.length > MOST_ROWS) return wrong("table-too-large", null);
  for (const row of rest) {
    if (row.cells.length !== header.cells.length) {
      const details = {
        what: form.what,
        name: row.cells[0] ?? "",
        cells: row.cells.length,
        columns: header.cells.length,
      };
      problems.push(tableProblem("row-length", file, row.line, details, null));
    }
  }
  const whole = rest.filter((row) => row.cells.length === header.cells.length);
  const rows = whole.map(({ line, cells }) => ({
    line,
    cells: Object.fromEntries(header.cells.map((column, index) => [column, cells[index] ?? ""])),
  }));
  return { rows, problems };
}

/**
 * A problem at a line of a table.
 *
 * @param code - its kind
 * @param file - the table's path
 * @param line - counted from 1; null for the table as a whole
 * @param details - what its wording needs
 * @param received - what stood there
 * @returns the problem
 */
export function tableProblem(
  code: string,
  file: string,
  line: number | null,
  details: Problem["details"],
  received: string | null,
): Problem {
  const shortened =
    received !== null && received.length > LONGEST_RECEIVED ? `${received.slice(0, LONGEST_RECEIVED)}…` : received;
  return {
    code,
    path: [],
    position: line === null ? null : { line, column: 1 },
    received: shortened,
    details: { file, ...details },
  };
}

const LONGEST_RECEIVED = 80;

interface Line {
  line: number;
  cells: string[];
}

function parseCsv(text: string): Line[] | { line: number } {
  const comments = text.replace(/^\uFEFF/, "").replace(/^#.*$/gm, "");
  try {
    const options = { relax_column_count: true, skip_empty_lines: true, trim: true, info: true } as const;
    const records = parse(comments, options) as unknown as { record: string[]; info: { lines: number } }[];
    const isBlank = ({ record }: { record: string[] }): boolean => record.every((cell) => cell === "");
    return records
      .filter((record) => !isBlank(record))
      .map(({ record, info }) => ({ line: info.lines, cells: record }));
  } catch (error) {
    const { lines } = error as CsvError & { lines?: number };
    if (typeof lines !== "number") throw error;
    return { line: lines };
  }
}

function problemsOfHeader({ line, cells }: Line, file: string, { what, required, optional }: TableForm): Problem[] {
  const known = [...required, ...optional];
  const missing = required.filter((column) => !cells.includes(column));
  const problems: Problem[] = [];
  if (missing.length > 0)
    problems.push(tableProblem("column-missing", file, line, { what, missing, known }, cells.join(",")));
  for (const [index, column] of cells.entries()) {
    if (cells.indexOf(column) < index)
      problems.push(tableProblem("column-twice", file, line, { what, column }, column));
    else if (!known.includes(column)) {
      problems.push(
        tableProblem("column-unknown", file, line, { what, column, near: nearNames(column, known), known }, column),
      );
    }
  }
  return problems;
}
