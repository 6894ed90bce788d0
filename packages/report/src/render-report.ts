import type { ProjectResult } from "@warmside/core";
import { embeddedData } from "./embedded-data.ts";
import { shorten } from "./escape.ts";
import { document } from "./page.ts";
import { buildUpPages } from "./sections/build-up.ts";
import { cautions } from "./sections/cautions.ts";
import { checklist } from "./sections/checklist.ts";
import { contents } from "./sections/contents.ts";
import { firstPage } from "./sections/first-page.ts";
import { leftOut } from "./sections/left-out.ts";
import { method } from "./sections/method.ts";
import { signature } from "./sections/signature.ts";
import { sources } from "./sections/sources.ts";
import { workedOutFor } from "./sections/worked-out-for.ts";
import { styleSheet } from "./style.ts";

/** What a document says of itself; only what the caller gives is printed. */
export interface DocumentStrip {
  /** As the caller words it. */
  date?: string;
  revision?: string;
  preparedBy?: string;
  checkedBy?: string;
}

/** What the caller may add; nothing else gets in. */
export interface ReportOptions {
  /** Whether the annex with every figure is added (default not). */
  annex?: boolean;
  strip?: DocumentStrip;
  /** Date of the report, worded by the caller; none is printed without. */
  date?: string;
  /** How much is told of the variants: a short table, or everything (default short). */
  comparison?: "short" | "whole";
  /** Style rules of the caller's own, after the page's own; its colours are custom properties. */
  style?: string;
}

/**
 * The report of a project: one self-contained HTML text.
 *
 * @param result - what `assessProject` gives
 * @param options - a date to print, how much is told of variants, style rules
 * @returns the file's text; the same result and options give the same text everywhere
 * @throws Error when a figure of the result is not finite or a plot cannot be drawn
 */
export async function renderReport(result: ProjectResult, options: ReportOptions = {}): Promise<string> {
  const place = await workedOutFor(result);
  const { comparison = "short" } = options;
  const buildUps = await Promise.all(
    result.buildUps.map((buildUp, index) => buildUpPages(result, buildUp, index + 1, comparison)),
  );
  return document({
    title: `${shorten(result.project, LONGEST_TITLE)}: moisture and heat report`,
    language: "en-GB",
    style: styleSheet(result, options.style),
    first: firstPage(result, options.date ?? null),
    contents: contents(result),
    main: [
      place,
      ...buildUps,
      method(result),
      leftOut(),
      cautions(),
      sources(result),
      checklist(result),
      signature(result),
    ],
    data: embeddedData(result, comparison),
  });
}

const LONGEST_TITLE = 120;
