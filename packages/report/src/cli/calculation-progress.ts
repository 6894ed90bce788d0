import type { Step } from "./calculation/calculation.ts";
import type { FileInOrder } from "./calculation/read-project-file.ts";
import { countInWords, type Progress, type ProgressStream, progressOn } from "./progress.ts";

/** How far a calculation is, on a terminal. */
interface CalculationProgress {
  /** Says how much there is to do, if it takes long. */
  begin(file: FileInOrder): void;
  tell(step: Step): void;
  clear(): void;
}

/** Fewer than this are calculated before anyone could read how many there are. */
const FEWEST: Readonly<Record<Step["unit"], number>> = { "build-up": 20, grid: 5, sample: 1000 };

/**
 * Shows on a terminal what is calculated and how far it is; shows nothing if the stream is not a terminal.
 *
 * @param stream - standard error
 * @returns told as the calculation goes on
 */
export function calculationProgress(stream: ProgressStream): CalculationProgress {
  let unit: Step["unit"] | null = null;
  let progress: Progress | null = null;
  return {
    begin({ buildUps, variants }): void {
      if (stream.isTTY !== true || buildUps + variants < FEWEST["build-up"]) return;
      stream.write?.(`${workInWords(buildUps, variants)}\n`);
    },
    tell(step): void {
      if (step.of < FEWEST[step.unit]) return;
      if (unit !== step.unit || progress === null) {
        progress?.clear();
        unit = step.unit;
        progress = progressOn(stream, (done, of, seconds) => countInWords(step.unit, done, of, seconds));
      }
      progress.reached(step.done, step.of);
    },
    clear: () => progress?.clear(),
  };
}

/**
 * What is to be calculated.
 *
 * @param buildUps - in the project
 * @param variants - of all of them
 * @returns a sentence
 * @example workInWords(100, 5000) // "To calculate: 100 build-ups and 5000 variants."
 */
function workInWords(buildUps: number, variants: number): string {
  return `To calculate: ${buildUps} build-ups${variants === 0 ? "" : ` and ${variants} variants`}.`;
}
