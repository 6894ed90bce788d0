import { MONTH_NAMES } from "../constants.ts";
import { twoSeasonCheck, WINTER_OUTSIDE } from "../further-checks/two-season/two-season.ts";
import { isUpright } from "../project/is-upright.ts";
import type { WaterFigures, YearOfWater } from "../result/types.ts";
import { isHarderYear } from "../sensitivity/sensitivity-runs.ts";
import { DROPS_GATHER, DROPS_MAY_RUN, isFacedWithPaper, sitsOnSmooth } from "./amount-limits.ts";
import { isInBondedFoam } from "./bonded-foam-place.ts";
import { CAUTION, CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import { isMasonryThroughout } from "./rain-on-wall.ts";
import type { Evidence, JudgementEffect, RuledFinding } from "./types.ts";
import { hasLayerToKeepWhole } from "./vapour-layer-dependence.ts";
import { isTooMuch, judgeWater, judgeZones, shareOfLimit, type WaterJudged } from "./water-level.ts";

/**
 * Interstitial condensation: how much, on what, and whether it evaporates; that of a 1-in-10 year where it weighs more.
 * Source: ISO 13788:2012 clause 6 for the water; DIN 4108-3 and common practice for the limits (from memory).
 */
export function condensationFindings(evidence: Evidence): RuledFinding[] {
  const reported = waterFindings(evidence.water, evidence, "reported");
  const harder = evidence.sensitivity.flatMap(({ name, calculation }) =>
    isHarderYear(name) ? [inItsClimate(waterFindings(judgeZones(calculation), evidence, name), evidence)] : [],
  );
  if (reported.length > 0) return [...reported, ...harder.filter((inYear) => weight(inYear) > weight(reported)).flat()];
  const told = harder.filter(([first]) => first !== undefined && first.code !== "trace").flat();
  return told.length > 0 ? told : [staysDry(evidence)];
}

/**
 * The limits of DIN 4108-3 are made for its own two-season climate and for walls that it requires to be calculated.
 * Exceeding them only in a 1-in-10 year is just a condition if the two-season check passes within the limit of the
 * place, or if the wall is masonry with an inner leaf that dries in that check: DIN 4108-3 requires no calculation for
 * it. This does not apply where the coldest month is colder than the check's winter, nor to drops on a smooth vertical
 * surface or to water that stays.
 */
function inItsClimate(findings: RuledFinding[], evidence: Evidence): RuledFinding[] {
  const isOverDin = (finding: RuledFinding): boolean =>
    finding.code === "condensation-too-much" && finding.figures.limitBy.kind !== "smooth upright surface";
  if (!findings.some(isOverDin) || findings.some(({ code }) => code === "stays-wet")) return findings;
  const { buildUp, calculation, room, site, humidityMargin } = evidence;
  const check = twoSeasonCheck(calculation, room, site.outdoor.temperature, humidityMargin);
  if (!check.applies || Math.min(...site.outdoor.temperature) < WINTER_OUTSIDE.temperature) return findings;
  const needsNone = isMasonryThroughout(buildUp) && check.condensate <= check.summerCapacity;
  return findings.map((finding) =>
    isOverDin(finding) &&
    finding.code === "condensation-too-much" &&
    (needsNone || (check.passes === true && check.condensate <= finding.figures.limit))
      ? found("condensation-dries-out", CONDITION, {
          ...finding.figures,
          runsDown: false,
          restsOnLayer: hasLayerToKeepWhole(evidence),
        })
      : finding,
  );
}

/** Weight of water findings in the judgement. */
function weight(findings: readonly RuledFinding[]): number {
  return Math.max(-1, ...findings.map(({ effect }) => WEIGHTS.indexOf(effect)));
}

const WEIGHTS: readonly JudgementEffect[] = ["none", "condition", "change by number"];

/** The worst zone where water stays, and the zone furthest over its limit; without either, the worst zone. */
function waterFindings(zones: readonly WaterJudged[], evidence: Evidence, year: YearOfWater): RuledFinding[] {
  const [worst] = zones;
  if (worst === undefined) return [];
  const left = zones.filter(({ level }) => level === "stays");
  const stays = left.find((judged) => !isTakenUpAboveTheGround(judged, evidence)) ?? left[0];
  const over = zones
    .filter((judged) => shareOfLimit(judged) > 1)
    .sort((one, other) => shareOfLimit(other) - shareOfLimit(one))[0];
  if (stays === undefined && over === undefined)
    return [worst.level === "trace" ? traceOf(worst, evidence, year) : driesOut(worst, evidence, year)];
  return [
    ...(stays === undefined ? [] : [staysWet(stays, evidence, year)]),
    ...(over === undefined ? [] : [tooMuch(over, year, over === stays)]),
  ];
}

/** Case c of the standard where the judgement still passes it: stated once, at the answer. */
export function standardNotPassed({ calculation, water }: Evidence): RuledFinding[] {
  if (calculation.governing.year.verdict !== "stays wet") return [];
  const [worst] = water;
  if (worst === undefined || isTooMuch(worst)) return [];
  const { amount, growthPerYear, yearsToGather } = water.find((zone) => zone.growthPerYear !== null) ?? worst;
  const driesWithinMonth = calculation.sections.every(({ withinMonth }) => withinMonth.verdict !== "stays wet");
  return [found("standard-not-passed", CAUTION, { amount, growthPerYear, yearsToGather, driesWithinMonth })];
}

function staysDry({ sensitivity }: Evidence): RuledFinding {
  const run = sensitivity.find(({ name }) => name === "one in ten colder year");
  const inColder = run === undefined ? null : judgeWater(run.calculation);
  const figures = { amountInColderYear: inColder?.amount ?? 0, levelInColderYear: inColder?.level ?? null };
  return found("stays-dry", NOTE, figures);
}

function tooMuch(judged: WaterJudged, year: YearOfWater, isSameWater: boolean): RuledFinding {
  return found("condensation-too-much", OVER_LIMIT, { ...figuresOf(judged, year), isSameWater });
}

function driesOut(judged: WaterJudged, evidence: Evidence, year: YearOfWater): RuledFinding {
  const { zone, section, amount } = judged;
  const { buildUp } = evidence;
  const runsDown =
    amount > DROPS_MAY_RUN &&
    isUpright(buildUp) &&
    sitsOnSmooth(zone!, section!, buildUp) &&
    isInBondedFoam(zone!, buildUp) === null;
  const weight = amount > DROPS_MAY_RUN ? CONDITION : CAUTION;
  const restsOnLayer = hasLayerToKeepWhole(evidence);
  return found("condensation-dries-out", weight, { ...figuresOf(judged, year), runsDown, restsOnLayer });
}

function staysWet(judged: WaterJudged, evidence: Evidence, year: YearOfWater): RuledFinding {
  const isAboveGroundMembrane = isTakenUpAboveTheGround(judged, evidence);
  const weight = isAboveGroundMembrane ? CONDITION : OVER_LIMIT;
  return found("stays-wet", weight, { ...figuresOf(judged, year), isAboveGroundMembrane });
}

/**
 * On the ground, the membrane is required and the ground stays at its yearly mean temperature. Water above the membrane
 * is a fault only where it touches a material that rots, or where the amount is enough to gather in drops.
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

function traceOf(judged: WaterJudged, { buildUp }: Evidence, year: YearOfWater): RuledFinding {
  const touching = judged.zone!.layers.flatMap((index) => {
    const layer = buildUp.layers[index];
    return layer === undefined || layer.type === "air" ? [] : [layer.material];
  });
  const onGypsum = touching.some(isFacedWithPaper) ? "gypsum paper" : null;
  const sitsOn = touching.some(({ kind }) => kind === "metal") ? "steel" : onGypsum;
  return found("trace", NOTE, { ...figuresOf(judged, year), sitsOn });
}

function figuresOf(judged: WaterJudged, year: YearOfWater): WaterFigures {
  const { amount, limit, zone, section, growthPerYear, yearsToGather } = judged;
  return {
    year,
    amount,
    limit: limit!.amount,
    limitBy: limit!.by,
    month: MONTH_NAMES[zone!.month]!,
    section: section!.id,
    place: zone!.place,
    growthPerYear,
    yearsToGather,
  };
}
