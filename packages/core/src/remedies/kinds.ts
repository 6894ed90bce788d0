import { closeGaps, closeLeak } from "./close-gaps.ts";
import { drierRoom } from "./drier-room.ts";
import { insulateOutside } from "./insulate-outside.ts";
import { moveInsulation } from "./move-insulation.ts";
import { moveSheet } from "./move-sheet.ts";
import { openColdSide } from "./open-cold-side.ts";
import { sheetOnWarmSide } from "./sheet-on-warm-side.ts";
import { takeOutSheet } from "./take-out-sheet.ts";
import { tapeFraming } from "./tape-framing.ts";
import { thickenInsulation } from "./thicken-insulation.ts";
import type { Change, ChangeKind, Situation } from "./types.ts";
import { ventilate } from "./ventilate.ts";
import { leavesAloneWhatMustStay } from "./what-must-stay.ts";

/** Every kind of change, smallest first. */
const KINDS: readonly ChangeKind[] = [
  tapeFraming,
  closeGaps,
  takeOutSheet,
  sheetOnWarmSide,
  openColdSide,
  moveSheet,
  ventilate,
  insulateOutside,
  thickenInsulation,
  moveInsulation,
  drierRoom,
];

/**
 * Every change that can be tried on a situation. If an air leak is stated, closing it is the only change. Sizes that
 * alter what must stay are left out, whatever kind of change made them.
 *
 * @param situation - the build-up and what surrounds it
 * @returns changes with at least one size each
 */
export function changesOf(situation: Situation): Change[] {
  const kinds = situation.buildUp.leak === null ? KINDS : [closeLeak];
  const mayBeProposed = leavesAloneWhatMustStay(situation);
  return kinds
    .flatMap((kind) => kind(situation))
    .flatMap((change) => {
      const steps = change.steps.filter(({ buildUp }) => mayBeProposed(buildUp));
      if (steps.length === 0) return [];
      const probes = [...new Set(change.probes.map((probe) => Math.min(probe, steps.length - 1)))];
      return [{ ...change, steps, probes }];
    });
}
