import type { BuildUp, Room } from "../project/types.ts";
import type { RemedyStep } from "../result/types.ts";
import type { Surroundings } from "../surroundings/surroundings.ts";

/** The side from which vapour is driven over the year. */
export type WarmSide = "room" | "far side" | "neither";

/** A build-up and what surrounds it, to which a change is made. */
export interface Situation {
  buildUp: BuildUp;
  surroundings: Surroundings;
  warmSide: WarmSide;
}

/** A change applied in one of its sizes. */
export interface ChangeStep {
  /** What is done: one change, or two that go together. */
  does: readonly RemedyStep[];
  buildUp: BuildUp;
  /** Surroundings with a changed room; null if only the build-up changes. */
  surroundings: Surroundings | null;
  /** The changed room; left out if only the build-up changes. */
  room?: Room;
  /** Thickness added on the room side and on the outer side of the build-up [m]. */
  thicknessInside: number;
  thicknessOutside: number;
}

/** One kind of change to one part of a situation, with its sizes. */
export interface Change {
  /** What is changed: unique among the changes of a situation. */
  key: string;
  /** How great a change it is; smaller ones come first in the list. */
  effort: number;
  /** Sizes, least first; never empty. */
  steps: readonly ChangeStep[];
  /** A size with a better judgement replaces the least size if it is at most this many steps greater. */
  closeSteps: number;
  /** Indices of the steps that are tried first in a pair of changes. */
  probes: readonly number[];
  /** True if sizes that raise the transmittance do not count. */
  keepsWarmth: boolean;
}

/** Finds the changes of one kind that are possible in a situation; none where the kind does not apply. */
export type ChangeKind = (situation: Situation) => Change[];

/** How great a change each kind is, from taping to rebuilding (this project's order). */
export const EFFORT = {
  tapeFraming: 0.5,
  closeGaps: 1,
  takeOut: 2,
  sheetOnWarmSide: 3,
  openSheet: 4,
  moveSheet: 5,
  openBoard: 6,
  ventilate: 7,
  insulateOutside: 8,
  moveInsulation: 9,
  /** Changes the use, not the build-up: comes after all building work, even after pairs of changes. */
  drierRoom: 20,
} as const;

/**
 * Makes a change with one or more sizes.
 *
 * @param change - key, effort and steps; by default no sizes are close, and pairs try the last step first
 * @returns a list of the one change; empty if it has no steps
 */
export function changeOf(
  change: Pick<Change, "key" | "effort" | "steps"> & Partial<Pick<Change, "closeSteps" | "probes" | "keepsWarmth">>,
): Change[] {
  if (change.steps.length === 0) return [];
  return [{ closeSteps: 0, probes: [change.steps.length - 1], keepsWarmth: false, ...change }];
}
