import type { Goal, Trials } from "./trials.ts";
import type { Change, ChangeStep } from "./types.ts";

/** Up to this many sizes are tried one after another; among more, the size is found by bisection. */
const FEW_SIZES = 8;

/**
 * The least size of a change that reaches a goal: the next smaller size does not.
 *
 * @param sizes - number of sizes, least first
 * @param reaches - whether a size, by its index, reaches the goal
 * @returns index of the size; null if none that was tried reaches it
 * Assumes, for more than eight sizes, that the greatest reaches the goal if any does.
 */
export function leastSize(sizes: number, reaches: (index: number) => boolean): number | null {
  if (sizes <= FEW_SIZES) {
    for (let index = 0; index < sizes; index += 1) if (reaches(index)) return index;
    return null;
  }
  let tooSmall = -1;
  let enough = sizes - 1;
  if (!reaches(enough)) return null;
  while (enough - tooSmall > 1) {
    const middle = Math.floor((tooSmall + enough) / 2);
    if (reaches(middle)) enough = middle;
    else tooSmall = middle;
  }
  return enough;
}

/**
 * The sizes of a change that are worth offering: the least that reaches the goal, and the least that makes the build-up
 * sound. If the two are close, only the latter.
 *
 * @param change - the change
 * @param goal - the least judgement that it must reach
 * @param trials - assesses the sizes
 * @returns one or two steps; none if no size reaches the goal
 */
export function sizesWorthOffering(change: Change, goal: Goal, trials: Trials): ChangeStep[] {
  const leastFor = (wanted: Goal): number | null =>
    leastSize(change.steps.length, (index) => trials.reaches(change.steps[index]!, wanted, change.keepsWarmth));
  const least = leastFor(goal);
  if (least === null) return [];
  const step = change.steps[least]!;
  if (goal === "sound" || trials.reaches(step, "sound", false)) return [step];
  const sound = leastFor("sound");
  if (sound === null) return [step];
  const soundStep = change.steps[sound]!;
  return sound - least <= change.closeSteps ? [soundStep] : [step, soundStep];
}
