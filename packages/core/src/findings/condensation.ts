import { isUpright } from "../project/is-upright.ts";
import type { SensitivityName } from "../sensitivity/sensitivity-runs.ts";
import { DROPS_GATHER, DROPS_MAY_RUN, isFacedWithPaper, sitsOnSmooth, TRACE } from "./amount-limits.ts";
import { grams, inPlainTerms, monthName, yearsInWords } from "./figures-in-words.ts";
import type { Evidence, JudgementEffect, RuledFinding } from "./types.ts";
import { judgeWater, judgeZones, shareOfLimit, type WaterJudged } from "./water-level.ts";

/**
 * Water inside the build-up: how much, on what, whether it leaves; that of a harder year where it weighs more.
 * Source: ISO 13788:2012 clause 6 for the water; DIN 4108-3 and common practice for the limits (from memory).
 */
export function condensationFindings(evidence: Evidence): RuledFinding[] {
  const reported = waterFindings(judgeZones(evidence.calculation), evidence, "");
  const harder = evidence.sensitivity.flatMap(({ name, calculation }) => {
    const opening = HARDER_YEARS[name];
    return opening === undefined ? [] : [waterFindings(judgeZones(calculation), evidence, opening)];
  });
  if (reported.length > 0) return [...reported, ...harder.filter((inYear) => weight(inYear) > weight(reported)).flat()];
  const told = harder.filter(([first]) => first !== undefined && first.code !== "trace").flat();
  return told.length > 0 ? told : [staysDry(evidence)];
}

/** The years that are tried beside the reported one, with the words that begin what is told of them. */
const HARDER_YEARS: Readonly<Partial<Record<SensitivityName, string>>> = {
  "one in ten colder year": "In a year 2 K colder than usual, as one in ten is: ",
  "one in ten warmer year": "In a year 2 K warmer than usual, as one in ten is: ",
};

const DO_NOT_CLOSE =
  "Do not close the build-up like this: take one of the remedies, where any is listed, or ask an adviser.";

/** How much findings of water weigh in the judgement. */
function weight(findings: readonly RuledFinding[]): number {
  return Math.max(-1, ...findings.map(({ effect }) => WEIGHTS.indexOf(effect)));
}

const WEIGHTS: readonly JudgementEffect[] = ["none", "condition", "change by number"];

/** What stays for good and what is over its limit, each where it is worst; else the zone that holds most of its limit. */
function waterFindings(zones: readonly WaterJudged[], evidence: Evidence, opening: string): RuledFinding[] {
  const [worst] = zones;
  if (worst === undefined) return [];
  const left = zones.filter(({ level }) => level === "stays");
  const stays = left.find((judged) => !isTakenUpAboveTheGround(judged, evidence)) ?? left[0];
  const over = zones
    .filter((judged) => shareOfLimit(judged) > 1)
    .sort((one, other) => shareOfLimit(other) - shareOfLimit(one))[0];
  if (stays === undefined && over === undefined) {
    return [worst.level === "trace" ? traceOf(worst, evidence, opening) : driesOut(worst, evidence, opening)];
  }
  if (stays === undefined) return [tooMuch(over!, opening)];
  const staying = staysWet(stays, evidence, opening);
  if (over === undefined) return [staying];
  const more = tooMuch(over, opening);
  return over === stays ? [staying, { ...more, message: `${opening}${sameWater(over)}` }] : [staying, more];
}

function staysDry({ sensitivity }: Evidence): RuledFinding {
  const run = sensitivity.find(({ name }) => name === "one in ten colder year");
  const inColder = run === undefined ? null : judgeWater(run.calculation);
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

function tooMuch(judged: WaterJudged, opening: string): RuledFinding {
  return {
    ...common(judged),
    code: "condensation-too-much",
    severity: "fault",
    effect: "change by number",
    message: `${opening}Too much water condenses ${placeOf(judged)}: ${mostOf(judged)}. ${limitOf(judged)}`,
    advice: DO_NOT_CLOSE,
  };
}

/** The water that was just told of, held against its limit. */
function sameWater(judged: WaterJudged): string {
  return `The ${grams(judged.amount)} ${placeOf(judged)} are too much by themselves. ${limitOf(judged)}`;
}

function driesOut(judged: WaterJudged, evidence: Evidence, opening: string): RuledFinding {
  const { zone, section, amount } = judged;
  const runs = amount > DROPS_MAY_RUN && isUpright(evidence.buildUp) && sitsOnSmooth(zone!, section!, evidence.buildUp);
  const left = leftOver(judged);
  const dries =
    left === ""
      ? `and dries out again within the year: ${mostOf(judged)}.`
      : `and nearly all of it dries out again within the year: ${mostOf(judged)}.${left}`;
  return {
    ...common(judged),
    code: "condensation-dries-out",
    severity: "caution",
    effect: amount > DROPS_MAY_RUN ? "condition" : "none",
    message:
      `${opening}Water condenses ${placeOf(judged)} ${dries} ${limitOf(judged)}` +
      (runs ? " On a smooth upright surface drops may run down from about 50 g/m²." : ""),
    advice: runs
      ? "Keep room air away from the smooth surface, and the bottom plate clear of what runs down; closed-cell foam would have to be bonded to it."
      : "Keep the layer that limits the vapour continuous: the amount rises quickly when it is not.",
  };
}

function staysWet(judged: WaterJudged, evidence: Evidence, opening: string): RuledFinding {
  const growth = judged.growthPerYear === 0 ? " It settles at a level and never dries." : growthInWords(judged);
  const message = `${opening}Water condenses ${placeOf(judged)} and does not dry within the year: ${mostOf(judged)}.${growth}`;
  if (isTakenUpAboveTheGround(judged, evidence)) {
    return {
      ...common(judged),
      code: "stays-wet",
      severity: "caution",
      effect: "condition",
      message: `${message} It gathers above the ground's membrane, which is required, where only mineral layers and foam touch it, and nothing there rots.`,
      advice:
        "Let the slab, and any screed, dry before the finish is laid, and keep the layer above the insulation that limits the vapour whole.",
    };
  }
  return {
    ...common(judged),
    code: "stays-wet",
    severity: "fault",
    effect: "change by number",
    message,
    advice: DO_NOT_CLOSE,
  };
}

/**
 * On the ground the membrane is required and the ground as cold all year as its mean: water above it counts as a fault
 * only where it touches something that rots, or where a year brings as much as gathers in drops.
 * Source: this project's rule on common practice (METHOD.md, Amounts of water: nothing speaks against membranes on the ground).
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

function traceOf(judged: WaterJudged, { buildUp }: Evidence, opening: string): RuledFinding {
  const touching = judged.zone!.layers.flatMap((index) => {
    const layer = buildUp.layers[index];
    return layer === undefined || layer.type === "air" ? [] : [layer.material];
  });
  const onSteel = touching.some(({ kind }) => kind === "metal");
  const onGypsum = touching.some(isFacedWithPaper);
  const where = onSteel ? "on steel" : "on gypsum paper";
  return {
    ...common(judged),
    code: "trace",
    severity: "note",
    effect: "none",
    message:
      `${opening}A trace of water condenses ${placeOf(judged)}: ${grams(judged.amount)} at most, up to ${grams(TRACE)} is no reason to change anything.${leftOver(judged)}` +
      (onSteel || onGypsum ? ` It sits ${where}, where even a trace is worth knowing of.` : ""),
    advice: null,
  };
}

function common(judged: WaterJudged): Pick<RuledFinding, "figures" | "source"> {
  return {
    figures: {
      amount: judged.amount,
      limit: judged.limit!.amount,
      limitReason: judged.limit!.reason,
      month: monthName(judged.zone!.month),
      section: judged.section!.name,
      where: judged.zone!.where,
      growthPerYear: judged.growthPerYear,
      yearsToGather: judged.yearsToGather,
    },
    source: "ISO 13788:2012 clause 6; amounts by DIN 4108-3 and common practice (from memory)",
  };
}

function placeOf({ zone, section }: WaterJudged): string {
  return `${zone!.where}${section!.name === "whole" ? "" : ` (${section!.name})`}`;
}

function mostOf({ amount, zone, growthPerYear }: WaterJudged): string {
  const inFirst = growthPerYear !== null && growthPerYear > 0 ? " of the first year" : "";
  return `${grams(amount)} by the end of ${monthName(zone!.month)}${inFirst}, ${inPlainTerms(amount)}`;
}

function limitOf({ limit }: WaterJudged): string {
  return `The limit there is ${grams(limit!.amount)} (${limit!.reason}).`;
}

/** What a trace or next to nothing leaves behind a year; nothing where all of it dries. */
function leftOver({ growthPerYear, yearsToGather }: WaterJudged): string {
  return yearsToGather === null
    ? ""
    : ` It leaves ${grams(growthPerYear!)} a year: ${yearsInWords(yearsToGather)} until that makes 200 g/m².`;
}

function growthInWords({ growthPerYear, yearsToGather, amount }: WaterJudged): string {
  const grows = ` It grows by ${grams(growthPerYear!)} a year`;
  return amount >= DROPS_GATHER
    ? `${grows}.`
    : `${grows}: ${yearsInWords(yearsToGather!)} until that makes 200 g/m², a cup on every square metre.`;
}
