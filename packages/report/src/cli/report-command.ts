import type { Project, ProjectResult } from "@warmside/core";
import { jsonText } from "./answers/json-text.ts";
import { shortAnswers } from "./answers/short-answer.ts";
import { besideInput } from "./files/output-place.ts";
import { writeWhole } from "./files/write-whole.ts";
import { breathe } from "./interruption.ts";
import { done, type Outcome } from "./outcome.ts";
import { findChromium } from "./pdf/find-chromium.ts";
import { printToPdf } from "./pdf/print-to-pdf.ts";
import { readProjectFile } from "./project-file.ts";
import { refusedProject, withProblemsAsJson } from "./refused-project.ts";
import { placesOfReport, type ReportPlaces } from "./report-places.ts";
import type { Standing } from "./standing.ts";

/** The flags that every command with a report takes. */
export interface ReportOptions {
  out?: string;
  json?: boolean;
  pdf?: boolean;
}

/** What a command works out and how its report is called. */
export interface ReportedWork {
  /** The study, which stands in the report's name; null for the assessment alone. */
  study: "place" | "compare" | "vary" | "spread" | null;
  /** Project to result: assessing, or one of the studies. */
  workOut: (project: Project) => Promise<ProjectResult>;
}

/**
 * From a project file to a report: reads it, makes sure the report may be written, works it out, writes and answers.
 *
 * @param file - path of the project file
 * @param options - `--out`, `--json`, `--pdf`
 * @param standing - where the user stands
 * @param work - what is worked out
 * @returns what to print
 */
export async function reportCommand(
  file: string,
  options: ReportOptions,
  standing: Standing,
  { study, workOut }: ReportedWork,
): Promise<Outcome> {
  const asJson = options.json === true;
  const comparison = study === "compare" ? "whole" : "short";
  return await withProblemsAsJson(asJson, async () => {
    const browser = options.pdf === true ? findChromium(standing.environment) : null;
    const { input, paths, reading } = readProjectFile(file, standing);
    if (!reading.ok) return refusedProject(reading.problems, file, asJson, standing);
    const places = placesOfReport(besideInput(input.path, endingOf(study)), options, paths, standing);
    await breathe();
    const result = await workOut(reading.value);
    await breathe();
    if (places !== null) await writeReport(result, places, browser, comparison);
    if (asJson) return done(jsonText(result), placesInWords(places));
    return done(`${shortAnswers(result, standing.answers, comparison === "whole")}\n${placesInWords(places)}`);
  });
}

/** A study leaves the report of the assessment, and those of other studies, as they are. */
function endingOf(study: ReportedWork["study"]): string {
  return study === null ? "-report.html" : `-${study}-report.html`;
}

async function writeReport(
  result: ProjectResult,
  places: ReportPlaces,
  browser: string | null,
  comparison: "short" | "whole",
): Promise<void> {
  const { renderReport } = await import("../render-report.ts");
  const page = await renderReport(result, { comparison });
  await breathe();
  const files = [{ ...places.page, content: page as string | Uint8Array }];
  if (places.pdf !== null && browser !== null) files.push({ ...places.pdf, content: await printToPdf(page, browser) });
  await breathe();
  await writeWhole(files);
}

function placesInWords(places: ReportPlaces | null): string {
  if (places === null) return "";
  const pdf = places.pdf === null ? "" : `PDF: ${places.pdf.shown}\n`;
  return `Report: ${places.page.shown}\n${pdf}`;
}
