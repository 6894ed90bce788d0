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
import { columnOfCell } from "./column-of-cell.ts";
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
  if (headingLine === undefined) return refused(climateProblem("climate-no-rows", null, null));
  const { number, text } = headingLine;
  const found = delimiterInsteadOfComma(text);
  if (found !== null) return refused(climateProblem("climate-delimiter", number, text, { found }));
  const headings = cellsOf(text);
  if (headings === null) return refused(unreadable(headingLine));
  const wrongHeadings = checkHeadings(headings, headingLine);
  if (wrongHeadings.length > 0) return refused(...wrongHeadings);
  if (dataLines.length === 0) return refused(climateProblem("climate-no-rows", null, null));
  const { rows, problems } = readRows(dataLines.slice(0, MOST_CLIMATE_ROWS), headings);
  const surplus = dataLines[MOST_CLIMATE_ROWS];
  if (surplus === undefined) return { rows, problems: [...problems, ...checkMonths(rows)] };
  const tooMany = climateProblem("climate-too-many-rows", surplus.number, null, { rows: dataLines.length });
  return { rows, problems: [...problems, tooMany] };
}

function refused(...problems: Problem[]): { rows: ClimateRow[]; problems: Problem[] } {
  return { rows: [], problems };
}

function readRows(
  lines: readonly TextLine[],
  headings: readonly string[],
): { rows: ClimateRow[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const raggedLines: TextLine[] = [];
  const rows = lines.map((line): ClimateRow => {
    const cells = cellsOf(line.text);
    if (cells === null) {
      problems.push(unreadable(line));
      return { line: line.number, month: null, temperature: null, relativeHumidity: null };
    }
    if (cells.length !== headings.length) {
      raggedLines.push(line);
      return { line: line.number, month: monthIndex(cells[0]!), temperature: null, relativeHumidity: null };
    }
    const cell = (name: (typeof CLIMATE_COLUMNS)[number]): Cell => {
      const index = headings.findIndex((heading) => sameHeading(heading, name));
      return { name, text: cells[index]!, line: line.number, column: columnOfCell(line.text, index) };
    };
    const month = readMonth(cell("month"), problems);
    const temperature = readTemperature(cell("temperature_C"), problems);
    const relativeHumidity = readHumidity(cell("relative_humidity_pct"), problems);
    return { line: line.number, month, temperature, relativeHumidity };
  });
  if (raggedLines.length > 0) problems.push(ragged(raggedLines, headings.length));
  return { rows, problems: joinFractions(problems) };
}

/** One cell with its place in the text. */
interface Cell {
  name: string;
  text: string;
  line: number;
  column: number;
}

function readMonth(cell: Cell, problems: Problem[]): number | null {
  const month = monthIndex(cell.text);
  if (month === null) problems.push(problemOf("climate-month-unknown", cell));
  return month;
}

function readTemperature(cell: Cell, problems: Problem[]): number | null {
  const temperature = readNumber(cell, problems);
  if (temperature === null) return null;
  if (temperature >= COLDEST_MONTH && temperature <= WARMEST_MONTH) return temperature;
  problems.push(problemOf("climate-temperature-range", cell, { least: COLDEST_MONTH, greatest: WARMEST_MONTH }));
  return null;
}

function readHumidity(cell: Cell, problems: Problem[]): number | null {
  const percent = readNumber(cell, problems);
  if (percent === null) return null;
  if (percent > LEAST_HUMIDITY_PERCENT && percent <= GREATEST_HUMIDITY_PERCENT) return percent / 100;
  const isFraction = percent > 0 && percent <= LEAST_HUMIDITY_PERCENT;
  problems.push(
    isFraction
      ? problemOf("climate-humidity-fraction", cell, { percent: percent * 100 })
      : problemOf("climate-humidity-range", cell, {
          least: LEAST_HUMIDITY_PERCENT,
          greatest: GREATEST_HUMIDITY_PERCENT,
        }),
  );
  return null;
}

function readNumber(cell: Cell, problems: Problem[]): number | null {
  const number = plainNumber(cell.text);
  if (number !== null) return number;
  const decimalComma = hasDecimalComma(cell.text) ? "yes" : null;
  problems.push(problemOf("climate-number", cell, { column: cell.name, decimalComma }));
  return null;
}

function problemOf(code: string, cell: Cell, details: Problem["details"] = {}): Problem {
  return climateProblem(code, cell.line, cell.text === "" ? null : cell.text, details, cell.column);
}

/** A column written as fractions throughout is one slip, not twelve. */
function joinFractions(problems: readonly Problem[]): Problem[] {
  const [first, ...others] = problems.filter(({ code }) => code === "climate-humidity-fraction");
  if (first === undefined || others.length === 0) return [...problems];
  const joined = { ...first, details: { ...first.details, rows: others.length + 1 } };
  return problems.flatMap((problem) => (problem === first ? [joined] : others.includes(problem) ? [] : [problem]));
}

/** Rows with more or fewer cells than headings: one problem, as they nearly always share one cause. */
function ragged(lines: readonly TextLine[], expected: number): Problem {
  const first = lines[0]!;
  const found = cellsOf(first.text)!.length;
  const details = { expected, found, lines: lines.map((line) => String(line.number)) };
  return climateProblem("climate-row-cells", first.number, first.text, details);
}

function checkHeadings(headings: readonly string[], { number, text }: TextLine): Problem[] {
  const counts = CLIMATE_COLUMNS.map((column) => ({
    column,
    count: headings.filter((heading) => sameHeading(heading, column)).length,
  }));
  const miscounted = counts.filter(({ count }) => count !== 1);
  const known = miscounted.map(({ column, count }) => {
    const code = count === 0 ? "climate-column-missing" : "climate-column-twice";
    return climateProblem(code, number, text, { column, key: column });
  });
  const unknown = headings.flatMap((heading, index) => {
    if (CLIMATE_COLUMNS.some((column) => sameHeading(heading, column))) return [];
    return [climateProblem("climate-column-unknown", number, heading, { key: heading }, columnOfCell(text, index))];
  });
  return [...known, ...unknown];
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
