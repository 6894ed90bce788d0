import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import type { WaterLevel } from "../result/types.ts";
import { NOTHING_HELD } from "../year/section-year.ts";
import { type AmountLimit, amountLimits, DROPS_GATHER, TRACE } from "./amount-limits.ts";
import { isInBondedFoam } from "./bonded-foam-place.ts";
import { type WaterZone, waterZones } from "./water-zones.ts";

/** The water of a build-up as a careful adviser judges it. */
export interface WaterJudged {
  level: WaterLevel;
  /** The section and zone that decide; null without water. */
  section: SectionCalculation | null;
  zone: WaterZone | null;
  /** Amount compared with the limit [kg/m²]: the peak on top of the level that settles. */
  amount: number;
  limit: AmountLimit | null;
  /** Growth in a year [kg/m²], and years until the remainder reaches 200 g/m²; null if all of it evaporates. */
  growthPerYear: number | null;
  yearsToGather: number | null;
}

/** Whether there is too much water: over its limit, or never drying. */
export function isTooMuch({ level }: Pick<WaterJudged, "level">): boolean {
  return level === "too much" || level === "stays";
}

/** If water takes longer than this to gather, it is a yearly trace [a] (this project's rule). */
export const LONG_ENOUGH = 50;

/**
 * The water of every zone of every section, with drying inside the month, worst first.
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

/** The same for a calculation whose zones are not kept. */
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

/** Exceeding a limit and never drying are equally bad: the share of the limit decides between them. */
const RANK: Readonly<Record<WaterLevel, number>> = { none: 0, trace: 1, some: 2, "too much": 3, stays: 3 };

/** Amount over its limit [–]: above 1 is too much. */
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
 * What a year leaves behind [kg/m²]: 0 where it settles at a level, null where all of it dries, be it in the ordinary
 * years that follow a year of one in ten.
 */
function growthOf({ withinMonth, repeating }: SectionCalculation, zone: WaterZone): number | null {
  if (withinMonth.verdict !== "stays wet" || !(zone.left > 0)) return null;
  if (repeating?.settles === true) return repeating.level > NOTHING_HELD ? 0 : null;
  return repeating?.growthPerYear ?? withinMonth.carriedOver;
}

/** The level of the water. Where next to nothing remains, or the water settles in bonded foam, the amount decides. */
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
