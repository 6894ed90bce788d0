import type { Room } from "../project/types.ts";
import { DAYS_PER_WEEK } from "./room-months.ts";

/**
 * The same room, heated on every day of the week.
 *
 * @param room - the room
 * @returns the room; unchanged if it is already heated daily, or not heated at all
 * Source: this project's rule, for a room that may be used more often.
 */
export function heatedDaily(room: Room): Room {
  const { temperature } = room;
  if (temperature.kind !== "heated" || temperature.daysPerWeek === DAYS_PER_WEEK) return room;
  return { ...room, temperature: { ...temperature, daysPerWeek: DAYS_PER_WEEK } };
}
