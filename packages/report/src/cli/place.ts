import type { Command } from "commander";
import type { CommandResult } from "./command-result.ts";
import type { Registration } from "./registration.ts";
import { type ReportFlags, withReportFlags } from "./report-flags.ts";

/** `warmside place FILE`: the vapour layer in each sensible position, in several climates, heated and cooled. */
export const registerPlace: Registration = (program: Command, run): void => {
  withReportFlags(program.command("place"))
    .argument("<file>", "project file (YAML or JSON)")
    .summary("try the vapour layer elsewhere, here and in other climates")
    .description(
      "Calculates every build-up with its vapour layer towards the room, within the insulation, towards the outer side, " +
        "left out and on both faces: in the project's climate and in a cold, a hot humid and a hot dry one (or those of " +
        "`climates for place`), heated and cooled. Writes the report with these grids beside the file, as " +
        "NAME-place-report.html, and prints what each shows.",
    )
    .addHelpText("after", "\nExample:\n  warmside place studio.yaml --out where-the-layer-goes.html\n")
    .action((file: string, options: ReportFlags) =>
      run(async (context): Promise<CommandResult> => {
        const { reportCommand } = await import("./report-command.ts");
        return await reportCommand(file, options, { name: "place" }, context);
      }),
    );
};
