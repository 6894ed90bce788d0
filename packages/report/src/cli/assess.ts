import type { Registration } from "./registration.ts";
import { commandWithReport } from "./report-flags.ts";

/** `warmside assess FILE`: assesses every build-up, writes the report and prints the short answers. */
export const registerAssess: Registration = (program, run) => {
  commandWithReport(program, run, "assess", () => ({ name: "assess" }))
    .summary("assess every build-up and write the report")
    .description(
      "Calculates whether water condenses inside each build-up, whether it dries out, its U-value and what to change. " +
        "Writes one HTML report beside the file, as NAME-report.html, and prints the short answers.",
    )
    .addHelpText("after", "\nExample:\n  warmside assess studio.yaml --out for-building-control.html\n");
};
