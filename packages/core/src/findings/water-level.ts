import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import type { WaterLevel } from "../result/types.ts";
import { NOTHING_HELD } from "../year/section-year.ts";
import { type AmountLimit, amountLimits, DROPS_GATHER, TRACE } from "./amount-limits.ts";
import { isInBondedFoam } from "./bonded-foam-place.ts";
import { type WaterZone, waterZones } from "./water-zones.ts";

/** The water of a zone, assessed against its limit. */
export interface WaterJudged {
  level: WaterLevel;
  /** Its section and zone; null without water. */
  section: SectionCalculation | null;
  zone: WaterZone | null;
  /** Amount compared with the limit [kg/m²]: the maximum of the year plus the level at which it settles. */
  amount: number;
  limit: AmountLimit | null;
  /** Yearly growth [kg/m²], null when it dries out; years until it reaches 200 g/m², null when it does not grow. */
  growthPerYear: number | null;
  yearsToGather: number | null;
}

/** Whether water is over its limit, or stays. */
export function isTooMuch({ level }: Pick<WaterJudged, "level">): boolean {
  return level === "too much" || level === "stays";
}

/** Growth that takes at least this long to reach 200 g/m² is negligible [a] (this project's rule). */
export const LONG_ENOUGH = 50;

/**
 * The water of every zone of every section, with drying within the month, worst first.
 *
 * @param calculation - the build-up's figures
 * @returns level, section, zone and limit of each; none where it stays dry
 * Source: METHOD.md, Amounts of water (this project's rule on the limits of `amount-limits.ts`).
 */
export function judgeZones(calculation: BuildUpCalculation): WaterJudged[] {
  return calculation.sections
    .flatMap((section) => waterZones(section, section.withinMonth).map((zone) => judgeZone(section, zone, calculation)))
    .sort((one, other) => RANK[other.level] - RANK[one.level] || shareOfLimit(other) - shareOfLimit(one));
}

/** The zone of most concern; level "none" without water. */
export function worstOf(water: readonly WaterJudged[]): WaterJudged {
  return water[0] ?? NO_WATER_JUDGED;
}

/** The same, directly from a calculation. */
export function judgeWater(calculation: BuildUpCalculation): WaterJudged {
  return worstOf(judgeZones(calculation));
}

const NO_WATER_JUDGED: WaterJudged = {
  level: "none",
  section: null,
  zone: null,
  amount: 0,
  limit: null,
  growthPerYear: null,
  yearsToGather: null,
};

/** Water over its limit and water that stays rank equally; the share of the limit then decides. */
const RANK: Readonly<Record<WaterLevel, number>> = { none: 0, trace: 1, some: 2, "too much": 3, stays: 3 };

/** Amount divided by its limit [–]: over 1 is too much. */
export function shareOfLimit({ amount, limit }: Pick<WaterJudged, "amount" | "limit">): number {
  return limit === null ? 0 : amount / limit.amount;
}

function judgeZone(section: SectionCalculation, zone: WaterZone, { buildUp }: BuildUpCalculation): WaterJudged {
  const limit = amountLimits(zone, section, buildUp)[0]!;
  const growthPerYear = growthOf(section, zone);
  const yearsToGather = growthPerYear === null || !(growthPerYear > 0) ? null : DROPS_GATHER / growthPerYear;
  const amount = zone.peak + (growthPerYear === 0 ? section.repeating!.level : 0);
  const judged = { section, zone, amount, limit, growthPerYear, yearsToGather };
  return { ...judged, level: levelOf(judged, isInBondedFoam(zone, buildUp) !== null) };
}

/**
 * Yearly growth [kg/m²]: 0 where the water settles at a level, null where all of it dries, if only in the mean years
 * that follow a 1-in-10 year.
 */
function growthOf({ withinMonth, repeating }: SectionCalculation, zone: WaterZone): number | null {
  if (withinMonth.verdict !== "stays wet" || !(zone.left > 0)) return null;
  if (repeating?.settles === true) return repeating.level > NOTHING_HELD ? 0 : null;
  return repeating?.growthPerYear ?? withinMonth.carriedOver;
}

/** Level of an amount of water; with negligible growth, or settled in bonded foam, the amount alone decides. */
export function levelOf(
  judged: Pick<WaterJudged, "amount" | "limit" | "growthPerYear" | "yearsToGather">,
  isBonded = false,
): WaterLevel {
  const { amount, growthPerYear, yearsToGather } = judged;
  const slow = yearsToGather !== null && yearsToGather >= LONG_ENOUGH;
  const settlesAtTrace = growthPerYear === 0 && amount <= TRACE;
  const settlesInFoam = growthPerYear === 0 && isBonded;
  if (growthPerYear !== null && !slow && !settlesAtTrace && !settlesInFoam) return "stays";
  if (amount <= TRACE) return "trace";
  return shareOfLimit(judged) > 1 ? "too much" : "some";
}
