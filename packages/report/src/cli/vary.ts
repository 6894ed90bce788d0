import type { Command } from "commander";
import type { Outcome } from "./outcome.ts";
import type { Registration } from "./registration.ts";
import type { ReportOptions } from "./report-command.ts";

/** The flags of `vary` beside those of every report. */
export interface VaryOptions extends ReportOptions {
  layer: string;
  /** The words of a range and of a step: a space before a unit parts them. */
  thickness: string[];
  buildUp?: string;
  step?: string[];
}

/** `warmside vary FILE`: one layer in many thicknesses, and where the judgement turns. */
export const registerVary: Registration = (program: Command, run): void => {
  program
    .command("vary")
    .argument("<file>", "project file (YAML or JSON)")
    .summary("one layer in many thicknesses: how thick is enough?")
    .description(
      "Works a build-up out with one of its layers in many thicknesses, 0 being without it: the curve of U and of the most " +
        "water, and the thickness at which the judgement turns. Writes the report with this curve beside the file, as " +
        "NAME-vary-report.html.",
    )
    .requiredOption("--layer <name>", "the layer's name, or its material")
    .requiredOption("--thickness <range...>", "such as 0 mm..100 mm")
    .option("--build-up <name>", "the build-up's name, where several have such a layer")
    .option("--step <thickness...>", "such as 10 mm (default: a round one, at most twenty)")
    .option("--out <path>", "write the report to this path")
    .option("--json", "print the whole result as JSON; a report is written only with --out or --pdf")
    .option("--pdf", "write a PDF of the report too (needs Chromium or Chrome)")
    .addHelpText(
      "after",
      '\nExample:\n  warmside vary studio.yaml --build-up "Studio wall" --layer "mineral wool slab" --thickness 0 mm..200 mm\n',
    )
    .action((file: string, options: VaryOptions) =>
      run(async (standing): Promise<Outcome> => {
        const { reportCommand } = await import("./report-command.ts");
        const { assessWithSweep } = await import("./vary/assess-with-sweep.ts");
        return await reportCommand(file, options, standing, {
          study: "vary",
          workOut: (project) => assessWithSweep(project, options),
        });
      }),
    );
};
