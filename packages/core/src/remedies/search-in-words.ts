import { formatQuantity } from "../quantities/format-quantity.ts";
import { THICKEST_BOARD } from "./insulate-outside.ts";
import { type Goal, MOST_CALCULATIONS } from "./trials.ts";

/** Insulation that was tried where only the target is missed: sorts of board, or thicknesses of one on the ground. */
interface TargetTried {
  tried: number;
  found: number;
  isOnGround: boolean;
  isSpent: boolean;
}

/** The outcome of the search for remedies, in a sentence. */
export const searchInWords: {
  /** Beyond the method: no search was made. */
  beyond: (askFor: string) => string;
  /** The layers look as if listed from outside: no search was made. */
  turnedRound: string;
  singles: (tried: number, found: number, goal: Goal, isSpent: boolean) => string;
  pairs: (singlesTried: number, pairsTried: number, found: number, isSpent: boolean) => string;
  /** Tape over the framing is enough. */
  taped: (meetsTarget: boolean) => string;
  /** Only the target is missed [W/(m²·K)]. */
  target: (target: number, of: TargetTried) => string;
} = {
  beyond,
  turnedRound:
    "No change was tried: the layers look written from outside, and any change would answer another build-up.",
  singles,
  pairs,
  taped: (meetsTarget) =>
    `Tape over the framing is enough: no other change was tried${meetsTarget ? " but the least insulation outside that meets the target as well" : ""}.`,
  target,
};

function beyond(askFor: string): string {
  return `No change was tried: the monthly method cannot judge this build-up, changed or not. ${askFor}`;
}

function singles(tried: number, found: number, goal: Goal, isSpent: boolean): string {
  const what = goal === "sound" ? "removes the conditions" : "puts the build-up right";
  if (tried === 0) return `There is no change to try that ${what}.`;
  if (found === 0) return `None of the ${count(tried, "change")} tried ${what}${end(isSpent)}.`;
  return `Of ${count(tried, "change")} tried, each of these ${what} in its smallest size${end(isSpent)}; the first changes least.`;
}

function pairs(singlesTried: number, pairsTried: number, found: number, isSpent: boolean): string {
  const none = `No single change of the ${singlesTried} tried puts the build-up right`;
  if (found === 0 && pairsTried === 0) return `${none}${end(isSpent)}: it needs another design, or an adviser.`;
  if (found === 0) {
    return `${none}, nor does any of the ${count(pairsTried, "pair")} of changes${end(isSpent)}: it needs another design, or an adviser.`;
  }
  return `${none}; of ${count(pairsTried, "pair")} of changes tried, smallest first, ${found === 1 ? "this one does" : "these do"}${end(isSpent)}.`;
}

function target(wanted: number, { tried, found, isOnGround, isSpent }: TargetTried): string {
  const what = `meets the target of ${formatQuantity(wanted, "transmittance")} without a worse judgement${end(isSpent)}`;
  const which = isOnGround ? "thicknesses of its insulation" : `${count(tried, "kind")} of insulation tried outside`;
  return found === 0
    ? `Only the target is missed. None of the ${which} ${isOnGround ? `up to ${formatQuantity(THICKEST_BOARD, "thickness")} ` : ""}${what}.`
    : `Only the target is missed. Of the ${which}, this is the least that ${what}.`;
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}

function end(isSpent: boolean): string {
  return isSpent ? ` (the search stopped at ${MOST_CALCULATIONS} calculations)` : "";
}
