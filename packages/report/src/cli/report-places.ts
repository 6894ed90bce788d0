import { extname } from "node:path";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem } from "./command-result.ts";
import { type OutputPlace, type OwnMark, outputPlace } from "./files/output-place.ts";
import { PDF_MARK } from "./pdf/print-to-pdf.ts";

/** How a page of ours is known again. */
export const PAGE_MARK: OwnMark = { where: "beginning", text: '<meta name="generator" content="warmside' };

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
 * @param inputs - every file that was read
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
  return {
    page: outputPlace(pagePath, named !== undefined && !namesPdf, PAGE_MARK, inputs, context),
    pdf: withPdf ? outputPlace(pdfPath, namesPdf, PDF_MARK, inputs, context) : null,
  };
}

function replaceEnding(path: string, ending: string): string {
  return path.slice(0, path.length - extname(path).length) + ending;
}
