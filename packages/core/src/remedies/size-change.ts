import type { Goal, Trials } from "./trials.ts";
import type { Change, ChangeStep } from "./types.ts";

/** Up to this many sizes are tried one after the other; more are bisected. */
const FEW_SIZES = 8;

/**
 * The least size of a change that reaches a goal: the size below it does not.
 *
 * @param sizes - how many there are, least first
 * @param reaches - whether a size, by its index, reaches the goal
 * @returns index of the size; null where none that was tried does
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
 * sound, alone where the two are close.
 *
 * @param change - the change
 * @param goal - the least that it should lead to
 * @param trials - assesses the sizes
 * @returns one or two steps, none where no size does
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
