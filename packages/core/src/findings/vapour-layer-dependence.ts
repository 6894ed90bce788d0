import { mainInsulation } from "../heat/main-insulation.ts";
import type { GapsData, WaterWithout } from "../result/types.ts";
import type { SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import { TRACE } from "./amount-limits.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isRequired } from "./vapour-layer.ts";
import { isTooMuch, judgeWater, type WaterJudged, worstOf } from "./water-level.ts";

/**
 * Whether the design forgives gaps in its vapour layer or needs the layer unbroken: recalculated with the layer ten
 * times more open, and without it.
 * Source: this project's rule (METHOD.md, Dependence on the vapour layer).
 */
export function dependenceFindings(evidence: Evidence): RuledFinding[] {
  const { tightLayer, sensitivity } = evidence;
  const opened = sensitivity.find(({ name }) => name === "vapour layer ten times more open");
  const without = sensitivity.find(({ name }) => name === "no vapour layer");
  if (tightLayer === null || opened === undefined) return [];
  if (!hasLayerToKeepWhole(evidence) || isRequired(evidence, tightLayer)) return [];
  if (isTooMuch(worstOf(evidence.water))) return [];
  const whenOpened = judgeWater(opened.calculation);
  const usual = usualGaps(evidence);
  const figures = {
    usualShare: usual?.share ?? null,
    usualAmount: usual?.peak.amount ?? null,
    name: tightLayer.name,
    layers: tightLayer.layers,
    sd: tightLayer.sd,
    whenOpened: waterOf(opened, whenOpened),
    whenLeftOut: without === undefined ? null : waterOf(without, judgeWater(without.calculation)),
    joints: isOfBoards(evidence) ? ("boards" as const) : ("sheet" as const),
  };
  if (isTooMuch(whenOpened)) return [found("depends-on-vapour-layer", CONDITION, figures)];
  return bringsMoreThanATrace(evidence)
    ? [found("depends-on-vapour-layer", NOTE, figures)]
    : [found("forgives-gaps", NOTE, figures)];
}

/**
 * Whether the layer that holds vapour back on the warm side can have gaps to seal: not a masonry leaf, nor a wall or
 * foam that is its own vapour layer.
 *
 * @param evidence - everything known about the build-up
 * @returns false without such a layer
 * Source: this project's rule (METHOD.md, Dependence on the vapour layer).
 */
export function hasLayerToKeepWhole(evidence: Evidence): boolean {
  const { tightLayer, vapourLayer } = evidence;
  if (tightLayer === null || vapourLayer.onWarmSide !== true) return false;
  return !isItselfTheInsulation(evidence) && !isMasonry(evidence);
}

/** Masonry has no laps, and its joints are mortar. */
function isMasonry({ tightLayer, buildUp }: Evidence): boolean {
  return tightLayer!.parts.every(({ layer, part }) => {
    const found = buildUp.layers[layer];
    return part === "whole" && found?.type === "material" && found.material.kind === "mineral";
  });
}

/** Whether gaps over a thousandth, where calculated, bring more than a trace: then the design does not forgive gaps. */
function bringsMoreThanATrace(evidence: Evidence): boolean {
  const usual = usualGaps(evidence);
  return usual !== null && usual.peak.amount > Math.max(TRACE, evidence.calculation.governing.year.peak);
}

/** Reported only, never judged; null where only the judgement was calculated. */
function usualGaps({ checks }: Evidence): GapsData | null {
  return checks.gaps.find(({ kind }) => kind === "usual") ?? null;
}

function waterOf({ calculation }: SensitivityRun, { level, amount, limit, yearsToGather }: WaterJudged): WaterWithout {
  return { verdict: calculation.governing.year.verdict, level, amount, limit: limit?.amount ?? null, yearsToGather };
}

/** Boards have joints to seal, sheets have laps. */
function isOfBoards({ tightLayer, buildUp }: Evidence): boolean {
  return tightLayer!.parts.every(({ layer }) => buildUp.layers[layer]?.type === "material");
}

/** A solid wall that is its own vapour layer has no laps to seal. */
function isItselfTheInsulation({ tightLayer, calculation }: Evidence): boolean {
  const main = mainInsulation(calculation.heat.counted)?.index;
  return tightLayer!.parts.every(({ layer, part }) => layer === main && part === "whole");
}
