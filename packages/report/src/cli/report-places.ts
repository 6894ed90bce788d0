import { existsSync } from "node:fs";
import { basename, extname } from "node:path";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem } from "./command-result.ts";
import { otherProjectOf } from "./files/other-project-of.ts";
import { type OutputPlace, type OwnMark, outputPlace } from "./files/output-place.ts";
import { PDF_MARK } from "./pdf/print-to-pdf.ts";

/** How a page made by warmside is recognised. */
export const PAGE_MARK: OwnMark = {
  where: "beginning",
  text: '<meta name="generator" content="warmside',
  fingerprinted: true,
};

/** Where the report goes, and its PDF when one is asked for. */
export interface ReportPlaces {
  page: OutputPlace;
  pdf: OutputPlace | null;
}

/**
 * Settles where a report is written, before anything is worked out.
 *
 * @param usual - absolute path of the page where `--out` names no other
 * @param options - `--out`, `--json`, `--pdf`
 * @param inputs - every file that was read, the project file first
 * @param context - where the user stands
 * @returns the places; null when `--json` alone asks for no file
 * @throws CommandProblem when one of them must not be written
 */
export function placesOfReport(
  usual: string,
  options: { out?: string; json?: boolean; pdf?: boolean },
  inputs: readonly string[],
  context: CommandContext,
): ReportPlaces | null {
  const withPdf = options.pdf === true;
  if (options.json === true && options.out === undefined && !withPdf) return null;
  const named = options.out;
  const namesPdf = named !== undefined && extname(named).toLowerCase() === ".pdf";
  if (namesPdf && !withPdf) {
    throw new CommandProblem(
      "page-named-pdf",
      `The report is an HTML page, and ${named} ends in .pdf. Add --pdf, or end the name in .html.`,
    );
  }
  const pagePath = namesPdf ? replaceEnding(named, ".html") : (named ?? usual);
  const pdfPath = namesPdf ? named : replaceEnding(pagePath, ".pdf");
  if (named === undefined) checkSharedName(usual, inputs[0]!);
  return {
    page: outputPlace(pagePath, named !== undefined && !namesPdf, PAGE_MARK, inputs, context),
    pdf: withPdf ? outputPlace(pdfPath, namesPdf, PDF_MARK, inputs, context) : null,
  };
}

/** A report that is there may be that of another project file beside this one. */
function checkSharedName(usual: string, input: string): void {
  const other = existsSync(usual) ? otherProjectOf(usual, input) : null;
  if (other === null) return;
  throw new CommandProblem(
    "shared-name",
    `${basename(usual)} already exists and may be the report of ${other}: a report of ${basename(input)} would have the same name. Name another with --out.`,
  );
}

function replaceEnding(path: string, ending: string): string {
  return path.slice(0, path.length - extname(path).length) + ending;
}
