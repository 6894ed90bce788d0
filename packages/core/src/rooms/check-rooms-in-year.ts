import { saturationPressure } from "../air/saturation-pressure.ts";
import { climateMonths } from "../climate/climate-months.ts";
import { MONTH_NAMES } from "../constants.ts";
import type { Problem } from "../problems/types.ts";
import type { ReadingContext } from "../project/reading-context.ts";
import { pathOfRoom, type Rooms } from "../project/resolve/resolve-room.ts";
import type { AirMonths, OutdoorClimate } from "../project/types.ts";
import { type ImpossibleMonth, impossibleMonths } from "./impossible-months.ts";

/**
 * Adds a problem for every room that cannot exist as stated, because its air would hold more vapour than air can.
 *
 * @param rooms - as read; null where a room has problems already
 * @param climate - the year the project is worked out for
 * @param humidityMargin - factor on the vapour excess of classes [–]
 * @param context - where problems go
 */
export function checkRoomsInYear(
  rooms: Rooms,
  climate: OutdoorClimate,
  humidityMargin: number,
  context: ReadingContext,
): void {
  const outdoor = climateMonths(climate);
  for (const [name, room] of rooms) {
    const months = room === null ? [] : impossibleMonths(room, outdoor, humidityMargin);
    if (months.length > 0) {
      context.collector.addAtKey("room-impossible", pathOfRoom(name), detailsOf(months, outdoor));
    }
  }
}

function detailsOf(months: readonly ImpossibleMonth[], outdoor: AirMonths): Problem["details"] {
  const worst = months.reduce((one, other) =>
    other.vapourPressure / other.saturation > one.vapourPressure / one.saturation ? other : one,
  );
  return {
    months: months.map(({ month }) => MONTH_NAMES[month]!),
    worst: MONTH_NAMES[worst.month]!,
    vapourPressure: Math.round(worst.vapourPressure),
    saturation: Math.round(worst.saturation),
    isCoolerThanOutdoors: worst.saturation < saturationPressure(outdoor.temperature[worst.month]!) ? "yes" : "no",
  };
}
