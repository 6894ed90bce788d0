import type { VariationQuestion } from "./types.ts";

/** Most steps of a variation; more would show nothing new. */
export const MOST_VARIATION_STEPS = 200;

/** Most steps of a variation if no step is stated. */
const USUAL_STEPS = 20;

/** Round steps [m]. */
const ROUND_STEPS: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200].map((millimetres) => millimetres / 1000);

/** Thicknesses closer than this count as the same [m]. */
const SAME = 1e-9;

/**
 * The thicknesses of a variation: both ends, every step between them, and the thickness as drawn if it lies between.
 *
 * @param question - ends and step
 * @param drawn - the layer's own thickness [m]
 * @returns thicknesses, thinnest first, and the step [m]
 * @throws RangeError when the ends do not rise from 0 or more, or the step gives more than 200 steps
 */
export function thicknessesOf(
  { from, to, step: stated }: Pick<VariationQuestion, "from" | "to" | "step">,
  drawn: number,
): { thicknesses: number[]; step: number } {
  if (!(from >= 0 && to > from))
    throw new RangeError(`a range of thicknesses must rise from 0, was ${from} to ${to} m`);
  const step = stated ?? roundStep(to - from);
  if (!(step > 0 && (to - from) / step <= MOST_VARIATION_STEPS))
    throw new RangeError(`steps of ${step} m are too many or none`);
  const count = Math.ceil((to - from) / step - SAME);
  const even = Array.from({ length: count }, (_, index) => withoutNoise(from + index * step));
  const isBetween = drawn > from && drawn < to && even.every((one) => Math.abs(one - drawn) > SAME);
  const isDrawn = (one: number): number => (Math.abs(one - drawn) <= SAME ? drawn : one);
  const all = [...even, to, ...(isBetween ? [drawn] : [])].map(isDrawn);
  return { thicknesses: all.sort((one, other) => one - other), step };
}

/**
 * A thickness halfway between two others, in whole tenths of a millimetre.
 *
 * @param low - the thinner [m]
 * @param high - the thicker [m]
 * @returns a thickness between them [m]; null where no whole tenth lies between
 * @example halfWay(0.01, 0.02) // 0.015
 */
export function halfWay(low: number, high: number): number | null {
  const middle = withoutNoise(Math.round(((low + high) / 2) * TENTHS_PER_METRE) / TENTHS_PER_METRE);
  return middle > low + SAME && middle < high - SAME ? middle : null;
}

/** Tenths of a millimetre in a metre. */
const TENTHS_PER_METRE = 10_000;

function roundStep(range: number): number {
  return ROUND_STEPS.find((step) => range / step <= USUAL_STEPS + SAME) ?? range / USUAL_STEPS;
}

/** Removes the binary noise that sums of steps have in their last digits. */
function withoutNoise(value: number): number {
  return Number(value.toPrecision(12));
}
