import type { Registration } from "./registration.ts";
import { commandWithReport } from "./report-flags.ts";
import type { VariationChoice } from "./vary/variation-of.ts";

/** `warmside vary FILE`: one layer in many thicknesses, and where the judgement turns. */
export const registerVary: Registration = (program, run) => {
  commandWithReport(program, run, "vary", (choice: VariationChoice) => ({ name: "vary", choice }))
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
    );
};
