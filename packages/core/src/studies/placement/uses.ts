import { MONTHS_PER_YEAR } from "../../constants.ts";
import type { Room } from "../../project/types.ts";
import type { PlacementRow } from "../../result/types.ts";

/** A cooled room is kept at or below this [°C], unless the project states a cap (this project's rule). */
export const COOLED_TO = 24;

/** Its relative humidity unless the project states one [–] (this project's rule; classes are for heated rooms). */
export const HUMIDITY_WHEN_COOLED = 0.55;

/** A room, as used in a row of the study. */
export interface RoomInUse {
  use: PlacementRow["use"];
  room: Room;
}

/**
 * A room without cooling, and the same room cooled.
 *
 * @param room - the project's room
 * @returns the room by its own rules without cooling; then cooled to its own cap or 24 °C, at its own stated humidity
 *   or 55 %
 */
export function usesOf(room: Room): RoomInUse[] {
  const stated = room.humidity.kind === "months";
  const constant = Array.from({ length: MONTHS_PER_YEAR }, () => HUMIDITY_WHEN_COOLED);
  return [
    { use: room.temperature.kind === "unheated" ? "unheated" : "heated", room: { ...room, cooling: null } },
    {
      use: "cooled",
      room: {
        ...room,
        cooling: room.cooling ?? COOLED_TO,
        humidity: stated ? room.humidity : { kind: "months", relativeHumidity: constant },
      },
    },
  ];
}
