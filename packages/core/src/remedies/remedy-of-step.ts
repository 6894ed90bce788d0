import { capital } from "../findings/figures-in-words.ts";
import type { BuildUp, Material } from "../project/types.ts";
import type { Remedy, RemedyMaterial } from "../result/types.ts";
import { layerChanges } from "./changes-as-written.ts";
import { remedyInWords } from "./remedy-in-words.ts";
import { roomChange } from "./room-as-written.ts";
import type { Tried } from "./trials.ts";
import type { ChangeStep } from "./types.ts";

/**
 * A step that does, in the shape of the result: what is done, what comes of it, what that rests on, and the values of
 * what is brought in.
 *
 * @param before - the build-up as it stands
 * @param step - the step
 * @param tried - the step, judged, within the method
 * @returns the remedy
 */
export function remedyOf(before: BuildUp, step: ChangeStep, { result, judged }: Tried): Remedy {
  const { verdict, peak } = result.moisture!;
  const conditionFindings = result.findings.filter((_, at) => judged.findings[at]!.effect === "condition");
  return {
    change: capital(remedyInWords(step.does)),
    does: step.does,
    judgement: result.judgement.word,
    verdict,
    transmittance: result.heat!.transmittance,
    peak: { ...peak },
    thicknessInside: step.thicknessInside,
    thicknessOutside: step.thicknessOutside,
    conditionFindings,
    conditions: conditionFindings.map(({ message }) => message),
    changes: layerChanges(before, step.buildUp),
    removes: before.leak !== null && step.buildUp.leak === null ? ["leak"] : [],
    roomChange: step.room === undefined ? null : roomChange(step.room),
    layers: result.layers,
    materials: broughtIn(before, step.buildUp),
  };
}

/** Materials that the build-up did not have, each once, from the room outwards. */
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
