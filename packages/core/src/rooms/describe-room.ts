import { HOURS_PER_DAY, SECONDS_PER_DAY } from "../constants.ts";
import type { HumidityRule, Room } from "../project/types.ts";
import { formatNumber } from "../quantities/format-quantity.ts";
import { DAYS_PER_WEEK } from "./room-months.ts";

/** A room's rules in words, with the standard that they come from. */
export interface RoomDescription {
  temperatureRule: string;
  humidityRule: string;
  source: string;
}

/**
 * Puts a room's rules for temperature and humidity into words, with every assumption.
 *
 * @param room - the room
 * @param humidityMargin - factor on the vapour excess of classes [–]
 * @returns one sentence without a full stop for each rule, and the source of the rules
 * Source: that of each rule.
 */
export function describeRoom(room: Room, humidityMargin = 1): RoomDescription {
  const cap = room.cooling === null ? "" : `; cooled to at most ${short(room.cooling)} °C`;
  return {
    temperatureRule: temperatureInWords(room) + cap,
    humidityRule:
      humidityInWords(room.humidity) + marginInWords(room, humidityMargin) + onOtherDays(room) + whenCooled(room),
    source: sourceOf(room),
  };
}

function marginInWords({ humidity }: Room, humidityMargin: number): string {
  return humidity.kind === "class" && humidityMargin !== 1 ? `, that excess times ${short(humidityMargin)}` : "";
}

function temperatureInWords(room: Room): string {
  const rule = room.temperature;
  switch (rule.kind) {
    case "heated": {
      const rise =
        room.humidity.kind === "by outdoor temperature"
          ? ", rising by up to 5 K as the outdoor mean goes from 10 °C to 20 °C"
          : "";
      const whenWarmer = "; in warmer months it follows outdoors";
      return `heated to ${short(rule.setPoint)} °C${rise}${someDays(rule)}${whenWarmer}`;
    }
    case "held": {
      const [first] = rule.months;
      return rule.months.every((month) => month === first)
        ? `held at ${short(first!)} °C`
        : `held at ${rule.months.map(short).join(", ")} °C, January to December`;
    }
    case "by outdoor temperature":
      return "20 °C, rising to 25 °C as the outdoor mean goes from 10 °C to 20 °C";
    case "unheated":
      return "unheated: the temperature of outdoors";
  }
}

function someDays(rule: { daysPerWeek: number; otherwise: number | null }): string {
  if (rule.daysPerWeek === DAYS_PER_WEEK) return "";
  const days = `${short(rule.daysPerWeek)} ${rule.daysPerWeek === 1 ? "day" : "days"} a week`;
  const otherwise = rule.otherwise === null ? "the temperature of outdoors" : `at least ${short(rule.otherwise)} °C`;
  return (
    ` on ${days}, on other days ${otherwise}; each month has the mean of its days, ` +
    `${short(rule.daysPerWeek)} in ${DAYS_PER_WEEK} heated, without heat stored in the walls`
  );
}

function whenCooled({ humidityWhenCooled }: Room): string {
  return humidityWhenCooled === null ? "" : `; relative humidity ${percent(humidityWhenCooled)} % in cooled months`;
}

function onOtherDays(room: Room): string {
  const rule = room.temperature;
  const someDaysOnly = rule.kind === "heated" && rule.daysPerWeek !== DAYS_PER_WEEK;
  return someDaysOnly && room.humidity.kind !== "as outdoors"
    ? "; on unheated days the vapour pressure of outdoors"
    : "";
}

function humidityInWords(rule: HumidityRule): string {
  switch (rule.kind) {
    case "class":
      return `humidity class ${rule.class}: in cold months damper than outdoors, from 20 °C outdoors the vapour pressure of outdoors`;
    case "months": {
      const [first] = rule.relativeHumidity;
      return rule.relativeHumidity.every((month) => month === first)
        ? `relative humidity ${percent(first!)} % all year`
        : `relative humidity ${rule.relativeHumidity.map(percent).join(", ")} %, January to December`;
    }
    case "by outdoor temperature":
      return rule.level === "normal"
        ? "relative humidity by outdoor temperature, normal use: 30 % at −10 °C rising to 60 % at 20 °C"
        : "relative humidity by outdoor temperature, high use: 40 % at −10 °C rising to 70 % at 20 °C";
    case "balance": {
      const production = short(rule.production * SECONDS_PER_DAY);
      return `moisture balance: ${production} kg of water a day into ${short(rule.volume)} m³ with ${airChangesInWords(rule.airChanges)} an hour`;
    }
    case "as outdoors":
      return "the vapour pressure of outdoors";
  }
}

/** Air changes [1/s] in words, per hour: "1 air change", "0.6 air changes". */
export function airChangesInWords(airChanges: number): string {
  const count = airChangesPerHour(airChanges);
  return `${count} air ${count === "1" ? "change" : "changes"}`;
}

/** Air changes [1/s] as a figure per hour. */
export function airChangesPerHour(airChanges: number): string {
  return short((airChanges * SECONDS_PER_DAY) / HOURS_PER_DAY);
}

function sourceOf(room: Room): string {
  if (room.humidity.kind === "by outdoor temperature" || room.temperature.kind === "by outdoor temperature") {
    return "EN 15026:2007 Annex C";
  }
  if (room.humidity.kind === "class" || room.humidity.kind === "balance") return "ISO 13788:2012 Annex A";
  return room.temperature.kind === "unheated"
    ? "assumption of this project: outdoor air"
    : "stated in the project file";
}

/** A figure with at most two decimals, without trailing zeros. */
function short(value: number): string {
  return formatNumber(value, 2).replace(/\.?0+$/, "");
}

function percent(fraction: number): string {
  return short(fraction * 100);
}
