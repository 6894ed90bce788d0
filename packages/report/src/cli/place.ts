import type { Registration } from "./registration.ts";
import { commandWithReport } from "./report-flags.ts";

/** `warmside place FILE`: the vapour layer in each sensible position, in several climates, heated and cooled. */
export const registerPlace: Registration = (program, run) => {
  commandWithReport(program, run, "place", () => ({ name: "place" }))
    .summary("try the vapour layer elsewhere, here and in other climates")
    .description(
      "Calculates every build-up with its vapour layer towards the room, within the insulation, towards the outer side, " +
        "left out and on both faces: in the project's climate and in a cold, a hot humid and a hot dry one (or those of " +
        "`climates for place`), heated and cooled. Writes the report with these grids beside the file, as " +
        "NAME-place-report.html, and prints what each shows.",
    )
    .addHelpText("after", "\nExample:\n  warmside place studio.yaml --out where-the-layer-goes.html\n");
};
