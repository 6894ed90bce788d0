import { InvalidArgumentError } from "commander";
import type { Registration } from "./registration.ts";
import { commandWithReport } from "./report-flags.ts";
import type { SpreadChoice } from "./spread/studies.ts";

/** `warmside spread FILE`: every build-up many times over, with all that is uncertain somewhere within its spread. */
export const registerSpread: Registration = (program, run) => {
  commandWithReport(program, run, "spread", (choice: SpreadChoice) => ({ name: "spread", choice }))
    .summary("say how sure the answer is")
    .description(
      "Calculates every build-up many times, with material values, share of framing, gaps and indoor humidity each " +
        "somewhere within its spread: how often each verdict and judgement comes out, and what decides it. Widths are " +
        "those of the project file (`spread: 10 %` at a material) or those of the kind of source. Writes the report with " +
        "these figures beside the file, as NAME-spread-report.html.",
    )
    .option("--samples <count>", "samples a build-up", wholeNumber(1, MOST_SAMPLES), USUAL_SAMPLES)
    .option("--seed <number>", "the same seed gives the same figures", wholeNumber(0, LARGEST_SEED), 1)
    .option(
      "--workers <count>",
      "threads to work on (default: as many as the machine has cores)",
      wholeNumber(1, MOST_WORKERS),
    )
    .addHelpText("after", "\nExample:\n  warmside spread studio.yaml --samples 100000\n");
};

const USUAL_SAMPLES = 10_000;
/** A sample takes about 1 kB while its build-up is calculated; more samples would not make the figures more certain. */
const MOST_SAMPLES = 200_000;
const LARGEST_SEED = 2 ** 32 - 1;
/** Threads beyond the cores of the machine only wait for each other; each takes some 60 MB. */
const MOST_WORKERS = 64;

function wholeNumber(least: number, most: number): (written: string) => number {
  return (written) => {
    const number = /^\d+$/.test(written) ? Number(written) : Number.NaN;
    if (!(number >= least && number <= most)) {
      throw new InvalidArgumentError(`It must be a whole number from ${least} to ${most}.`);
    }
    return number;
  };
}
