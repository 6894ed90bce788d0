import { type HumidInterface, humidInterfaces } from "../further-checks/mould/humid-interfaces.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { monthsInWords } from "./figures-in-words.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Interfaces inside that are humid enough for mould on something it feeds on, though they need not be wet.
 * Source: this project's rule (METHOD.md, Mould between layers) on the growth limit of Hukka and Viitanen 1999 (from memory).
 */
export function mouldAtInterfaceFindings(evidence: Evidence): RuledFinding[] {
  const { calculation, site } = evidence;
  const [first, ...others] = humidInterfaces(calculation, site.outdoor);
  if (first === undefined) return [];
  const worst = others.reduce((most, entry) => (isWorse(entry, most) ? entry : most), first);
  const peak = worst.months.reduce((most, month) => (month.relativeHumidity > most.relativeHumidity ? month : most));
  const long = worst.months.length > 1;
  const place = worst.section === "whole" ? worst.where : `${worst.where} (${worst.section})`;
  const names = monthsInWords(worst.months.map(({ month }) => month));
  const also =
    others.length > 0 ? ` It is one of ${others.length + 1} such places, the one that is humid longest.` : "";
  return [
    {
      code: "mould-at-interface",
      severity: long ? "caution" : "note",
      effect: long ? "condition" : "none",
      message:
        `Mould can grow ${place}, on ${worst.food}: in ${names} the air there is more humid than mould needs, at most ` +
        `${humidity(peak.relativeHumidity)} in ${peak.month} (limit ${humidity(peak.limit)} at ${formatQuantity(peak.temperature, "temperature")}, outdoors ${humidity(peak.outdoors)}).${also}`,
      advice: long ? drierOrWarmer(evidence) : null,
      source: "growth limit of Hukka and Viitanen 1999 (from memory), above outdoor humidity (this project's rule)",
      figures: {
        months: worst.months.length,
        relativeHumidity: peak.relativeHumidity,
        limit: peak.limit,
        temperature: peak.temperature,
        outdoors: peak.outdoors,
        section: worst.section,
        where: worst.where,
      },
    },
  ];
}

/** What keeps a place inside drier or warmer, by the side that the vapour comes from. */
function drierOrWarmer({ buildUp, vapourLayer }: Evidence): string {
  if (buildUp.faces === "void") {
    return "Cover the bare ground of the void, keep its openings clear, and insulate below that place so that it stays warmer.";
  }
  return vapourLayer.warmSide === buildUp.room
    ? "Let less vapour reach that place (a tighter vapour layer on its room side) or more leave it (more open layers outside it), or insulate outside it so that it stays warmer."
    : "Let less vapour reach that place from the far side, or more leave it towards the room: nothing tight on its room side.";
}

/** More months first, then the greater humidity over the limit. */
function isWorse(a: HumidInterface, b: HumidInterface): boolean {
  if (a.months.length !== b.months.length) return a.months.length > b.months.length;
  return greatestExcess(a) > greatestExcess(b);
}

function greatestExcess({ months }: HumidInterface): number {
  return Math.max(...months.map(({ relativeHumidity, limit }) => relativeHumidity - limit));
}

function humidity(relativeHumidity: number): string {
  return formatQuantity(relativeHumidity, "relative humidity");
}
