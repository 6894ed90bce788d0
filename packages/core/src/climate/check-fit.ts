import { MONTH_NAMES } from "../constants.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkClimate, checkRoom } from "../given/surroundings.ts";
import { inSpeech } from "../problems/wording.ts";
import type { OutdoorClimate, Room } from "../project/types.ts";
import { formatQuantity } from "../quantities/format-quantity.ts";
import { climateMonths } from "./climate-months.ts";
import { cooledMonths } from "./cooled-months.ts";

/** A note that a climate and a room are inconsistent; it is only reported. */
export interface FitNote {
  code: "hot-humid-heated-only" | "heating-never-runs" | "cooling-never-runs" | "class-in-cooled-room";
  message: string;
}

/**
 * A month is hot and humid from this mean temperature [°C] and vapour pressure [Pa] (dew point 17.5 °C).
 * Rule of this project.
 */
export const HOT_MONTH = 22;
export const HUMID_MONTH = 2000;

/** With this many hot and humid months, rooms are commonly cooled. Rule of this project. */
export const HOT_HUMID_SEASON = 3;

/**
 * Notes where a climate does not fit the use of a room: a hot and humid climate with heating alone, heating or cooling
 * that never runs, a humidity class for a room that is cooled.
 *
 * @param climate - the climate the project is worked out for, corrections included
 * @param room - the room as the project states it
 * @returns notes; none if everything fits
 */
export function checkFit(climate: OutdoorClimate, room: Room): FitNote[] {
  refuseFaults([...checkClimate(climate, ["climate"]), ...checkRoom(room, ["room"])]);
  const checks = [hotHumidHeatedOnly, heatingNeverRuns, coolingNeverRuns, classInCooledRoom];
  return checks.map((check) => check(climate, room)).filter((note) => note !== null);
}

function hotHumidHeatedOnly(climate: OutdoorClimate, room: Room): FitNote | null {
  if (room.temperature.kind !== "heated" || room.cooling !== null) return null;
  const outdoor = climateMonths(climate);
  const season = monthsWhere(
    (month) => outdoor.temperature[month]! >= HOT_MONTH && outdoor.vapourPressure[month]! >= HUMID_MONTH,
  );
  if (season.length < HOT_HUMID_SEASON) return null;
  const message =
    `${climate.name} is hot and humid in ${listed(season)}, and ${roomName(room)} is only heated. Rooms there are often ` +
    "cooled, and then vapour is driven inwards. If this one is, state its cooling and humidity and assess again.";
  return { code: "hot-humid-heated-only", message };
}

function heatingNeverRuns(climate: OutdoorClimate, room: Room): FitNote | null {
  if (room.temperature.kind !== "heated") return null;
  const coldest = Math.min(...climate.temperature);
  if (room.temperature.setPoint > coldest) return null;
  const message =
    `${roomName(room)} is heated to ${room.temperature.setPoint} °C, but no month at ${climate.name} is colder than ` +
    `${formatQuantity(coldest, "temperature")}: the heating never runs. Check the set point and the climate.`;
  return { code: "heating-never-runs", message };
}

function coolingNeverRuns(climate: OutdoorClimate, room: Room): FitNote | null {
  if (room.cooling === null || room.temperature.kind === "held") return null;
  if (cooledMonths(room, climate.temperature).length > 0) return null;
  const warmest = Math.max(...climate.temperature);
  const message =
    `${roomName(room)} is cooled to ${room.cooling} °C, but no month at ${climate.name} is warmer than ` +
    `${formatQuantity(warmest, "temperature")} on average: in monthly means the cooling never runs. Monthly means do not show ` +
    "short hot spells.";
  return { code: "cooling-never-runs", message };
}

function classInCooledRoom(climate: OutdoorClimate, room: Room): FitNote | null {
  if (room.humidity.kind !== "class" || room.humidityWhenCooled !== null) return null;
  const cooled = cooledMonths(room, climate.temperature);
  if (cooled.length === 0) return null;
  const message =
    `${roomName(room)} is cooler than outdoors in ${listed(cooled)}, but has humidity class ${room.humidity.class}. The ` +
    "classes are for heated rooms: state the humidity of the cooled months (`humidity when cooled: 55 %`).";
  return { code: "class-in-cooled-room", message };
}

function monthsWhere(holds: (month: number) => boolean): number[] {
  return MONTH_NAMES.map((_, month) => month).filter(holds);
}

function listed(months: readonly number[]): string {
  return inSpeech(
    months.map((month) => MONTH_NAMES[month]!),
    "and",
  );
}

function roomName(room: Room): string {
  return room.name === "indoor" ? "the room" : `the room “${room.name}”`;
}
