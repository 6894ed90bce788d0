import type { Room } from "../project/types.ts";
import type { HumidityClass } from "./humidity-class.ts";

/** Added to a room's stated relative humidity [–], up to HIGHEST_HUMIDITY. This project's rule. */
const MORE_HUMIDITY = 0.1;
const HIGHEST_HUMIDITY = 0.95;
/** Factor on the water given off in a room with a moisture balance [–]. This project's rule. */
const MORE_VAPOUR = 1.5;

/** The next class above each; null for the wettest. */
const NEXT_CLASS: Readonly<Record<HumidityClass, HumidityClass | null>> = { 1: 2, 2: 3, 3: 4, 4: 5, 5: null };

/**
 * The same room, wetter than stated: one class up, ten points more relative humidity, or half as much vapour again.
 *
 * @param stated - the room
 * @returns the wetter room; the same room if there is nothing wetter: class 5, high occupancy by outdoor temperature,
 *   95 % and over, and outdoor air
 * Source: this project's rule, for a change of use or a wet winter.
 */
export function wetterRoom(stated: Room): Room {
  const { humidity, humidityWhenCooled } = stated;
  const room = humidityWhenCooled === null ? stated : { ...stated, humidityWhenCooled: wetter(humidityWhenCooled) };
  switch (humidity.kind) {
    case "class": {
      const next = NEXT_CLASS[humidity.class];
      return next === null ? room : { ...room, humidity: { kind: "class", class: next } };
    }
    case "months":
      return { ...room, humidity: { kind: "months", relativeHumidity: humidity.relativeHumidity.map(wetter) } };
    case "by outdoor temperature":
      return humidity.level === "high"
        ? room
        : { ...room, humidity: { kind: "by outdoor temperature", level: "high" } };
    case "balance":
      return { ...room, humidity: { ...humidity, production: humidity.production * MORE_VAPOUR } };
    case "as outdoors":
      return room;
  }
}

function wetter(relativeHumidity: number): number {
  return Math.max(relativeHumidity, Math.min(HIGHEST_HUMIDITY, relativeHumidity + MORE_HUMIDITY));
}
