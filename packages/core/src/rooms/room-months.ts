import { isCooled } from "../climate/cooled-months.ts";
import { MONTHS_PER_YEAR } from "../constants.ts";
import { checkAir } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkRoom } from "../given/surroundings.ts";
import type { AirMonths, HumidityRule, Room } from "../project/types.ts";
import { requireNumber } from "../require.ts";
import { temperatureOnOrdinaryDays, temperatureOnOtherDays } from "./room-temperature.ts";
import { roomVapourPressure } from "./room-vapour-pressure.ts";

/** Days in a week. Source: definition. */
export const DAYS_PER_WEEK = 7;

/** A room's mean air in one month, and its air on ordinary days: the heated days, if only some are heated. */
export interface RoomMonth {
  temperature: number;
  vapourPressure: number;
  ordinaryDays: { temperature: number; vapourPressure: number };
}

/**
 * Indoor air for each month, by the room's own rules.
 *
 * @param room - temperature rule, humidity rule, cooling cap
 * @param outdoor - twelve months of outdoor air [°C], [Pa]
 * @param humidityMargin - factor on the vapour excess of classes [–], above 0
 * @returns twelve months of indoor air [°C], [Pa]; `impossibleMonths` finds months over saturation
 * Source: ISO 13788:2012 clause 4 and Annex A, EN 15026:2007 Annex C (from memory).
 */
export function roomMonths(room: Room, outdoor: AirMonths, humidityMargin: number): AirMonths {
  requireNumber(humidityMargin, "humidity margin", "", 0.01, 10);
  refuseFaults([...checkRoom(room, ["room"]), ...checkAir(outdoor, ["outdoor"])]);
  const months = outdoor.temperature.map((_, month) => roomMonth(room, month, outdoor, humidityMargin));
  return {
    temperature: months.map((month) => month.temperature),
    vapourPressure: months.map((month) => month.vapourPressure),
  };
}

/**
 * Indoor air of one month. A room heated on n days a week has the mean of its heated and its other days, weighted n/7
 * and 1 − n/7; on the other days it has the vapour pressure of outdoors.
 *
 * @param room - temperature rule, humidity rule, cooling cap
 * @param month - 0 for January to 11
 * @param outdoor - twelve months of outdoor air [°C], [Pa]
 * @param humidityMargin - factor on the vapour excess of classes [–], above 0
 * @returns temperature [°C] and vapour pressure [Pa] of the month and of its ordinary days
 */
export function roomMonth(room: Room, month: number, outdoor: AirMonths, humidityMargin: number): RoomMonth {
  const outdoorTemperature = outdoor.temperature[month]!;
  const outdoorVapourPressure = outdoor.vapourPressure[month]!;
  const indoorTemperature = temperatureOnOrdinaryDays(room, month, outdoorTemperature);
  const air = { month, outdoorTemperature, outdoorVapourPressure, indoorTemperature };
  const indoorVapourPressure = roomVapourPressure(humidityIn(room, month, outdoorTemperature), air, humidityMargin);
  const ordinaryDays = { temperature: indoorTemperature, vapourPressure: indoorVapourPressure };
  const share = shareOfHeatedDays(room);
  if (share === 1) return { ...ordinaryDays, ordinaryDays };
  const temperatureOfOtherDays = temperatureOnOtherDays(room, outdoorTemperature);
  return {
    temperature: share * indoorTemperature + (1 - share) * temperatureOfOtherDays,
    vapourPressure: share * indoorVapourPressure + (1 - share) * outdoorVapourPressure,
    ordinaryDays,
  };
}

/** The humidity rule for a month. In a cooled month the stated humidity counts: classes are made for heated rooms. */
function humidityIn(room: Room, month: number, outdoorTemperature: number): HumidityRule {
  const { humidity, humidityWhenCooled } = room;
  return humidityWhenCooled !== null && isCooled(room, month, outdoorTemperature)
    ? { kind: "months", relativeHumidity: new Array<number>(MONTHS_PER_YEAR).fill(humidityWhenCooled) }
    : humidity;
}

/** Share of the days on which the room is heated, 0 to 1; 1 for every other kind of room. */
function shareOfHeatedDays(room: Room): number {
  if (room.temperature.kind !== "heated") return 1;
  const { daysPerWeek } = room.temperature;
  if (!(daysPerWeek >= 0 && daysPerWeek <= DAYS_PER_WEEK)) {
    throw new RangeError(`heated days a week must lie between 0 and ${DAYS_PER_WEEK}, were ${daysPerWeek}`);
  }
  return daysPerWeek / DAYS_PER_WEEK;
}
