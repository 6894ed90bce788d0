import type { BuildUpCalculation } from "../../calculate-build-up.ts";
import type { Room } from "../../project/types.ts";
import type { TwoSeasonReason } from "../../result/types.ts";
import { vapourExcessOfClass } from "../../rooms/humidity-class.ts";

/** Highest humidity class that the check covers. Source: DIN 4108-3 (from memory), rooms of dwellings and offices. */
export const WETTEST_CLASS = 3;

/** Relative tolerance for exceeding the class [–]: rounding errors only. */
const SAME = 1e-9;

/**
 * Why the two-season check does not apply to a build-up.
 *
 * @param calculation - the build-up's figures
 * @param room - its room
 * @param outdoorTemperature - twelve outdoor temperatures [°C]
 * @param humidityMargin - factor on the vapour excess of humidity classes [–]: a class 3 with a margin is still class 3
 * @returns the reason, or null where the check applies
 * Source: DIN 4108-3 (from memory): heated rooms, none with cooling (whether or not a month's mean reaches its cap), up
 * to humidity class 3, against outdoor air.
 */
export function reasonOutOfScope(
  calculation: BuildUpCalculation,
  room: Room,
  outdoorTemperature: readonly number[],
  humidityMargin: number,
): TwoSeasonReason | null {
  if (calculation.buildUp.faces !== "outdoors") return "not against outdoor air";
  if (room.temperature.kind === "unheated") return "not heated";
  if (room.cooling !== null) return "cooled";
  if (room.pool || room.burstsOfSteam) return "pool or steam";
  const { inside, farSide } = calculation;
  const wetter = inside.vapourPressure.some((pressure, month) => {
    const excess = pressure - farSide.months.vapourPressure[month]!;
    const ofClass = humidityMargin * vapourExcessOfClass(WETTEST_CLASS, outdoorTemperature[month]!);
    return excess > ofClass + SAME * pressure;
  });
  return wetter ? "wetter than its class" : null;
}
