import { liesOutsideCountedLayers } from "../further-checks/trapped-water/trapped-water.ts";
import { MOST_CONDENSATE_ON_TIGHT } from "../further-checks/water-limits.ts";
import type { TrappedWaterData } from "../result/types.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Water that takes longer than this needs more than a year's seasons to dry [d] (this project's rule). */
const A_YEAR = 365;

/**
 * Construction moisture: how long it takes to dry, where it goes, and which change would dry it faster.
 * Source: ISO 13788:2012 clause 7 (from memory).
 */
export function trappedWaterFindings({ buildUp, checks }: Evidence): RuledFinding[] {
  const outside = buildUp.trappedWater.filter((stated) => liesOutsideCountedLayers(stated, buildUp));
  return [
    ...checks.trappedWater.map(ofCountedLayer),
    ...outside.map(({ layer }) => found("trapped-water", NOTE, { isCounted: false, layer })),
  ];
}

function ofCountedLayer({ held: _, heldElsewhere: __, ...water }: TrappedWaterData): RuledFinding {
  const isSlow = water.daysToDry === null || water.daysToDry > A_YEAR;
  const gathers = water.mostHeldElsewhere > MOST_CONDENSATE_ON_TIGHT;
  return found("trapped-water", isSlow || gathers ? CONDITION : NOTE, { isCounted: true, ...water });
}
