import type { Registration } from "./registration.ts";
import { commandWithReport } from "./report-flags.ts";

/** `warmside compare FILE`: the variants of each build-up beside it, with heat, water, thickness, money and goods. */
export const registerCompare: Registration = (program, run) => {
  commandWithReport(
    program,
    run,
    "compare",
    () => ({ name: "compare" }),
    "project file (YAML or JSON) whose build-ups have `variants`",
  )
    .summary("compare variants: is the extra layer worth it?")
    .description(
      "Calculates every variant of every build-up and sets it beside the build-up as drawn: U, thickness, judgement, most " +
        "water, dependence on the vapour layer, heat over the year, cost where the file has prices, and quantities " +
        "to order. Writes the report with these tables and a plot beside the file, as NAME-compare-report.html, and prints " +
        "a sentence for each variant.",
    )
    .addHelpText("after", `\nA variant in the project file:\n${VARIANT}\nExample:\n  warmside compare studio.yaml\n`);
};

const VARIANT = `  variants:
    - name: deeper studs
      changes: [ { set: mineral wool slab, thickness: 200 mm } ]
    - name: wood fibre outside the sheathing
      changes:
        - add: { material: wood fibre insulation board, thickness: 60 mm }
          after: oriented strand board
`;
