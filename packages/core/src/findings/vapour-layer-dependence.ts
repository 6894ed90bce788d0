import { formatQuantity } from "../quantities/format-quantity.ts";
import { grams } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isRequired } from "./vapour-layer.ts";
import { isTooMuch, judgeWater, type WaterJudged } from "./water-level.ts";

/**
 * Whether the design forgives gaps in its vapour layer or depends on the layer being continuous: worked out again with
 * the layer ten times more open, and with none.
 * Source: this project's rule (METHOD.md, Dependence on the vapour layer).
 */
export function dependenceFindings(evidence: Evidence): RuledFinding[] {
  const { tightLayer, vapourLayer, sensitivity } = evidence;
  const opened = sensitivity.find(({ name }) => name === "vapour layer ten times more open");
  const without = sensitivity.find(({ name }) => name === "no vapour layer");
  if (tightLayer === null || vapourLayer.onWarmSide !== true || opened === undefined || without === undefined)
    return [];
  if (isItselfTheInsulation(evidence) || isRequired(evidence, tightLayer)) return [];
  const now = judgeWater(evidence.calculation);
  if (isTooMuch(now)) return [];
  const whenOpened = judgeWater(opened.calculation);
  const whenGone = judgeWater(without.calculation);
  const figures = {
    sd: vapourLayer.sd,
    openedVerdict: opened.result.verdict,
    openedAmount: whenOpened.amount,
    noneVerdict: without.result.verdict,
    noneAmount: whenGone.amount,
  };
  const common = { source: "worked out again for this build-up; what counts as too much is as for any water", figures };
  const name = `${tightLayer.name} (sd ${formatQuantity(tightLayer.sd, "sd")})`;
  if (isTooMuch(whenOpened)) {
    return [
      {
        ...common,
        code: "depends-on-vapour-layer",
        severity: "caution",
        effect: "condition",
        message: `The build-up depends on ${name} being continuous: ten times more open it ${outcome(whenOpened)}.`,
        advice: sealing(evidence),
      },
    ];
  }
  const gone = isTooMuch(whenGone)
    ? ` Left out altogether it ${outcome(whenGone)}.`
    : " By vapour alone it would do without it; it is still needed against moving air.";
  return [
    {
      ...common,
      code: "forgives-gaps",
      severity: "note",
      effect: "none",
      message: `The build-up forgives gaps: with ${name} ten times more open it still ${outcome(whenOpened)}.${gone}`,
      advice: isTooMuch(whenGone) ? sealing(evidence) : null,
    },
  ];
}

/** What to seal: laps of a sheet, or joints of boards. */
function sealing({ tightLayer, buildUp }: Evidence): string {
  const isBoard = tightLayer!.parts.every(({ layer }) => buildUp.layers[layer]?.type === "material");
  const joints = isBoard ? "the joints of the boards (tape or sealant)" : "laps (tape on the sheet)";
  return `Seal ${joints}, the perimeter (a batten or sealant along the edges), sockets and pipes (airtight boxes, or a service layer on the room side).`;
}

/** How slowly a trace gathers where it does not dry out; nothing where it does. */
function untilItGathers({ yearsToGather }: WaterJudged): string {
  return yearsToGather === null ? "" : ` in the first year, ${Math.round(yearsToGather)} years until 200 g/m²`;
}

function outcome(judged: WaterJudged): string {
  if (judged.level === "none") return "stays dry";
  if (judged.level === "stays") return `stays wet (${grams(judged.amount)} in the first year)`;
  if (judged.level === "too much")
    return `takes up too much water (${grams(judged.amount)}, limit ${grams(judged.limit!.amount)})`;
  return judged.level === "trace"
    ? `has only a trace of water (${grams(judged.amount)}${untilItGathers(judged)})`
    : `dries out (${grams(judged.amount)} at most)`;
}

/** A solid wall that is its own vapour layer has no laps to seal. */
function isItselfTheInsulation({ tightLayer, calculation }: Evidence): boolean {
  const thickest = calculation.heat.counted.reduce((main, layer) =>
    layer.resistance > main.resistance ? layer : main,
  );
  return tightLayer!.parts.every(({ layer, part }) => layer === thickest.index && part === "whole");
}
