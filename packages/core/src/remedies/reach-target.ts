import { meetsTarget } from "../heat/target.ts";
import type { JudgementWord } from "../result/types.ts";
import { changesOf } from "./kinds.ts";
import { leastSize } from "./size-change.ts";
import type { Trials } from "./trials.ts";
import { type ChangeStep, EFFORT, type Situation } from "./types.ts";

/** Whether a build-up only misses its target: it is sound, with or without conditions. */
export function wantsWarmthOnly(target: number | null, transmittance: number | null, judged: JudgementWord): boolean {
  if (target === null || transmittance === null) return false;
  return !meetsTarget(transmittance, target) && judged.startsWith("sound");
}

/** The least insulation that meets a target, and how many kinds of board were tried. */
export interface TargetSearch {
  found: { step: ChangeStep; effort: number }[];
  tried: number;
}

/**
 * Finds the least unbroken insulation with which a build-up meets its target without a worse judgement: outside, or in a
 * floor on the ground by a thicker layer.
 *
 * @param situation - the build-up, which only misses its target, and what surrounds it
 * @param judged - its judgement
 * @param trials - assesses the thicknesses
 * @returns the thinnest board that is enough, or none
 */
export function reachTarget(situation: Situation, judged: JudgementWord, trials: Trials): TargetSearch {
  const boards = changesOf(situation).filter(({ effort }) => effort === EFFORT.insulateOutside);
  const goal = judged === "sound" ? "sound" : "sound with conditions";
  const isWarmEnough = (step: ChangeStep): boolean => {
    const transmittance = trials.transmittance(step);
    return transmittance !== null && meetsTarget(transmittance, situation.buildUp.target!);
  };
  const reaches = (step: ChangeStep): boolean => trials.reaches(step, goal, false);
  // U takes a single calculation: only thicknesses that meet the target are judged, the least of them first.
  const leastOf = (sizes: readonly ChangeStep[]): ChangeStep[] => {
    const warm = leastSize(sizes.length, (index) => isWarmEnough(sizes[index]!));
    if (warm === null) return [];
    const enough = sizes.slice(warm);
    const least = reaches(enough[0]!) ? 0 : leastSize(enough.length, (index) => reaches(enough[index]!));
    return least === null ? [] : [enough[least]!];
  };
  const steps = boards.flatMap(({ steps: sizes }) => leastOf(sizes));
  const [thinnest] = steps.sort((a, b) => a.thicknessOutside - b.thicknessOutside);
  return {
    found: thinnest === undefined ? [] : [{ step: thinnest, effort: EFFORT.insulateOutside }],
    tried: boards.length,
  };
}
