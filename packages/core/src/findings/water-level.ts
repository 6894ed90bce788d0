import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import { type AmountLimit, amountLimits, DROPS_GATHER, TRACE } from "./amount-limits.ts";
import { type WaterZone, waterZones } from "./water-zones.ts";

/** How much water there is, by what it sits on. */
export type WaterLevel = "none" | "trace" | "some" | "too much" | "stays";

/** The water of a build-up as a careful adviser looks at it. */
export interface WaterJudged {
  level: WaterLevel;
  /** The section and zone that decide; null without water. */
  section: SectionCalculation | null;
  zone: WaterZone | null;
  /** Amount held against the limit [kg/m²]: the peak, and what settles beneath it. */
  amount: number;
  limit: AmountLimit | null;
  /** Growth a year [kg/m²] and years until 200 g/m²; null when it dries out. */
  growthPerYear: number | null;
  yearsToGather: number | null;
}

/** More water than is accepted: over its limit, or staying for good. */
export function isTooMuch({ level }: Pick<WaterJudged, "level">): boolean {
  return level === "too much" || level === "stays";
}

/** Water that takes longer than this to gather is a trace a year [a] (this project's rule). */
export const LONG_ENOUGH = 50;

/**
 * The water of the section that gives most cause for concern, with drying inside the month.
 *
 * @param calculation - the build-up's figures
 * @returns level, section, zone and limit
 * Source: method.md 7 (this project's rule on the limits of `amount-limits.ts`).
 */
export function judgeWater(calculation: BuildUpCalculation): WaterJudged {
  let worst = NO_WATER_JUDGED;
  for (const section of calculation.sections) {
    for (const zone of waterZones(section, section.withinMonth, calculation.buildUp)) {
      const judged = judgeZone(section, zone, calculation);
      const heavier = RANK[judged.level] - RANK[worst.level] || share(judged) - share(worst);
      if (heavier > 0) worst = judged;
    }
  }
  return worst;
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

const RANK: Readonly<Record<WaterLevel, number>> = { none: 0, trace: 1, some: 2, "too much": 3, stays: 4 };

function share(judged: WaterJudged): number {
  return judged.limit === null ? 0 : judged.amount / judged.limit.amount;
}

function judgeZone(section: SectionCalculation, zone: WaterZone, calculation: BuildUpCalculation): WaterJudged {
  const limit = amountLimits(zone, section, calculation.buildUp)[0]!;
  const stays = section.withinMonth.verdict === "stays wet" && zone.left > 0;
  const settles = stays && section.repeating?.settles === true;
  const beneath = settles ? section.repeating!.level : 0;
  const amount = zone.peak + beneath;
  const growthPerYear = !stays
    ? null
    : settles
      ? 0
      : (section.repeating?.growthPerYear ?? section.withinMonth.carriedOver);
  const yearsToGather = growthPerYear === null || !(growthPerYear > 0) ? null : DROPS_GATHER / growthPerYear;
  return { level: levelOf(), section, zone, amount, limit, growthPerYear, yearsToGather };

  function levelOf(): WaterLevel {
    const slow = yearsToGather !== null && yearsToGather >= LONG_ENOUGH;
    if (stays && !(amount <= TRACE && (settles || slow))) return "stays";
    if (amount <= TRACE) return "trace";
    return amount > limit.amount ? "too much" : "some";
  }
}
