import { isUpright } from "../heat/heat-flow-direction.ts";
import { DROPS_GATHER, DROPS_MAY_RUN, sitsOnSmooth, TRACE } from "./amount-limits.ts";
import { grams, inPlainTerms, monthName, yearsInWords } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { judgeWater, type WaterJudged } from "./water-level.ts";

/**
 * Water inside the build-up: how much, on what, whether it leaves.
 * Source: ISO 13788:2012 clause 6 for the water; DIN 4108-3 and common practice for the limits (from memory).
 */
export function condensationFindings(evidence: Evidence): RuledFinding[] {
  const judged = judgeWater(evidence.calculation);
  if (judged.level !== "none") return describeWater(judged, evidence, "");
  const colder = evidence.sensitivity.find(({ name }) => name === "one in ten colder year");
  const inColder = colder === undefined ? null : judgeWater(colder.calculation);
  if (inColder === null || inColder.level === "none" || inColder.level === "trace") return [staysDry(inColder)];
  return describeWater(inColder, evidence, "In a year 2 K colder than usual, as one in ten is: ");
}

function staysDry(inColder: WaterJudged | null): RuledFinding {
  const colder =
    inColder === null
      ? ""
      : inColder.level === "none"
        ? " Nor does it in a year 2 K colder than usual."
        : ` In a year 2 K colder than usual a trace does (${grams(inColder.amount)}).`;
  return {
    code: "stays-dry",
    severity: "note",
    effect: "none",
    message: `No water condenses inside it in any month.${colder} That is vapour alone: not rain, leaks, moving air or built-in water.`,
    advice: null,
    source: "ISO 13788:2012 clause 6 (from memory)",
    figures: { amountInColderYear: inColder?.amount ?? 0 },
  };
}

function describeWater(judged: WaterJudged, evidence: Evidence, opening: string): RuledFinding[] {
  const zone = judged.zone!;
  const section = judged.section!;
  const place = `${zone.where}${section.name === "whole" ? "" : ` (${section.name})`}`;
  const most = `${grams(judged.amount)} by the end of ${monthName(zone.month)}, ${inPlainTerms(judged.amount)}`;
  const figures = {
    amount: judged.amount,
    limit: judged.limit!.amount,
    limitReason: judged.limit!.reason,
    month: monthName(zone.month),
    section: section.name,
    where: zone.where,
    growthPerYear: judged.growthPerYear,
    yearsToGather: judged.yearsToGather,
  };
  const common = {
    figures,
    source: "ISO 13788:2012 clause 6; amounts by DIN 4108-3 and common practice (from memory)",
  };
  const tooMuch: RuledFinding = {
    ...common,
    code: "condensation-too-much",
    severity: "fault",
    effect: "change by number",
    message:
      `${opening}Too much water condenses ${place}: ${most}. The limit there is ${grams(judged.limit!.amount)} ` +
      `(${judged.limit!.reason}).`,
    advice: "Do not close the build-up like this. See the remedies, or ask for an adviser.",
  };
  if (judged.level === "too much") return [tooMuch];
  if (judged.level === "stays") {
    const stays = { ...common, ...staysWet(judged, evidence, `${opening}Water condenses ${place}`, most) };
    return judged.amount > judged.limit!.amount ? [stays, tooMuch] : [stays];
  }
  if (judged.level === "trace") return [{ ...common, ...traceOf(judged, evidence, place, opening) }];
  const runs =
    judged.amount > DROPS_MAY_RUN && isUpright(evidence.buildUp) && sitsOnSmooth(zone, section, evidence.buildUp);
  const driesOut: RuledFinding = {
    ...common,
    code: "condensation-dries-out",
    severity: "caution",
    effect: judged.amount > DROPS_MAY_RUN ? "condition" : "none",
    message:
      `${opening}Water condenses ${place} and dries out again within the year: ${most}. ` +
      `The limit there is ${grams(judged.limit!.amount)} (${judged.limit!.reason}).` +
      (runs ? " On a smooth upright surface drops may run down from about 50 g/m²." : ""),
    advice: runs
      ? "Bond the insulation to the smooth surface so that no air reaches it, or keep the bottom plate clear of what runs down."
      : "Keep the layer that limits the vapour continuous: the amount rises quickly when it is not.",
  };
  return [driesOut];
}

function staysWet(judged: WaterJudged, evidence: Evidence, opening: string, most: string) {
  const growth =
    judged.growthPerYear === 0
      ? "It settles at a level and never dries."
      : `It grows by ${grams(judged.growthPerYear!)} a year: ${yearsInWords(judged.yearsToGather!)} until 200 g/m², a cup on every square metre.`;
  const message = `${opening} and does not dry within the year: ${most}. ${growth}`;
  if (isTakenUpAboveTheGround(judged, evidence)) {
    return {
      code: "stays-wet",
      severity: "caution" as const,
      effect: "condition" as const,
      message: `${message} It gathers above the ground's membrane, which is required, where only concrete, screed and foam take it up, and nothing there rots.`,
      advice:
        "Let slab and screed dry before the finish is laid, and keep the layer above the insulation that limits the vapour whole.",
    };
  }
  return {
    code: "stays-wet",
    severity: "fault" as const,
    effect: "change by number" as const,
    message,
    advice: "Do not close the build-up like this. See the remedies, or ask for an adviser.",
  };
}

/**
 * On the ground the membrane is required and the ground as cold all year as its mean: water above it counts as a fault
 * only where it touches something that rots, or where a year brings as much as gathers in drops.
 * Source: this project's rule on common practice (method.md 7: nothing speaks against membranes on the ground).
 */
function isTakenUpAboveTheGround(judged: WaterJudged, { buildUp }: Evidence): boolean {
  if (buildUp.faces !== "ground" || judged.amount > DROPS_GATHER) return false;
  return judged.zone!.layers.every((index) => {
    const layer = buildUp.layers[index];
    if (layer === undefined || layer.type === "air") return false;
    const { kind } = layer.material;
    return layer.framing === null && (kind === "mineral" || kind === "plastic");
  });
}

function traceOf(judged: WaterJudged, evidence: Evidence, place: string, opening: string) {
  const onGypsumOrSteel = judged.zone!.layers.some((index) => {
    const layer = evidence.buildUp.layers[index];
    return (
      layer !== undefined &&
      layer.type !== "air" &&
      (layer.material.kind === "metal" || layer.material.kind === "paper")
    );
  });
  const yearly =
    judged.yearsToGather === null
      ? ""
      : ` It leaves ${grams(judged.growthPerYear!)} a year: ${yearsInWords(judged.yearsToGather)} until 200 g/m².`;
  return {
    code: "trace",
    severity: "note" as const,
    effect: "none" as const,
    message:
      `${opening}A trace of water condenses ${place}: ${grams(judged.amount)} at most, up to ${grams(TRACE)} is no reason to change anything.${yearly}` +
      (onGypsumOrSteel ? " It sits on steel or on gypsum paper, where even a trace is worth knowing of." : ""),
    advice: null,
  };
}
