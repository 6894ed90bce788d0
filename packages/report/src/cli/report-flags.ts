import type { Command } from "commander";
import type { DocumentStrip, ReportOptions } from "../render-report.ts";

/** The flags that every command with a report takes. */
export interface ReportFlags {
  out?: string;
  json?: boolean;
  pdf?: boolean;
  annex?: boolean;
  date?: string;
  revision?: string;
  preparedBy?: string;
  checkedBy?: string;
}

/**
 * Declares the flags of a command with a report.
 *
 * @param command - the command
 * @returns the same command
 */
export function withReportFlags(command: Command): Command {
  return command
    .option("--out <path>", "write the report to this path")
    .option("--json", "print the whole result as JSON; a report is written only with --out or --pdf")
    .option("--pdf", "write a PDF of the report too (needs Chromium or Chrome)")
    .option("--annex", "add the annex with every figure to the report")
    .option("--date <date>", "date to print on the report, as you write it; none is printed without")
    .option("--revision <text>", "revision to print on the report")
    .option("--prepared-by <name>", "who prepared the report")
    .option("--checked-by <name>", "who checked the report");
}

/**
 * What the report is told by the flags.
 *
 * @param flags - as given on the command line
 * @returns options of `renderReport`; what was not given is left out
 */
export function reportOptions({ annex, date, revision, preparedBy, checkedBy }: ReportFlags): ReportOptions {
  const strip: DocumentStrip = {
    ...(date === undefined ? {} : { date }),
    ...(revision === undefined ? {} : { revision }),
    ...(preparedBy === undefined ? {} : { preparedBy }),
    ...(checkedBy === undefined ? {} : { checkedBy }),
  };
  return { ...(annex === true ? { annex } : {}), ...(Object.keys(strip).length === 0 ? {} : { strip }) };
}
