import type { Project, VariationStudy } from "@warmside/core";
import { CommandProblem } from "../command-result.ts";
import { readRange, readStep } from "./thickness-range.ts";

/** What the study is asked to do. */
export interface VariationChoice {
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
export async function variationOf(project: Project, choice: VariationChoice): Promise<VariationStudy> {
  const { findVariationLayer, MOST_VARIATION_STEPS, varyThickness } = await import("@warmside/core");
  const { from, to } = orRefuse(readRange(choice.thickness.join(" ")));
  const step = choice.step === undefined ? null : orRefuse(readStep(choice.step.join(" ")));
  if (step !== null && (to - from) / step > MOST_VARIATION_STEPS)
    throw new CommandProblem(
      "too-many-steps",
      `The range has more than ${MOST_VARIATION_STEPS} such steps. Give a larger --step.`,
    );
  const found = findVariationLayer(project, choice.layer, choice.buildUp ?? null, to);
  if ("refused" in found) throw new CommandProblem("layer-to-vary", found.refused);
  return varyThickness(project, { ...found, from, to, step });
}

/** What could be read; a sentence that says why not ends the command. */
function orRefuse<Value>(read: Value | string): Value {
  if (typeof read === "string") throw new CommandProblem("thickness-unread", read);
  return read;
}
