import type { Room } from "../project/types.ts";
import { TEMPERATURE_IN_COLD_WEATHER, temperatureRiseByOutdoors } from "./by-outdoor-temperature.ts";

/**
 * Air temperature of a room on its ordinary days (the heated days, if it is heated only on some).
 *
 * @param room - the room's rules
 * @param month - 0 for January to 11
 * @param outdoorTemperature - θe of that month [°C]
 * @returns θi [°C]: the rule's value, never above the cooling cap
 * Source: ISO 13788:2012 clause 4 and Annex A, EN 15026:2007 Annex C (from memory).
 * Assumes that a heated room is never colder than outdoors.
 */
export function temperatureOnOrdinaryDays(room: Room, month: number, outdoorTemperature: number): number {
  return capped(room, uncappedTemperature(room, month, outdoorTemperature));
}

/**
 * Air temperature of a room on the days when it is not heated.
 *
 * @param room - a room, heated on some days
 * @param outdoorTemperature - θe of the month [°C]
 * @returns θi [°C]: the stated temperature or that of outdoors, whichever is warmer, never above the cooling cap
 */
export function temperatureOnOtherDays(room: Room, outdoorTemperature: number): number {
  const floor = room.temperature.kind === "heated" ? room.temperature.otherwise : null;
  return capped(room, Math.max(floor ?? outdoorTemperature, outdoorTemperature));
}

function uncappedTemperature(room: Room, month: number, outdoorTemperature: number): number {
  const rule = room.temperature;
  switch (rule.kind) {
    case "heated": {
      const rise = room.humidity.kind === "by outdoor temperature" ? temperatureRiseByOutdoors(outdoorTemperature) : 0;
      return Math.max(rule.setPoint + rise, outdoorTemperature);
    }
    case "held":
      return rule.months[month]!;
    case "by outdoor temperature":
      return TEMPERATURE_IN_COLD_WEATHER + temperatureRiseByOutdoors(outdoorTemperature);
    case "unheated":
      return outdoorTemperature;
  }
}

function capped(room: Room, temperature: number): number {
  return room.cooling === null ? temperature : Math.min(temperature, room.cooling);
}
