import type { Command } from "commander";
import type { CommandResult } from "./command-result.ts";
import type { Registration } from "./registration.ts";
import { type ReportFlags, withReportFlags } from "./report-flags.ts";
import type { VariationChoice } from "./vary/variation-of.ts";

/** `warmside vary FILE`: one layer in many thicknesses, and where the judgement turns. */
export const registerVary: Registration = (program: Command, run): void => {
  withReportFlags(program.command("vary"))
    .argument("<file>", "project file (YAML or JSON)")
    .summary("one layer in many thicknesses: how thick is enough?")
    .description(
      "Calculates a build-up with one layer in many thicknesses (0 is without it): the curve of U and of the most " +
        "water, and the thickness at which the judgement changes. Writes the report with this curve beside the file, as " +
        "NAME-vary-report.html.",
    )
    .requiredOption("--layer <name>", "the layer's name, or its material")
    .requiredOption("--thickness <range...>", "for example 0 mm..100 mm")
    .option("--build-up <name>", "the build-up's name, where several have such a layer")
    .option("--step <thickness...>", "for example 10 mm (default: a round step, at most twenty of them)")
    .addHelpText(
      "after",
      '\nExample:\n  warmside vary studio.yaml --build-up "Studio wall" --layer "mineral wool slab" --thickness 0 mm..200 mm\n',
    )
    .action((file: string, options: ReportFlags & VariationChoice) =>
      run(async (context): Promise<CommandResult> => {
        const { reportCommand } = await import("./report-command.ts");
        return await reportCommand(file, options, { name: "vary", choice: options }, context);
      }),
    );
};
