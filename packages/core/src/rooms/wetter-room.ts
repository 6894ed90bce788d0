import type { Room } from "../project/types.ts";

/** A room with a stated relative humidity is taken this much wetter [–], up to HIGHEST_HUMIDITY. This project's rule. */
const MORE_HUMIDITY = 0.1;
const HIGHEST_HUMIDITY = 0.95;
/** A room with a moisture balance is taken to make this much more vapour [–]. This project's rule. */
const MORE_VAPOUR = 1.5;

/**
 * The same room, wetter than stated: one class up, ten points of relative humidity more, or half as much vapour again.
 *
 * @param room - the room
 * @returns the wetter room; a room whose air is that of outdoors stays as it is
 * Source: this project's rule: what a change of use or a wet winter may bring.
 */
export function wetterRoom(room: Room): Room {
  const { humidity } = room;
  switch (humidity.kind) {
    case "class":
      return { ...room, humidity: { kind: "class", class: Math.min(5, humidity.class + 1) as 1 | 2 | 3 | 4 | 5 } };
    case "months":
      return { ...room, humidity: { kind: "months", relativeHumidity: humidity.relativeHumidity.map(wetter) } };
    case "by outdoor temperature":
      return { ...room, humidity: { kind: "by outdoor temperature", level: "high" } };
    case "balance":
      return { ...room, humidity: { ...humidity, production: humidity.production * MORE_VAPOUR } };
    case "as outdoors":
      return room;
  }
}

function wetter(relativeHumidity: number): number {
  return Math.max(relativeHumidity, Math.min(HIGHEST_HUMIDITY, relativeHumidity + MORE_HUMIDITY));
}
