import type { Project, ProjectResult } from "@warmside/core";
import { jsonText } from "./answers/json-text.ts";
import { shortAnswers } from "./answers/short-answer.ts";
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

/**
 * From a project file to a report: reads it, makes sure the report may be written, works it out, writes and answers.
 *
 * @param file - path of the project file
 * @param options - `--out`, `--json`, `--pdf`
 * @param standing - where the user stands
 * @param workOut - project to result: assessing, or one of the studies
 * @param comparison - how much is told of variants
 * @returns what to print
 */
export async function reportCommand(
  file: string,
  options: ReportOptions,
  standing: Standing,
  workOut: (project: Project) => Promise<ProjectResult>,
  comparison: "short" | "whole" = "short",
): Promise<Outcome> {
  const asJson = options.json === true;
  return await withProblemsAsJson(asJson, async () => {
    const browser = options.pdf === true ? findChromium(standing.environment) : null;
    const { input, paths, reading } = readProjectFile(file, standing);
    if (!reading.ok) return refusedProject(reading.problems, file, asJson, standing);
    const places = placesOfReport(input.path, options, paths, standing);
    await breathe();
    const result = await workOut(reading.value);
    await breathe();
    if (places !== null) await writeReport(result, places, browser, comparison);
    if (asJson) return done(jsonText(result), placesInWords(places));
    return done(`${shortAnswers(result, standing.answers, comparison === "whole")}\n${placesInWords(places)}`);
  });
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
