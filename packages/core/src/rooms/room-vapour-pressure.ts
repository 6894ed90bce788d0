import { vapourPressure } from "../air/humidity.ts";
import type { HumidityRule } from "../project/types.ts";
import { humidityByOutdoors } from "./by-outdoor-temperature.ts";
import { vapourExcessOfClass } from "./humidity-class.ts";
import { vapourExcessOfBalance } from "./moisture-balance.ts";

/** What a room's humidity rule needs to know about one month. */
export interface MonthOfRoom {
  /** 0 for January to 11. */
  month: number;
  /** θe [°C] */
  outdoorTemperature: number;
  /** pe [Pa] */
  outdoorVapourPressure: number;
  /** θi [°C] */
  indoorTemperature: number;
}

/**
 * Vapour pressure of a room by its humidity rule.
 *
 * @param rule - the humidity rule
 * @param air - the month's outdoor air and the room's temperature
 * @param humidityMargin - factor on the vapour excess of classes [–], 1 unless stated; the 2001 edition required 1.10
 * @returns pi [Pa]; it may exceed saturation (see `impossibleMonths`)
 * @throws RangeError when the margin is not above 0 or the rule's values are out of range
 * Source: ISO 13788:2012 Annex A, EN 15026:2007 Annex C (from memory).
 */
export function roomVapourPressure(rule: HumidityRule, air: MonthOfRoom, humidityMargin: number): number {
  if (!(humidityMargin > 0 && Number.isFinite(humidityMargin))) {
    throw new RangeError(`humidity margin must be above 0, was ${humidityMargin}`);
  }
  switch (rule.kind) {
    case "class": {
      const excess = vapourExcessOfClass(rule.class, air.outdoorTemperature);
      return air.outdoorVapourPressure + humidityMargin * excess;
    }
    case "months":
      return vapourPressure(rule.relativeHumidity[air.month]!, air.indoorTemperature);
    case "by outdoor temperature":
      return vapourPressure(humidityByOutdoors(rule.level, air.outdoorTemperature), air.indoorTemperature);
    case "balance":
      return air.outdoorVapourPressure + vapourExcessOfBalance(rule, air.indoorTemperature);
    case "as outdoors":
      return air.outdoorVapourPressure;
  }
}
