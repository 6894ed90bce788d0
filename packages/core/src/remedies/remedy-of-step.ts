import type { JudgedBuildUp } from "../assess-build-up.ts";
import { findingsInWords } from "../describe/judgement-in-words.ts";
import { layerResults } from "../describe/layer-result.ts";
import { yearSummary } from "../describe/moisture-result.ts";
import { capital } from "../findings/figures-in-words.ts";
import type { BuildUp, Material } from "../project/types.ts";
import type { Remedy, RemedyMaterial } from "../result/types.ts";
import { layerChanges } from "./changes-as-written.ts";
import { remedyInWords } from "./remedy-in-words.ts";
import { roomChange } from "./room-as-written.ts";
import type { ChangeStep } from "./types.ts";

/**
 * Brings a successful step into the shape of the result: what is done, its outcome, the conditions of that, and the
 * values of new materials.
 *
 * @param before - the build-up before the change
 * @param step - the step
 * @param judged - the judged step, which is within the method
 * @returns the remedy
 */
export function remedyOf(
  before: BuildUp,
  step: ChangeStep,
  { evidence: { calculation }, findings, judgement }: JudgedBuildUp,
): Remedy {
  const { verdict, peak } = yearSummary(calculation.governing.year);
  const worded = findingsInWords(findings, step.buildUp);
  const conditionFindings = findings.filter(({ effect }) => effect === "condition").map((one) => worded.get(one)!);
  return {
    change: capital(remedyInWords(step.does)),
    does: step.does,
    judgement: judgement.word,
    verdict,
    transmittance: calculation.heat.transmittance,
    peak,
    thicknessInside: step.thicknessInside,
    thicknessOutside: step.thicknessOutside,
    conditionFindings,
    conditions: conditionFindings.map(({ message }) => message),
    changes: layerChanges(before, step.buildUp),
    removes: before.leak !== null && step.buildUp.leak === null ? ["leak"] : [],
    roomChange: step.room === undefined ? null : roomChange(step.room),
    layers: layerResults(calculation),
    materials: broughtIn(before, step.buildUp),
  };
}

/** Materials that are new in the build-up, each once, from the room outwards. */
function broughtIn(before: BuildUp, after: BuildUp): RemedyMaterial[] {
  const known = new Set(materialsOf(before));
  return [...new Set(materialsOf(after))].filter((material) => !known.has(material)).map(valuesOf);
}

function materialsOf({ layers }: BuildUp): Material[] {
  return layers.flatMap((layer) => (layer.type === "air" ? [] : [layer.material]));
}

function valuesOf({ name, ...values }: Material): RemedyMaterial {
  return {
    name,
    conductivity: values.conductivity,
    vapourResistanceFactor: values.vapourResistanceFactorDry,
    sd: values.equivalentAirLayerThickness,
  };
}
