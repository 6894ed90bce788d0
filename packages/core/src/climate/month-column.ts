import { MONTH_NAMES, MONTHS_PER_YEAR } from "../constants.ts";
import type { Problem } from "../problems/types.ts";
import { tableProblem } from "../tables/table-problem.ts";

/**
 * The month that a cell names, by its English name, the first three letters of the name, or its number.
 *
 * @param cell - one cell, trimmed
 * @returns 0 for January to 11 for December; null for anything else
 * @example monthIndex("Mar") // 2
 */
export function monthIndex(cell: string): number | null {
  if (MONTH_NUMBER.test(cell)) {
    const number = Number(cell);
    return number >= 1 && number <= MONTHS_PER_YEAR ? number - 1 : null;
  }
  const word = cell.toLowerCase().replace(/\.$/, "");
  const index = MONTH_NAMES.findIndex((name) => {
    const month = name.toLowerCase();
    return word === month || word === month.slice(0, ABBREVIATION_LENGTH);
  });
  return index === -1 ? null : index;
}

/**
 * Checks that rows are the twelve months, January to December, each once.
 *
 * @param rows - rows in the order of the text; a month that could not be read is null
 * @returns every problem: a month given twice, months missing, or all twelve in the wrong order
 */
export function checkMonths(rows: readonly { line: number; month: number | null }[]): Problem[] {
  const firstLine = new Map<number, number>();
  const problems: Problem[] = [];
  for (const { line, month } of rows) {
    if (month === null) continue;
    const earlier = firstLine.get(month);
    if (earlier === undefined) firstLine.set(month, line);
    else problems.push(tableProblem("climate-month-twice", line, MONTH_NAMES[month]!, { firstLine: earlier }));
  }
  const missing = MONTH_NAMES.filter((_, index) => !firstLine.has(index));
  const unknown = rows.filter((row) => row.month === null).length;
  if (missing.length > unknown) {
    problems.push(tableProblem("climate-month-missing", null, null, { missing, rows: rows.length }));
  }
  if (problems.length === 0 && unknown === 0) problems.push(...checkOrder(rows));
  return problems;
}

function checkOrder(rows: readonly { line: number; month: number | null }[]): Problem[] {
  const misplaced = rows.find((row, index) => row.month !== index);
  if (misplaced === undefined) return [];
  const received = MONTH_NAMES[misplaced.month!]!;
  const expected = MONTH_NAMES[rows.indexOf(misplaced)]!;
  return [tableProblem("climate-month-order", misplaced.line, received, { expected })];
}

const MONTH_NUMBER = /^\d{1,2}$/;
const ABBREVIATION_LENGTH = 3;
