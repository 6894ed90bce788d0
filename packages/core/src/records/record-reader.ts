import type { Reading } from "../problems/types.ts";
import type { ProblemCode } from "../problems/wordings.ts";
import { requireObject, requireText } from "../require.ts";
import { splitLines } from "../tables/split-lines.ts";
import { looksBinary, type TextLine } from "../tables/text-lines.ts";
import { columnsInWords } from "./choose-columns.ts";
import { createOrderFinder } from "./date-order.ts";
import { createLineSplitter } from "./line-splitter.ts";
import { createMonthSummer } from "./month-sums.ts";
import { findLayout, type RecordLayout } from "./record-layout.ts";
import { LINES_BEFORE_HEADINGS, LONGEST_RECORD_LINE } from "./record-limits.ts";
import { collectRecordProblems } from "./record-problems.ts";
import { createRowReader, type RowReader } from "./row-reader.ts";
import { sumsToMonths } from "./sums-to-months.ts";
import type { RecordMonths, RecordOptions } from "./types.ts";
import { airPressureAt } from "./wet-bulb.ts";

/** Reads weather records piece by piece. */
export interface RecordReader {
  /** Takes the next piece of the text, which may end anywhere. */
  take(piece: string): void;
  /** Returns the months, or every problem of the records. Call it once, after the last piece. */
  finish(): Reading<RecordMonths>;
}

/**
 * Makes a reader that turns hourly or daily weather records into twelve months. It takes the text in pieces and keeps
 * only sums. The first lines wait until the headings are found, and dates such as `03/04/2005` until one of them shows
 * whether day or month comes first.
 *
 * @param options - columns, units and date order, where headings and values do not show them
 * @returns the reader
 */
export function createRecordReader(options: RecordOptions = {}): RecordReader {
  requireObject(options, "options");
  const problems = collectRecordProblems();
  const summer = createMonthSummer();
  const splitter = createLineSplitter();
  let waiting: TextLine[] = [];
  let layout: RecordLayout | null = null;
  let readRows: RowReader | null = null;
  const orderFinder = createOrderFinder(options.dateOrder ?? null);
  let stopped = false;

  const stop = (code: ProblemCode, line: number | null, received: string | null): void => {
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
    const fresh = lines.filter(holdsData);
    for (const line of fresh) waiting.push(line);
    const headed = layout !== null;
    if (!stopped && layout === null && waiting.length > 0 && (atEnd || waiting.length >= LINES_BEFORE_HEADINGS))
      begin();
    if (layout === null || stopped) return;
    if (layout.columns.time.kind === "date" && !orderFinder.settled()) {
      orderFinder.take(datesIn(headed ? fresh : waiting, layout, layout.columns.time.date));
      if (!orderFinder.settled() && !atEnd) return;
    }
    readRows!(waiting, orderFinder.order());
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
 * @param options - columns, units and date order, where headings and values do not show them
 * @returns the months, or every problem of the records
 */
export function readRecords(text: string, options: RecordOptions = {}): Reading<RecordMonths> {
  requireText(text, "text");
  const reader = createRecordReader(options);
  for (let start = 0; start < text.length; start += LENGTH_OF_PIECE) {
    reader.take(text.slice(start, start + LENGTH_OF_PIECE));
  }
  return reader.finish();
}

/** Length of the pieces in which a whole text is read [characters]. */
const LENGTH_OF_PIECE = 250_000;

function holdsData({ text }: TextLine): boolean {
  const start = text.trimStart();
  return start !== "" && !start.startsWith("#");
}

function datesIn(lines: readonly TextLine[], { delimiter }: RecordLayout, column: number): string[] {
  return splitLines(lines, delimiter).map((cells) => cells?.[column] ?? "");
}
