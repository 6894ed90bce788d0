import type { Project, SweepStudy } from "@warmside/core";
import { CommandProblem } from "../command-result.ts";
import { readRange, readStep } from "./thickness-range.ts";

/** What the study is asked to do. */
export interface SweepChoice {
  layer: string;
  /** The words of a range and of a step: a space before a unit parts them. */
  thickness: string[];
  buildUp?: string;
  step?: string[];
}

/**
 * One layer of a project in many thicknesses.
 *
 * @param project - as read
 * @param choice - the layer, the range and the step
 * @returns the study
 * @throws CommandProblem when a thickness cannot be read, or there is no such layer, or it has none to vary
 */
export async function sweepOf(project: Project, choice: SweepChoice): Promise<SweepStudy> {
  const { findSweepLayer, MOST_SWEEP_STEPS, sweepThickness } = await import("@warmside/core");
  const { from, to } = orRefuse(readRange(choice.thickness.join(" ")));
  const step = choice.step === undefined ? null : orRefuse(readStep(choice.step.join(" ")));
  if (step !== null && (to - from) / step > MOST_SWEEP_STEPS)
    throw new CommandProblem(
      "too-many-steps",
      `The range has more than ${MOST_SWEEP_STEPS} such steps. Give a larger --step.`,
    );
  const found = findSweepLayer(project, choice.layer, choice.buildUp ?? null, to);
  if ("refused" in found) throw new CommandProblem("layer-to-vary", found.refused);
  return sweepThickness(project, { ...found, from, to, step });
}

/** What could be read; a sentence that says why not ends the command. */
function orRefuse<Value>(read: Value | string): Value {
  if (typeof read === "string") throw new CommandProblem("thickness-unread", read);
  return read;
}
