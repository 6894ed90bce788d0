import type { Reading } from "../problems/types.ts";
import { splitLines } from "../tables/split-lines.ts";
import { looksBinary, type TextLine } from "../tables/text-lines.ts";
import { columnsInWords } from "./choose-columns.ts";
import { dateOrderOf, needsDateOrder } from "./date-order.ts";
import { createLineSplitter } from "./line-splitter.ts";
import { createMonthSummer } from "./month-sums.ts";
import { findLayout, type RecordLayout } from "./record-layout.ts";
import { LINES_BEFORE_HEADINGS, LONGEST_RECORD_LINE } from "./record-limits.ts";
import { collectRecordProblems } from "./record-problems.ts";
import { createRowReader, type RowReader } from "./row-reader.ts";
import { sumsToMonths } from "./sums-to-months.ts";
import type { DateOrder, RecordMonths, RecordOptions } from "./types.ts";
import { airPressureAt } from "./wet-bulb.ts";

/** Reads weather records piece by piece. */
export interface RecordReader {
  /** The next piece of the text; it may end anywhere. */
  take(piece: string): void;
  /** The months, or every problem of the records; once, after the last piece. */
  finish(): Reading<RecordMonths>;
}

/**
 * A reader that turns hourly or daily weather records into twelve months. Text goes in as pieces, only sums are kept.
 * The first lines wait until the headings are found, and dates such as `03/04/2005` until one tells day from month.
 *
 * @param options - columns, units and date order where headings and values do not tell
 * @returns the reader
 */
export function createRecordReader(options: RecordOptions = {}): RecordReader {
  const problems = collectRecordProblems();
  const summer = createMonthSummer();
  const splitter = createLineSplitter();
  let waiting: TextLine[] = [];
  let layout: RecordLayout | null = null;
  let readRows: RowReader | null = null;
  let order: DateOrder | null = options.dateOrder ?? null;
  let orderSettled = order !== null;
  let stopped = false;

  const stop = (code: string, line: number | null, received: string | null): void => {
    problems.note(code, line, received);
    stopped = true;
  };

  const begin = (): void => {
    const found = findLayout(waiting, options);
    if ("faults" in found) {
      for (const { code, details } of found.faults) problems.note(code, found.line.number, found.line.text, details);
      stopped = true;
      return;
    }
    const altitude = options.altitude ?? null;
    if (found.columns.humidity.role === "wet bulb" && altitude === null) {
      problems.note("records-wet-bulb-altitude", found.headingLine, null);
    }
    layout = found;
    readRows = createRowReader(found, airPressureAt(altitude ?? 0), summer, problems);
    waiting = waiting.filter((line) => line.number > found.headingLine);
  };

  const takeLines = (lines: readonly TextLine[], atEnd: boolean): void => {
    const long = lines.find((line) => line.text.length > LONGEST_RECORD_LINE);
    if (long !== undefined) stop("records-line-too-long", long.number, long.text);
    waiting.push(...lines.filter(holdsData));
    if (!stopped && layout === null && waiting.length > 0 && (atEnd || waiting.length >= LINES_BEFORE_HEADINGS))
      begin();
    if (layout === null || stopped) return;
    if (!orderSettled) {
      const dates = datesIn(waiting, layout);
      order = dateOrderOf(dates);
      orderSettled = atEnd || order !== null || !dates.some(needsDateOrder);
    }
    if (!orderSettled) return;
    readRows!(waiting, order);
    waiting = [];
  };

  return {
    take(piece): void {
      if (stopped) return;
      if (looksBinary(piece)) stop("records-binary", null, null);
      else takeLines(splitter.take(piece), false);
      if (splitter.waiting() > LONGEST_RECORD_LINE) stop("records-line-too-long", null, null);
    },
    finish(): Reading<RecordMonths> {
      if (!stopped) takeLines(splitter.finish(), true);
      if (!stopped && layout === null) stop("records-empty", null, null);
      if (stopped || layout === null) return { ok: false, problems: problems.list() };
      const inWords = columnsInWords(layout.columns, layout.headings);
      return sumsToMonths(summer.sums, layout.columns, inWords, problems);
    },
  };
}

/**
 * Turns the whole text of weather records into twelve months.
 *
 * @param text - the records
 * @param options - columns, units and date order where headings and values do not tell
 * @returns the months, or every problem of the records
 */
export function readRecords(text: string, options: RecordOptions = {}): Reading<RecordMonths> {
  const reader = createRecordReader(options);
  reader.take(text);
  return reader.finish();
}

function holdsData({ text }: TextLine): boolean {
  const start = text.trimStart();
  return start !== "" && !start.startsWith("#");
}

function datesIn(lines: readonly TextLine[], { columns, delimiter }: RecordLayout): string[] {
  const { time } = columns;
  if (time.kind !== "date") return [];
  return splitLines(lines, delimiter).map((cells) => cells?.[time.date] ?? "");
}
