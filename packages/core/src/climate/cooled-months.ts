import type { Room } from "../project/types.ts";

/**
 * The months in which a room is kept cooler than outdoors. A cap that no monthly mean exceeds cools nothing.
 *
 * @param room - temperature rule and cooling cap
 * @param outdoorTemperature - twelve outdoor means [°C]
 * @returns months, 0 for January to 11; none for a room that is only heated
 * Source: this project's rule. Monthly means do not show short hot spells.
 */
export function cooledMonths(room: Room, outdoorTemperature: readonly number[]): number[] {
  return outdoorTemperature.flatMap((outdoors, month) => (isCooled(room, month, outdoors) ? [month] : []));
}

/** Whether a room is kept cooler than outdoors in a month (0 to 11) with the given outdoor mean [°C]. */
export function isCooled(room: Room, month: number, outdoorTemperature: number): boolean {
  return highestTemperature(room, month) < outdoorTemperature;
}

/** The highest temperature that a room's rules allow in a month [°C]; infinite without a limit. */
function highestTemperature(room: Room, month: number): number {
  const cap = room.cooling ?? Number.POSITIVE_INFINITY;
  return room.temperature.kind === "held" ? Math.min(room.temperature.months[month]!, cap) : cap;
}
