import { type HumidInterface, humidInterfaces } from "../further-checks/mould/humid-interfaces.ts";
import { CONDITION, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Interfaces inside that are humid enough for mould on something it feeds on, though they need not be wet.
 * Source: this project's rule (METHOD.md, Mould between layers) on the growth limit of Hukka and Viitanen 1999 (from memory).
 */
export function mouldAtInterfaceFindings(evidence: Evidence): RuledFinding[] {
  const { calculation, site, vapourLayer } = evidence;
  const [first, ...others] = humidInterfaces(calculation, site.outdoor);
  if (first === undefined) return [];
  const worst = others.reduce((most, entry) => (isWorse(entry, most) ? entry : most), first);
  const peak = worst.months.reduce((most, month) => (month.relativeHumidity > most.relativeHumidity ? month : most));
  const figures = {
    section: worst.section,
    place: worst.place,
    food: worst.food,
    months: worst.months.map(({ month }) => month),
    ...peak,
    places: others.length + 1,
    warmSide: vapourLayer.warmSide,
  };
  return [found("mould-at-interface", worst.months.length > 1 ? CONDITION : NOTE, figures)];
}

/** More months first, then the greater humidity over the limit. */
function isWorse(a: HumidInterface, b: HumidInterface): boolean {
  if (a.months.length !== b.months.length) return a.months.length > b.months.length;
  return greatestExcess(a) > greatestExcess(b);
}

function greatestExcess({ months }: HumidInterface): number {
  return Math.max(...months.map(({ relativeHumidity, limit }) => relativeHumidity - limit));
}
