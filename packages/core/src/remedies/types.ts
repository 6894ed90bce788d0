import type { BuildUp, Room } from "../project/types.ts";
import type { RemedyStep } from "../result/types.ts";
import type { Surroundings } from "../surroundings/surroundings.ts";

/** The side from which vapour is pushed over the year. */
export type WarmSide = "room" | "far side" | "neither";

/** A build-up with what surrounds it: what a change is made to. */
export interface Situation {
  buildUp: BuildUp;
  surroundings: Surroundings;
  warmSide: WarmSide;
}

/** One size of a change, applied. */
export interface ChangeStep {
  /** What is done: one change, or two that go together. */
  does: readonly RemedyStep[];
  buildUp: BuildUp;
  /** Changed rooms; null where only the build-up changes. */
  surroundings: Surroundings | null;
  /** The room that is changed, as it is afterwards; none where only the build-up changes. */
  room?: Room;
  /** Thickness added on the room side and on the outer side of the build-up [m]. */
  thicknessInside: number;
  thicknessOutside: number;
}

/** A kind of change to one thing, with its sizes. */
export interface Change {
  /** What is changed: unique among the changes of a situation. */
  key: string;
  /** How much of a change it is: less comes first in the list. */
  effort: number;
  /** Sizes, least first; never empty. */
  steps: readonly ChangeStep[];
  /** A better judgement this many steps further on is offered instead of the least; further off, beside it. */
  closeSteps: number;
  /** Steps that are tried first when two changes are put together. */
  probes: readonly number[];
  /** Sizes that raise the transmittance do not count. */
  keepsWarmth: boolean;
}

/** Finds what one kind of change can do to a situation; nothing where it does not apply. */
export type ChangeKind = (situation: Situation) => Change[];

/** How much of a change each kind is, from closing gaps to building anew (this project's order). */
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
  /** A change of use and none of the build-up: after everything that is built, pairs of it too. */
  drierRoom: 20,
} as const;

/**
 * A change with one or more sizes.
 *
 * @param change - key, effort and steps; the rest by default: nothing is close, the last step is tried first
 * @returns the change as a list, empty without steps
 */
export function changeOf(
  change: Pick<Change, "key" | "effort" | "steps"> & Partial<Pick<Change, "closeSteps" | "probes" | "keepsWarmth">>,
): Change[] {
  if (change.steps.length === 0) return [];
  return [{ closeSteps: 0, probes: [change.steps.length - 1], keepsWarmth: false, ...change }];
}
