import { saturationPressure } from "../air/saturation-pressure.ts";
import { checkAir } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkRoom } from "../given/surroundings.ts";
import type { AirMonths, Room } from "../project/types.ts";
import { requireNumber } from "../require.ts";
import { roomMonth } from "./room-months.ts";

/** Saturation may be exceeded by this share before a month is impossible [–]: it covers rounding only. */
export const SATURATION_TOLERANCE = 1e-9;

/** A month in which the room as stated would hold more vapour than air can. */
export interface ImpossibleMonth {
  /** Index from 0, January. */
  month: number;
  /** pi as the rules give it [Pa]. */
  vapourPressure: number;
  /** psat(θi) [Pa]. */
  saturation: number;
}

/**
 * The months in which a room as stated cannot exist: its vapour pressure would exceed saturation.
 *
 * @param room - temperature rule, humidity rule, cooling cap
 * @param outdoor - twelve months of outdoor air [°C], [Pa]
 * @param humidityMargin - factor on the vapour excess of classes [–], above 0
 * @returns the months, with the vapour pressure required and the saturation pressure. For a room heated on some days,
 *   the heated days are checked as well as the month's mean, and the worse of the two is given
 * Source: definition: vapour pressure cannot exceed saturation pressure.
 */
export function impossibleMonths(room: Room, outdoor: AirMonths, humidityMargin: number): ImpossibleMonth[] {
  refuseFaults([...checkRoom(room, ["room"]), ...checkAir(outdoor, ["outdoor"])]);
  requireNumber(humidityMargin, "humidity margin", "", 0.01, 10);
  return outdoor.temperature.flatMap((_, month) => {
    const air = roomMonth(room, month, outdoor, humidityMargin);
    const states = [air, air.ordinaryDays].map(({ temperature, vapourPressure }) => ({
      month,
      vapourPressure,
      saturation: saturationPressure(temperature),
    }));
    const [mean, ordinaryDays] = states as [ImpossibleMonth, ImpossibleMonth];
    const worse = overSaturation(ordinaryDays) > overSaturation(mean) ? ordinaryDays : mean;
    return overSaturation(worse) > SATURATION_TOLERANCE ? [worse] : [];
  });
}

/** By what share of saturation the vapour pressure exceeds it [–]; negative if it does not. */
function overSaturation({ vapourPressure, saturation }: ImpossibleMonth): number {
  return vapourPressure / saturation - 1;
}
