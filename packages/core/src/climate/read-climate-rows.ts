import { parse } from "csv-parse/browser/esm/sync";
import type { Problem } from "../problems/types.ts";
import {
  COLDEST_MONTH,
  GREATEST_HUMIDITY_PERCENT,
  LEAST_HUMIDITY_PERCENT,
  MOST_CLIMATE_ROWS,
  WARMEST_MONTH,
} from "./climate-limits.ts";
import { climateProblem } from "./climate-problem.ts";
import { checkMonths, monthIndex } from "./month-column.ts";
import { hasDecimalComma, plainNumber } from "./plain-number.ts";
import type { TextLine } from "./text-lines.ts";

/** One row of a climate table; what could not be read is null. */
export interface ClimateRow {
  line: number;
  month: number | null;
  /** [°C] */
  temperature: number | null;
  /** Fraction. */
  relativeHumidity: number | null;
}

/** The columns of a climate table, in the order in which tables are written. */
export const CLIMATE_COLUMNS = ["month", "temperature_C", "relative_humidity_pct"] as const;

/**
 * Reads the headings and the twelve rows of a climate table.
 *
 * @param lines - the table's lines without comments and empty lines, headings first
 * @returns the rows in the order of the text, with every problem found
 */
export function readClimateRows(lines: readonly TextLine[]): { rows: ClimateRow[]; problems: Problem[] } {
  const [headingLine, ...dataLines] = lines;
  if (headingLine === undefined) return { rows: [], problems: [climateProblem("climate-no-rows", null, null)] };
  const otherDelimiter = delimiterInsteadOfComma(headingLine.text);
  if (otherDelimiter !== null) {
    const problem = climateProblem("climate-delimiter", headingLine.number, headingLine.text, {
      found: otherDelimiter,
    });
    return { rows: [], problems: [problem] };
  }
  const headings = cellsOf(headingLine.text);
  const problems = headings === null ? [unreadable(headingLine)] : checkHeadings(headings, headingLine.number);
  if (problems.length > 0) return { rows: [], problems };
  if (dataLines.length === 0) return { rows: [], problems: [climateProblem("climate-no-rows", null, null)] };
  const rows = readRows(dataLines.slice(0, MOST_CLIMATE_ROWS), headings!, problems);
  const surplus = dataLines[MOST_CLIMATE_ROWS];
  if (surplus !== undefined) {
    problems.push(climateProblem("climate-too-many-rows", surplus.number, null, { rows: dataLines.length }));
  } else {
    problems.push(...checkMonths(rows));
  }
  return { rows, problems };
}

function readRows(lines: readonly TextLine[], headings: readonly string[], problems: Problem[]): ClimateRow[] {
  const rows: ClimateRow[] = [];
  const raggedLines: TextLine[] = [];
  const column = (name: string): number => headings.findIndex((heading) => sameHeading(heading, name));
  for (const line of lines) {
    const cells = cellsOf(line.text);
    if (cells === null) {
      problems.push(unreadable(line));
    } else if (cells.length !== headings.length) {
      raggedLines.push(line);
      rows.push({ line: line.number, month: monthIndex(cells[0]!), temperature: null, relativeHumidity: null });
    } else {
      const month = readMonth(cells[column("month")]!, line.number, problems);
      const temperature = readTemperature(cells[column("temperature_C")]!, line.number, problems);
      const relativeHumidity = readHumidity(cells[column("relative_humidity_pct")]!, line.number, problems);
      rows.push({ line: line.number, month, temperature, relativeHumidity });
    }
  }
  if (raggedLines.length > 0) problems.push(ragged(raggedLines, headings.length));
  joinFractions(problems);
  return rows;
}

function readMonth(cell: string, line: number, problems: Problem[]): number | null {
  const month = monthIndex(cell);
  if (month === null) problems.push(climateProblem("climate-month-unknown", line, cell));
  return month;
}

function readTemperature(cell: string, line: number, problems: Problem[]): number | null {
  const temperature = readNumber(cell, "temperature_C", line, problems);
  if (temperature === null) return null;
  if (temperature >= COLDEST_MONTH && temperature <= WARMEST_MONTH) return temperature;
  const details = { least: COLDEST_MONTH, greatest: WARMEST_MONTH };
  problems.push(climateProblem("climate-temperature-range", line, cell, details));
  return null;
}

function readHumidity(cell: string, line: number, problems: Problem[]): number | null {
  const percent = readNumber(cell, "relative_humidity_pct", line, problems);
  if (percent === null) return null;
  if (percent > 0 && percent <= LEAST_HUMIDITY_PERCENT) {
    problems.push(climateProblem("climate-humidity-fraction", line, cell, { percent: percent * 100 }));
    return null;
  }
  if (percent > 0 && percent <= GREATEST_HUMIDITY_PERCENT) return percent / 100;
  const details = { least: LEAST_HUMIDITY_PERCENT, greatest: GREATEST_HUMIDITY_PERCENT };
  problems.push(climateProblem("climate-humidity-range", line, cell, details));
  return null;
}

function readNumber(cell: string, column: string, line: number, problems: Problem[]): number | null {
  const number = plainNumber(cell);
  if (number !== null) return number;
  const details = { column, decimalComma: hasDecimalComma(cell) ? "yes" : null };
  problems.push(climateProblem("climate-number", line, cell === "" ? null : cell, details));
  return null;
}

/** A column written as fractions throughout is one slip, not twelve. */
function joinFractions(problems: Problem[]): void {
  const fractions = problems.filter((problem) => problem.code === "climate-humidity-fraction");
  const [first, ...others] = fractions;
  if (first === undefined || others.length === 0) return;
  for (const other of others) problems.splice(problems.indexOf(other), 1);
  const joined = { ...first, details: { ...first.details, rows: fractions.length } };
  problems.splice(problems.indexOf(first), 1, joined);
}

/** Rows with more or fewer cells than headings: one problem, as they nearly always share one cause. */
function ragged(lines: readonly TextLine[], expected: number): Problem {
  const first = lines[0]!;
  const found = cellsOf(first.text)!.length;
  const details = { expected, found, lines: lines.map((line) => String(line.number)) };
  return climateProblem("climate-row-cells", first.number, first.text, details);
}

function checkHeadings(headings: readonly string[], line: number): Problem[] {
  const problems: Problem[] = [];
  for (const column of CLIMATE_COLUMNS) {
    const count = headings.filter((heading) => sameHeading(heading, column)).length;
    if (count === 0) problems.push(climateProblem("climate-column-missing", line, headings.join(","), { column }));
    if (count > 1) problems.push(climateProblem("climate-column-twice", line, headings.join(","), { column }));
  }
  const unknown = headings.filter((heading) => !CLIMATE_COLUMNS.some((column) => sameHeading(heading, column)));
  for (const column of unknown) problems.push(climateProblem("climate-column-unknown", line, column));
  return problems;
}

function sameHeading(heading: string, column: string): boolean {
  return heading.toLowerCase() === column.toLowerCase();
}

function cellsOf(line: string): string[] | null {
  try {
    const rows = parse(line, { trim: true });
    return rows.length === 1 ? rows[0]! : null;
  } catch {
    return null;
  }
}

function unreadable(line: TextLine): Problem {
  return climateProblem("climate-row-unreadable", line.number, line.text);
}

function delimiterInsteadOfComma(headings: string): string | null {
  if (headings.includes(",")) return null;
  if (headings.includes(";")) return "semicolon";
  return headings.includes("\t") ? "tab" : null;
}
