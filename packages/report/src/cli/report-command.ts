import type { Calculation } from "./calculation/calculation.ts";
import { withCalculation } from "./calculation/open-calculation.ts";
import type { Study } from "./calculation/study.ts";
import { calculationProgress } from "./calculation-progress.ts";
import { type CommandContext, foldersOf } from "./command-context.ts";
import { type CommandResult, done } from "./command-result.ts";
import { besideInput } from "./files/output-place.ts";
import { type OutputFile, writeWhole } from "./files/write-whole.ts";
import { whenInterrupted } from "./interruption.ts";
import { groups, type Line, line } from "./lines.ts";
import { findChromium } from "./pdf/find-chromium.ts";
import { printToPdf } from "./pdf/print-to-pdf.ts";
import { withProblemsAsJson } from "./problems-as-json.ts";
import { type ReportFlags, reportOptions } from "./report-flags.ts";
import { placesOfReport, type ReportPlaces } from "./report-places.ts";

/**
 * From a project file to a report: reads the file, checks where the report may go, assesses, writes and answers.
 *
 * @param file - path of the project file
 * @param flags - those of every report
 * @param study - what is worked out
 * @param context - where the user stands
 * @returns what to print
 */
export async function reportCommand(
  file: string,
  flags: ReportFlags,
  study: Study,
  context: CommandContext,
): Promise<CommandResult> {
  const asJson = flags.json === true;
  const browser = flags.pdf === true ? findChromium(context.environment) : null;
  const progress = calculationProgress(context.progress);
  const work = async (calculation: Calculation): Promise<CommandResult> => {
    const read = await calculation.read(file, foldersOf(context), asJson);
    if (read.refused !== null) return read.refused;
    const usual = besideInput(read.paths[0]!, endingOf(study));
    const places = placesOfReport(usual, flags, read.paths, context);
    progress.begin(read);
    const forget = whenInterrupted(async () => {
      progress.clear();
      if (study.name === "spread") await context.say(await calculation.soFar());
    });
    try {
      const answer = await calculation.workOut(study, asJson);
      if (places !== null) await writeReport(calculation, places, browser, study, flags);
      const told = placesInWords(places);
      return "asIs" in answer ? done(answer, told) : done(groups(answer, told));
    } finally {
      forget();
      progress.clear();
    }
  };
  return await withProblemsAsJson(asJson, () => withCalculation(progress.tell, work));
}

/** A study leaves the report of the assessment, and those of other studies, as they are. */
function endingOf({ name }: Study): string {
  return name === "assess" ? "-report.html" : `-${name}-report.html`;
}

async function writeReport(
  calculation: Calculation,
  { page, pdf }: ReportPlaces,
  browser: string | null,
  study: Study,
  flags: ReportFlags,
): Promise<void> {
  const comparison = study.name === "compare" ? "whole" : "short";
  const text = await calculation.render({ ...reportOptions(flags), comparison });
  const files: OutputFile[] = [{ ...page, content: text }];
  if (pdf !== null && browser !== null) files.push({ ...pdf, content: await printToPdf(text, browser) });
  await writeWhole(files);
}

function placesInWords(places: ReportPlaces | null): Line[] {
  if (places === null) return [];
  return [line(`Report: ${places.page.shown}`), ...(places.pdf === null ? [] : [line(`PDF: ${places.pdf.shown}`)])];
}
