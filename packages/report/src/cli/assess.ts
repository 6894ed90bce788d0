import type { Command } from "commander";
import type { CommandResult } from "./command-result.ts";
import type { Registration } from "./registration.ts";
import { type ReportFlags, withReportFlags } from "./report-flags.ts";

/** `warmside assess FILE`: assesses every build-up, writes the report and prints the short answers. */
export const registerAssess: Registration = (program: Command, run): void => {
  withReportFlags(program.command("assess"))
    .argument("<file>", "project file (YAML or JSON)")
    .summary("assess every build-up and write the report")
    .description(
      "Calculates whether water condenses inside each build-up, whether it dries out, its U-value and what to change. " +
        "Writes one HTML report beside the file, as NAME-report.html, and prints the short answers.",
    )
    .addHelpText("after", "\nExample:\n  warmside assess studio.yaml --out for-building-control.html\n")
    .action((file: string, options: ReportFlags) =>
      run(async (context): Promise<CommandResult> => {
        const { reportCommand } = await import("./report-command.ts");
        return await reportCommand(file, options, { name: "assess" }, context);
      }),
    );
};
