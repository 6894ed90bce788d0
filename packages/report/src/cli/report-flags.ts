import type { Command } from "commander";
import type { DocumentStrip, ReportOptions } from "../render-report.ts";
import type { Study } from "./calculation/study.ts";
import type { CommandResult } from "./command-result.ts";
import type { Run } from "./registration.ts";

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
 * Declares a command with a report: its file, its flags, and that it works the study out and writes what it came to.
 *
 * @param program - the command line
 * @param run - called with the command's work
 * @param name - of the command
 * @param studyOf - what it calculates, from its own flags
 * @param file - what the file must be
 * @returns the command, for its words and further flags
 */
export function commandWithReport<Flags>(
  program: Command,
  run: Run,
  name: string,
  studyOf: (flags: Flags) => Study,
  file = "project file (YAML or JSON)",
): Command {
  return program
    .command(name)
    .argument("<file>", file)
    .option("--out <path>", "write the report to this path")
    .option("--json", "print the whole result as JSON; a report is written only with --out or --pdf")
    .option("--pdf", "write a PDF of the report too (needs Chromium or Chrome)")
    .option("--annex", "add the annex with every figure to the report")
    .option("--date <date>", "date to print on the report, as you write it; none is printed without")
    .option("--revision <text>", "revision to print on the report")
    .option("--prepared-by <name>", "who prepared the report")
    .option("--checked-by <name>", "who checked the report")
    .action((given: string, flags: ReportFlags & Flags) =>
      run(async (context): Promise<CommandResult> => {
        const { reportCommand } = await import("./report-command.ts");
        return await reportCommand(given, flags, studyOf(flags), context);
      }),
    );
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
