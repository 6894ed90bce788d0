import type { Project, ProjectResult } from "@warmside/core";
import type { ReportOptions } from "../render-report.ts";
import { json } from "./answers/json.ts";
import { shortAnswers } from "./answers/short-answer.ts";
import type { CommandContext } from "./command-context.ts";
import { type CommandResult, done } from "./command-result.ts";
import { besideInput } from "./files/output-place.ts";
import { writeWhole } from "./files/write-whole.ts";
import { breathe } from "./interruption.ts";
import { groups, type Line, line } from "./lines.ts";
import { findChromium } from "./pdf/find-chromium.ts";
import { printToPdf } from "./pdf/print-to-pdf.ts";
import { readProjectFile } from "./project-file.ts";
import { refusedProject, withProblemsAsJson } from "./refused-project.ts";
import { type ReportFlags, reportOptions } from "./report-flags.ts";
import { placesOfReport, type ReportPlaces } from "./report-places.ts";

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
 * @param flags - those of every report
 * @param context - where the user stands
 * @param work - what is worked out
 * @returns what to print
 */
export async function reportCommand(
  file: string,
  flags: ReportFlags,
  context: CommandContext,
  { study, workOut }: ReportedWork,
): Promise<CommandResult> {
  const asJson = flags.json === true;
  const wanted = { ...reportOptions(flags), comparison: study === "compare" ? ("whole" as const) : ("short" as const) };
  return await withProblemsAsJson(asJson, async () => {
    const browser = flags.pdf === true ? findChromium(context.environment) : null;
    const { input, paths, reading } = readProjectFile(file, context);
    if (!reading.ok) return refusedProject(reading.problems, file, asJson);
    const places = placesOfReport(besideInput(input.path, endingOf(study)), flags, paths, context);
    await breathe();
    const result = await workOut(reading.value);
    await breathe();
    if (places !== null) await writeReport(result, places, browser, wanted);
    if (asJson) return done(json(result), placesInWords(places));
    return done(groups(shortAnswers(result, study === "compare"), placesInWords(places)));
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
  wanted: ReportOptions,
): Promise<void> {
  const { renderReport } = await import("../render-report.ts");
  const page = await renderReport(result, wanted);
  await breathe();
  const files = [{ ...places.page, content: page as string | Uint8Array }];
  if (places.pdf !== null && browser !== null) files.push({ ...places.pdf, content: await printToPdf(page, browser) });
  await breathe();
  await writeWhole(files);
}

function placesInWords(places: ReportPlaces | null): Line[] {
  if (places === null) return [];
  return [line(`Report: ${places.page.shown}`), ...(places.pdf === null ? [] : [line(`PDF: ${places.pdf.shown}`)])];
}
