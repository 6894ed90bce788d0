import { relativeHumidity } from "../air/humidity.ts";
import { MONTH_NAMES } from "../constants.ts";
import { growthLimit } from "../further-checks/mould/growth-limit.ts";
import { type HumidInterface, humidInterfaces } from "../further-checks/mould/humid-interfaces.ts";
import type { AirMonths, Room } from "../project/types.ts";
import { canWetFraming } from "./amount-limits.ts";
import { CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import { holdsRain } from "./rain-on-wall.ts";
import type { Evidence, FindingWeight, RuledFinding } from "./types.ts";

/** At this humidity air is nearly wet [–]; timber and boards do not withstand it for so many months (this project's rules). */
const NEARLY_WET = 0.95;
const LONG = 3;
/** Two months are more than a short spell (this project's rule). */
const MORE_THAN_A_SPELL = 2;

/**
 * Interfaces inside the build-up that are humid enough for mould on material it feeds on, wet or not. For a partition
 * whose room is itself over the limit, only the room is reported.
 * Source: this project's rule (METHOD.md, Mould between layers) on the growth limit of Hukka and Viitanen 1999 (from memory).
 */
export function mouldAtInterfaceFindings(evidence: Evidence): RuledFinding[] {
  const damp = dampRooms(evidence);
  return damp.length > 0 ? damp : interfaces(evidence);
}

function interfaces({ buildUp, calculation, site, vapourLayer }: Evidence): RuledFinding[] {
  const [first, ...others] = humidInterfaces(calculation, site.outdoor);
  if (first === undefined) return [];
  const worst = others.reduce((most, entry) => (isWorse(entry, most) ? entry : most), first);
  const peak = worst.months.reduce((most, month) => (month.relativeHumidity > most.relativeHumidity ? month : most));
  const figures = {
    section: worst.section,
    place: worst.place,
    food: worst.food,
    months: worst.months.map(({ month }) => month),
    monthsNearlyWet: nearlyWet(worst).map(({ month }) => month),
    ...peak,
    places: others.length + 1,
    warmSide: vapourLayer.warmSide,
    holdsRain: holdsRain(buildUp),
  };
  return [found("mould-at-interface", mouldWeight(worst.months.length, nearlyWet(worst).length), figures)];
}

/**
 * How much humid months matter.
 *
 * @param months - over the growth limit [–]
 * @param nearlyWet - those of them at 95 % or more on timber or board [–]
 * @returns one month is a note, two a condition, three nearly wet change it by number
 * Source: METHOD.md, Mould between layers (this project's rule).
 */
export function mouldWeight(months: number, nearlyWet: number): FindingWeight {
  if (nearlyWet >= LONG) return OVER_LIMIT;
  return months >= MORE_THAN_A_SPELL ? CONDITION : NOTE;
}

/** Framing counts only with enough water to wet its outermost millimetre; boards are exposed with their whole face. */
function nearlyWet({ months, isOnWood, isOnFraming, water }: HumidInterface): HumidInterface["months"] {
  const counts = isOnWood && (!isOnFraming || canWetFraming(water));
  return counts ? months.filter((month) => month.relativeHumidity >= NEARLY_WET) : [];
}

/** Order: nearly wet for longest, then most months, then furthest over the limit. */
function isWorse(a: HumidInterface, b: HumidInterface): boolean {
  const long = (one: HumidInterface): number => Math.max(0, nearlyWet(one).length - LONG + 1);
  if (long(a) !== long(b)) return long(a) > long(b);
  if (a.months.length !== b.months.length) return a.months.length > b.months.length;
  return greatestExcess(a) > greatestExcess(b);
}

function greatestExcess({ months }: HumidInterface): number {
  return Math.max(...months.map(({ relativeHumidity: humidity, limit }) => humidity - limit));
}

/** Whether a room of a partition is itself damp enough for mould. */
export function hasDampRoom(evidence: Evidence): boolean {
  return dampRooms(evidence).length > 0;
}

/** Rooms beside a partition that are damp enough for mould by themselves; unheated rooms with outdoor air are left out. */
function dampRooms({ buildUp, room, farRoom, calculation }: Evidence): RuledFinding[] {
  if (buildUp.element !== "partition" || farRoom === null) return [];
  const sides: [Room, AirMonths][] = [
    [room, calculation.inside],
    [farRoom, calculation.farSide.months],
  ];
  return sides.flatMap(([each, air]) => (each.temperature.kind === "unheated" ? [] : dampRoom(each, air)));
}

function dampRoom(room: Room, air: AirMonths): RuledFinding[] {
  const months = MONTH_NAMES.flatMap((month, index) => {
    const temperature = air.temperature[index]!;
    const humidity = relativeHumidity(air.vapourPressure[index]!, temperature);
    const limit = growthLimit(temperature);
    return humidity > limit ? [{ month, relativeHumidity: humidity, limit }] : [];
  });
  if (months.length < LONG) return [];
  const peak = months.reduce((most, month) => (month.relativeHumidity > most.relativeHumidity ? month : most));
  return [found("room-too-damp", CONDITION, { room: room.name, months: months.map(({ month }) => month), ...peak })];
}
