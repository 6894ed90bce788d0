import { type JudgedBuildUp, judgeBuildUp } from "../assess-build-up.ts";
import { buildUpResult } from "../describe/build-up-result.ts";
import { ventilationCases } from "../heat/slight-ventilation.ts";
import { isTightBetween } from "../plane-checks/interrupted-layers.ts";
import { greatestResistance } from "../project/resolve/check-resistance.ts";
import type { BuildUp } from "../project/types.ts";
import type { BuildUpResult, JudgementWord } from "../result/types.ts";
import { LARGEST_PART_RESISTANCE } from "../vapour/node-line.ts";
import { isFitToOffer } from "./fit-to-offer.ts";
import type { ChangeStep, Situation } from "./types.ts";

/** No more calculations than this are spent on a build-up (this project's rule: about half a second). */
export const MOST_CALCULATIONS = 1200;

/** Calculations in one assessment: the reported one, up to seven under other assumptions, one with gaps in the vapour layer. */
const CALCULATIONS_OF_ASSESSMENT = 9;

/** What a change should lead to. */
export type Goal = Extract<JudgementWord, "sound" | "sound with conditions">;

/** A changed build-up, judged, and its result. */
export interface Tried {
  judged: JudgedBuildUp;
  result: BuildUpResult;
}

/** Assesses changed build-ups in full, and counts what that takes. */
export interface Trials {
  /** The assessment of a step; null once the calculations are spent. */
  assess: (step: ChangeStep) => Tried | null;
  /** Whether a step leads to a goal, is fit to be offered, and loses no warmth where it must not. */
  reaches: (step: ChangeStep, goal: Goal, keepsWarmth: boolean) => boolean;
  /** Takes the assessment of a step for that of another that is the same build-up in other words. */
  takeAs: (step: ChangeStep, same: ChangeStep) => void;
  spent: () => number;
  isSpent: () => boolean;
}

/**
 * Trials on a situation, each step assessed at most once.
 *
 * @param situation - the build-up and what surrounds it
 * @param before - its result as it stands
 * @returns trials with a count of their own
 */
export function trialsOn(situation: Situation, before: BuildUpResult): Trials {
  const results = new Map<ChangeStep, Tried>();
  let spent = 0;
  const assess = (step: ChangeStep): Tried | null => {
    const known = results.get(step);
    if (known !== undefined) return known;
    const cost = calculationsAtMost(step.buildUp);
    if (spent + cost > MOST_CALCULATIONS) {
      spent = MOST_CALCULATIONS;
      return null;
    }
    spent += cost;
    const judged = judgeBuildUp(step.buildUp, step.surroundings ?? situation.surroundings, "a change that is tried");
    const result = buildUpResult(judged.evidence, judged.findings, judged.judgement);
    spent = Math.min(MOST_CALCULATIONS, spent + calculationsOfRunOn(result) * sizeOf(step.buildUp));
    const tried = { judged, result };
    results.set(step, tried);
    return tried;
  };
  const reaches = (step: ChangeStep, goal: Goal, keepsWarmth: boolean): boolean => {
    const tried = assess(step);
    if (tried === null || tried.result.moisture === null || tried.result.heat === null) return false;
    const { judgement, heat } = tried.result;
    const good = judgement.word === "sound" || judgement.word === goal;
    if (!good || (keepsWarmth && losesWarmth(heat.transmittance, before.heat?.transmittance ?? null))) return false;
    return isFitToOffer(before, situation.warmSide, tried.judged);
  };
  const takeAs = (step: ChangeStep, same: ChangeStep): void => {
    const known = results.get(same);
    if (known !== undefined) results.set(step, known);
  };
  return { assess, reaches, takeAs, spent: () => spent, isSpent: () => spent >= MOST_CALCULATIONS };
}

/** Compared at two decimals, as transmittances are. */
function losesWarmth(after: number, before: number | null): boolean {
  return before !== null && Math.round(after * 100) > Math.round(before * 100);
}

/**
 * Calculations that an assessment takes at most: one more a layer with stated gaps, twice with slightly ventilated air;
 * trapped water that is followed for years, and a build-up with very many nodes, count for several.
 */
function calculationsAtMost(buildUp: BuildUp): number {
  const withGaps = buildUp.layers.filter((layer) => layer.type !== "air" && layer.gaps !== null).length;
  const water = CALCULATIONS_OF_TRAPPED_WATER * buildUp.trappedWater.length;
  const cases = ventilationCases(buildUp) === null ? 1 : 2;
  const plane = isInThePlane(buildUp) ? CALCULATIONS_OF_THE_PLANE : 0;
  return cases * (CALCULATIONS_OF_ASSESSMENT + withGaps + water) * sizeOf(buildUp) + plane;
}

/** Calculations that a year in the plane takes as long as: some ten with tight layers between framing, more with channels. */
const CALCULATIONS_OF_THE_PLANE = 12;

/** Layers that framing interrupts may be worked out in the plane. */
function isInThePlane({ layers }: BuildUp): boolean {
  return layers.some((layer) => {
    const { framing } = layer;
    if (framing === null) return false;
    return framing.origin.kind === "channel" || (layer.type !== "air" && isTightBetween(layer, framing));
  });
}

/** Calculations that trapped water counts for: it is followed until it is dry, with each change that may help. */
const CALCULATIONS_OF_TRAPPED_WATER = 4;

/** Nodes of all ways through together that one calculation stands for: four ways through a wall of 10 m²·K/W have fewer. */
const NODES_OF_CALCULATION = 250;

/** Years run on beyond the few of an ordinary wall: each takes about half a calculation. */
function calculationsOfRunOn({ moisture }: BuildUpResult): number {
  const years = moisture?.sections.map(({ repeating }) => repeating.years) ?? [0];
  const mean = years.reduce((sum, count) => sum + count, 0) / years.length;
  return Math.max(0, Math.floor(mean / 2) - ORDINARY_RUN_ON);
}

/** Calculations that the years run on of an ordinary wall take: they are counted already. */
const ORDINARY_RUN_ON = 3;

/** How many ordinary calculations one of this build-up stands for. */
function sizeOf(buildUp: BuildUp): number {
  return Math.ceil(nodesAtMost(buildUp) / NODES_OF_CALCULATION);
}

function nodesAtMost({ layers }: BuildUp): number {
  const framings = new Set(layers.flatMap(({ framing }) => framing?.name ?? []));
  const nodes = layers.reduce(
    (sum, layer) => sum + Math.ceil(greatestResistance(layer) / LARGEST_PART_RESISTANCE) + 1,
    1,
  );
  return nodes * 2 ** framings.size;
}
