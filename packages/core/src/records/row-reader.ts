import { splitLines } from "../tables/split-lines.ts";
import type { TextLine } from "../tables/text-lines.ts";
import type { MonthSummer } from "./month-sums.ts";
import { createNumberReader } from "./number-cell.ts";
import { createReadingReader } from "./read-reading.ts";
import { readTime } from "./read-time.ts";
import type { RecordLayout } from "./record-layout.ts";
import type { RecordProblems } from "./record-problems.ts";
import type { DateOrder } from "./types.ts";

/** Takes the rows below the headings. `order` says which number comes first in `03/04/2005`; null when not known. */
export type RowReader = (lines: readonly TextLine[], order: DateOrder | null) => void;

/**
 * Makes a reader of rows of weather records. Every row gives a reading, a time without a reading, or a problem.
 *
 * @param layout - delimiter, headings and columns
 * @param airPressure - mean air pressure of the station [Pa], for wet-bulb temperatures
 * @param summer - takes times and readings
 * @param problems - takes what is wrong
 * @returns the reader
 */
export function createRowReader(
  layout: RecordLayout,
  airPressure: number,
  summer: MonthSummer,
  problems: RecordProblems,
): RowReader {
  const { delimiter, headings, columns } = layout;
  const readReading = createReadingReader(columns, headings, createNumberReader(), airPressure, problems);

  const takeRow = (cells: readonly string[] | null, line: TextLine, order: DateOrder | null): void => {
    if (cells === null) {
      problems.note("records-row-unreadable", line.number, line.text);
      return;
    }
    if (!hasCells(cells, headings.length)) {
      const details = { expected: headings.length, found: cells.length };
      problems.note("records-row-cells", line.number, line.text, details);
      return;
    }
    const time = readTime(cells, columns.time, order);
    if ("fault" in time) {
      problems.note("records-date", line.number, time.cell, { fault: time.fault });
      return;
    }
    summer.see(time.moment);
    const reading = readReading(cells, line.number);
    if (reading === null) summer.refuse(time.moment);
    else if (reading !== "missing") summer.add(time.moment, reading);
  };

  return (lines, order) => {
    const rows = splitLines(lines, delimiter);
    for (const [index, cells] of rows.entries()) takeRow(cells, lines[index]!, order);
  };
}

/** Whether a row has as many cells as there are headings; any further cells must be empty. */
function hasCells(cells: readonly string[], expected: number): boolean {
  return cells.length >= expected && cells.slice(expected).every((cell) => cell === "");
}
