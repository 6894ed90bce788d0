import { looksTurnedRound } from "../project/resolve/note-layers-overlooked.ts";
import type { BuildUp } from "../project/types.ts";
import type { BuildUpResult, Remedy } from "../result/types.ts";
import type { Surroundings } from "../surroundings/surroundings.ts";
import { findPairs } from "./find-pairs.ts";
import { changesOf } from "./kinds.ts";
import { reachTarget, wantsWarmthOnly } from "./reach-target.ts";
import { remedyOf } from "./remedy-of-step.ts";
import { searchInWords } from "./search-in-words.ts";
import { sizesWorthOffering } from "./size-change.ts";
import { tapeFraming } from "./tape-framing.ts";
import { type Goal, type Trials, trialsOn } from "./trials.ts";
import { type ChangeStep, EFFORT, type Situation, type WarmSide } from "./types.ts";

/** The remedies found, a sentence on the search, and how many calculations it took at most. */
export interface RemedySearch {
  remedies: Remedy[];
  search: string | null;
  calculations: number;
}

/** Conditions that a change of the build-up may remove; the others are met on site. */
const REMEDIABLE = [
  "depends-on-vapour-layer",
  "condensation-dries-out",
  "two-tight-layers",
  "interrupted-layer",
] as const;

/**
 * Finds changes that put a build-up right, each as small as possible and assessed in full; pairs of changes if no
 * single one is enough. If only the target is missed, finds the least insulation that meets it.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of every year that is calculated
 * @param assessed - its result
 * @returns remedies, least change first, with a sentence on the search; no sentence if nothing needs to be changed
 * Source: this project's rule (METHOD.md, Remedies): at most 1 200 calculations.
 */
export function findRemedies(buildUp: BuildUp, surroundings: Surroundings, assessed: BuildUpResult): RemedySearch {
  if (assessed.beyond !== null)
    return { remedies: [], search: searchInWords.beyond(assessed.beyond.askFor), calculations: 0 };
  if (looksTurnedRound(buildUp.layers)) return { remedies: [], search: searchInWords.turnedRound, calculations: 0 };
  const goal = goalOf(assessed);
  const { word } = assessed.judgement;
  if (goal === null && !wantsWarmthOnly(assessed.target, assessed.heat?.transmittance ?? null, word))
    return NOTHING_WANTED;
  const situation = { buildUp, surroundings, warmSide: warmSideOf(assessed) };
  const trials = trialsOn(situation, assessed);
  if (goal === null) {
    const { found, tried } = reachTarget(situation, word, trials);
    if (tried === 0) return NOTHING_WANTED;
    const search = searchInWords.target(assessed.target!, {
      tried,
      found: found.length,
      isOnGround: buildUp.faces === "ground",
      isSpent: trials.isSpent(),
    });
    return { remedies: listed(buildUp, found, trials), search, calculations: trials.spent() };
  }
  const tape = tapeThatDoes(situation, assessed, goal, trials);
  if (tape !== null) return onlyTape(situation, tape, trials);
  const changes = changesOf(situation);
  const singles = changes.flatMap((change) =>
    sizesWorthOffering(change, goal, trials).map((step) => ({ step, effort: change.effort })),
  );
  if (singles.length > 0 || goal === "sound") {
    const search = searchInWords.singles(changes.length, singles.length, goal, trials.isSpent());
    return { remedies: listed(buildUp, singles, trials), search, calculations: trials.spent() };
  }
  const pairs = findPairs(situation, changes, goal, trials);
  const search = searchInWords.pairs(changes.length, pairs.tried, pairs.found.length, trials.isSpent());
  return { remedies: listed(buildUp, pairs.found, trials), search, calculations: trials.spent() };
}

/** Tape over the framing, if vapour that passes there is a reason for the judgement, and tape is enough. */
function tapeThatDoes(
  situation: Situation,
  { findings, judgement }: BuildUpResult,
  goal: Goal,
  trials: Trials,
): ChangeStep | null {
  const isReason = findings.some(({ id, code }) => code === "interrupted-layer" && judgement.reasons.includes(id));
  const step = isReason ? tapeFraming(situation)[0]?.steps[0] : undefined;
  return step !== undefined && trials.reaches(step, goal, false) ? step : null;
}

/** If tape is enough, nothing else is sought except insulation to meet the target as well. */
function onlyTape(situation: Situation, tape: ChangeStep, trials: Trials): RemedySearch {
  const found: { step: ChangeStep; effort: number }[] = [{ step: tape, effort: EFFORT.tapeFraming }];
  const { evidence, judgement } = trials.offer(tape);
  if (wantsWarmthOnly(tape.buildUp.target, evidence.calculation.heat.transmittance, judgement.word)) {
    const warmer = reachTarget({ ...situation, buildUp: tape.buildUp }, judgement.word, trials).found;
    found.push(
      ...warmer.map(({ step, effort }) => ({
        step: { ...step, does: [...tape.does, ...step.does] },
        effort: EFFORT.tapeFraming + effort,
      })),
    );
  }
  const search = searchInWords.taped(found.length > 1);
  return { remedies: listed(situation.buildUp, found, trials), search, calculations: trials.spent() };
}

const NOTHING_WANTED: RemedySearch = { remedies: [], search: null, calculations: 0 };

/** The judgement that a change must reach; null if no change is needed. */
function goalOf({ judgement, findings }: BuildUpResult): Goal | null {
  if (judgement.word === "change it") return "sound with conditions";
  if (judgement.word !== "sound with conditions") return null;
  const reasons = findings.filter(({ id }) => judgement.reasons.includes(id));
  return reasons.some(({ code }) => REMEDIABLE.some((known) => known === code)) ? "sound" : null;
}

/** The side from which vapour is driven over the year, by the assessed vapour layer. */
function warmSideOf({ vapourLayer }: BuildUpResult): WarmSide {
  const side = vapourLayer?.warmSide ?? "neither";
  if (side === "neither") return "neither";
  return side === "inside" ? "room" : "far side";
}

function listed(before: BuildUp, found: readonly { step: ChangeStep; effort: number }[], trials: Trials): Remedy[] {
  const inOrder = [...found].sort((a, b) => a.effort - b.effort || thickness(a.step) - thickness(b.step));
  return inOrder.map(({ step }) => remedyOf(before, step, trials.offer(step)));
}

function thickness({ thicknessInside, thicknessOutside }: ChangeStep): number {
  return thicknessInside + thicknessOutside;
}
