import { relativeHumidity } from "../air/humidity.ts";
import { MONTH_NAMES } from "../constants.ts";
import { growthLimit } from "../further-checks/mould/growth-limit.ts";
import { type HumidInterface, humidInterfaces } from "../further-checks/mould/humid-interfaces.ts";
import type { AirMonths, Room } from "../project/types.ts";
import { canWetFraming } from "./amount-limits.ts";
import { CONDITION, found, NOTE, OVER_LIMIT } from "./found.ts";
import { holdsRain } from "./rain-on-wall.ts";
import type { Evidence, FindingWeight, RuledFinding } from "./types.ts";

/** Humidity that is nearly wet [–], and months of it that damage timber and board (this project's rules). */
const NEARLY_WET = 0.95;
const LONG = 3;
/** Months that are more than a short spell (this project's rule). */
const MORE_THAN_A_SPELL = 2;

/**
 * Interfaces humid enough for mould on a material that feeds it, though they need not be wet. For a partition with a
 * room that is itself over the limit, only the room is reported.
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
 * Severity and effect of humid months.
 *
 * @param months - over the growth limit [–]
 * @param nearlyWet - those of them at 95 % or more on timber or board [–]
 * @returns a note for one month, a condition for two, a number over its limit for three nearly wet
 * Source: METHOD.md, Mould between layers (this project's rule).
 */
export function mouldWeight(months: number, nearlyWet: number): FindingWeight {
  if (nearlyWet >= LONG) return OVER_LIMIT;
  return months >= MORE_THAN_A_SPELL ? CONDITION : NOTE;
}

/** Framing counts only if its outermost millimetre can be wetted; boards are exposed over their whole face. */
function nearlyWet({ months, isOnWood, isOnFraming, water }: HumidInterface): HumidInterface["months"] {
  const counts = isOnWood && (!isOnFraming || canWetFraming(water));
  return counts ? months.filter((month) => month.relativeHumidity >= NEARLY_WET) : [];
}

/** Worse: longer nearly wet, then more months, then humidity further over the limit. */
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

/** Rooms of a partition that are damp enough for mould by themselves; not an unheated room with outdoor air. */
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
