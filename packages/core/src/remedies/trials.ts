import { type JudgedBuildUp, judgeFigures, judgeFurther, reportedFigures } from "../assess-build-up.ts";
import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { ventilationCases } from "../heat/slight-ventilation.ts";
import { isTightBetween } from "../plane-checks/interrupted-layers.ts";
import { greatestResistance } from "../project/resolve/check-resistance.ts";
import type { BuildUp, Framing } from "../project/types.ts";
import type { BuildUpResult, JudgementWord } from "../result/types.ts";
import type { Surroundings } from "../surroundings/surroundings.ts";
import { LARGEST_PART_RESISTANCE } from "../vapour/node-line.ts";
import { answersWhatWasFound, figuresAllow, findingsAllow } from "./fit-to-offer.ts";
import type { ChangeStep, Situation } from "./types.ts";

/**
 * Most calculations that the search uses for a build-up (this project's rule); it takes some 100, seldom over 300. Each
 * remedy offered is then worked out once more, with everything that is reported about it.
 */
export const MOST_CALCULATIONS = 1200;

/** Calculations for a judgement: the reported one, and up to five for the sensitivity. */
const CALCULATIONS_OF_JUDGEMENT = 6;

/** Further calculations for what is reported: two for the sensitivity, and one with gaps in the vapour layer. */
const CALCULATIONS_TOLD_BESIDE = 3;

/** The judgement that a change must reach. */
export type Goal = Extract<JudgementWord, "sound" | "sound with conditions">;

/** Judges changed build-ups, and counts the calculations. */
export interface Trials {
  /** Whether a step reaches a goal, may be offered and, if required, does not raise U. */
  reaches: (step: ChangeStep, goal: Goal, keepsWarmth: boolean) => boolean;
  /** U of a step [W/(m²·K)]; null once the calculations are used up. */
  transmittance: (step: ChangeStep) => number | null;
  /** Judges in full a step that reached its goal, with all further checks that are reported. */
  offer: (step: ChangeStep) => JudgedBuildUp;
  spent: () => number;
  isSpent: () => boolean;
}

/** What is known of a step so far: its figures along straight sections, and its judgement. */
interface KnownStep {
  surroundings: Surroundings;
  straight: BuildUpCalculation;
  /** Judged only on what may refuse it. */
  judged: JudgedBuildUp | null;
  /** Judged on all that the judgement depends on. */
  whole: JudgedBuildUp | null;
}

/**
 * Makes trials on a situation. Each step is calculated and judged at most once, and not judged at all if its figures
 * already rule it out.
 *
 * @param situation - the build-up and what surrounds it
 * @param before - its result before any change
 * @returns trials with their own count
 */
export function trialsOn(situation: Situation, before: BuildUpResult): Trials {
  const known = new Map<BuildUp, KnownStep[]>();
  let spent = 0;
  const spend = (cost: number): boolean => {
    const isEnough = spent + cost <= MOST_CALCULATIONS;
    spent = isEnough ? spent + cost : MOST_CALCULATIONS;
    return isEnough;
  };
  const figures = (step: ChangeStep): KnownStep | null => {
    const surroundings = step.surroundings ?? situation.surroundings;
    const there = known.get(step.buildUp) ?? [];
    const same = there.find((one) => one.surroundings === surroundings);
    if (same !== undefined) return same;
    if (!spend(calculationsOfOne(step.buildUp))) return null;
    const straight = reportedFigures(step.buildUp, surroundings);
    if (!spend(calculationsOfRunOn(straight) * sizeOf(step.buildUp))) return null;
    const made = { surroundings, straight, judged: null, whole: null };
    known.set(step.buildUp, [...there, made]);
    return made;
  };
  const judge = (step: ChangeStep): JudgedBuildUp | null => {
    const one = figures(step);
    if (one === null || one.judged !== null) return one?.judged ?? null;
    if (!spend(calculationsOfJudgement(step.buildUp) - calculationsOfOne(step.buildUp))) return null;
    one.judged = judgeFigures(one.straight, one.surroundings, "what may refuse it");
    return one.judged;
  };
  const isSound = (step: ChangeStep, judged: JudgedBuildUp): boolean => {
    const one = figures(step)!;
    one.whole ??= judgeFurther(judged, one.surroundings, "what the judgement depends on");
    return one.whole.judgement.word === "sound";
  };
  const losesWarmth = (transmittance: number): boolean =>
    before.heat !== null && toTwoDecimals(transmittance) > toTwoDecimals(before.heat.transmittance);
  const reaches = (step: ChangeStep, goal: Goal, keepsWarmth: boolean): boolean => {
    if (!answersWhatWasFound(before, step.does)) return false;
    const straight = figures(step)?.straight;
    if (straight === undefined || !figuresAllow(before, situation.warmSide, straight)) return false;
    if (keepsWarmth && !isOfChannels(step.buildUp) && losesWarmth(straight.heat.transmittance)) return false;
    const judged = judge(step);
    if (judged === null) return false;
    const { evidence, findings, judgement } = judged;
    if (judgement.word !== "sound" && judgement.word !== goal) return false;
    if (keepsWarmth && losesWarmth(evidence.calculation.heat.transmittance)) return false;
    return findingsAllow(findings) && (goal !== "sound" || isSound(step, judged));
  };
  const transmittance = (step: ChangeStep): number | null =>
    (isOfChannels(step.buildUp) ? judge(step)?.evidence.calculation : figures(step)?.straight)?.heat.transmittance ??
    null;
  const offer = (step: ChangeStep): JudgedBuildUp => {
    spent += calculationsTold(step.buildUp);
    const judged = judge(step)!;
    const { whole, surroundings } = figures(step)!;
    return judgeFurther(whole ?? judged, surroundings, "all");
  };
  return { reaches, transmittance, offer, spent: () => spent, isSpent: () => spent >= MOST_CALCULATIONS };
}

/** A transmittance at two decimals, for comparing [0.01 W/(m²·K)]. */
function toTwoDecimals(transmittance: number): number {
  return Math.round(transmittance * 100);
}

/** Cost of the reported calculation: double with slightly ventilated air, and several times with very many nodes. */
function calculationsOfOne(buildUp: BuildUp): number {
  return (ventilationCases(buildUp) === null ? 1 : 2) * sizeOf(buildUp);
}

/** Greatest cost of a judgement; trapped water is followed for years, and the plane takes longer than a section. */
function calculationsOfJudgement(buildUp: BuildUp): number {
  const water = CALCULATIONS_OF_TRAPPED_WATER * buildUp.trappedWater.length;
  const plane = isInThePlane(buildUp) ? CALCULATIONS_OF_THE_PLANE : 0;
  return (CALCULATIONS_OF_JUDGEMENT + water) * calculationsOfOne(buildUp) + plane;
}

/** Greatest further cost of reporting a remedy, with one more calculation for each layer with stated gaps. */
function calculationsTold(buildUp: BuildUp): number {
  const withGaps = buildUp.layers.filter((layer) => layer.type !== "air" && layer.gaps !== null).length;
  return (CALCULATIONS_TOLD_BESIDE + withGaps) * calculationsOfOne(buildUp);
}

/** Cost of a year in the plane, in calculations: some ten with tight layers between framing, more with channels. */
const CALCULATIONS_OF_THE_PLANE = 12;

/** Whether a build-up may have to be worked out in the plane, because framing interrupts a layer. */
function isInThePlane({ layers }: BuildUp): boolean {
  return layers.some((layer) => {
    const { framing } = layer;
    if (framing === null) return false;
    return isChannel(framing) || (layer.type !== "air" && isTightBetween(layer, framing));
  });
}

/** Whether a build-up's U comes from the plane. */
function isOfChannels({ layers }: BuildUp): boolean {
  return layers.some(({ framing }) => framing !== null && isChannel(framing));
}

function isChannel({ origin }: Framing): boolean {
  return origin.kind === "channel";
}

/** Cost of trapped water, in calculations: it is followed until it is dry, with each change that may help. */
const CALCULATIONS_OF_TRAPPED_WATER = 4;

/** Nodes on all paths together that count as one calculation; four paths through a wall of 10 m²·K/W have fewer. */
const NODES_OF_CALCULATION = 250;

/** Cost of repeated years beyond the few of an ordinary wall; each takes about half a calculation. */
function calculationsOfRunOn({ sections }: BuildUpCalculation): number {
  const years = sections.map(({ repeating }) => repeating?.years ?? 0);
  const mean = years.reduce((sum, count) => sum + count, 0) / years.length;
  return Math.max(0, Math.floor(mean / 2) - ORDINARY_RUN_ON);
}

/** Cost of the repeated years of an ordinary wall, which is already included. */
const ORDINARY_RUN_ON = 3;

/** How many ordinary calculations one calculation of this build-up counts as. */
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
