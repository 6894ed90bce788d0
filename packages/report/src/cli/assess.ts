import type { Project, ProjectResult } from "@warmside/core";
import type { Command } from "commander";
import type { Outcome } from "./outcome.ts";
import type { Registration } from "./registration.ts";
import type { ReportOptions } from "./report-command.ts";

/** `warmside assess FILE`: works every build-up out, writes the report and prints the short answers. */
export const registerAssess: Registration = (program: Command, run): void => {
  program
    .command("assess")
    .argument("<file>", "project file (YAML or JSON)")
    .summary("work out every build-up and write the report")
    .description(
      "Works out whether water condenses inside each build-up, whether it dries out, its U-value and what to change. " +
        "Writes one HTML report beside the file, as NAME-report.html, and prints the short answers.",
    )
    .option("--out <path>", "write the report to this path")
    .option("--json", "print the whole result as JSON; a report is written only with --out or --pdf")
    .option("--pdf", "write a PDF of the report too (needs Chromium or Chrome)")
    .addHelpText("after", "\nExample:\n  warmside assess studio.yaml --out for-building-control.html\n")
    .action((file: string, options: ReportOptions) =>
      run(async (standing): Promise<Outcome> => {
        const { reportCommand } = await import("./report-command.ts");
        return await reportCommand(file, options, standing, { study: null, workOut: assess });
      }),
    );
};

async function assess(project: Project): Promise<ProjectResult> {
  const { assessProject } = await import("@warmside/core");
  return assessProject(project);
}
