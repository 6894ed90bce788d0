/**
 * Indoor temperature and relative humidity that follow the outdoor temperature: dwellings and offices.
 * Source of all values: EN 15026:2007 Annex C (from memory).
 */

/** θi in cold weather [°C], and its greatest rise in warm weather [K]. */
export const TEMPERATURE_IN_COLD_WEATHER = 20;
export const GREATEST_TEMPERATURE_RISE = 5;

/** Outdoor temperatures between which θi rises [°C]. */
export const TEMPERATURE_RISES_FROM = 10;
export const TEMPERATURE_RISES_TO = 20;

/** Outdoor temperatures between which φi rises [°C]. */
export const HUMIDITY_RISES_FROM = -10;
export const HUMIDITY_RISES_TO = 20;

/** φi at the two ends [–]. */
export const HUMIDITY_BY_LEVEL = {
  normal: { least: 0.3, greatest: 0.6 },
  high: { least: 0.4, greatest: 0.7 },
} as const;

/**
 * Rise of the indoor temperature above its value in cold weather.
 *
 * @param outdoorTemperature - θe, the month's mean [°C]
 * @returns 0 up to 10 °C, rising linearly to 5 at 20 °C and above [K]
 * @throws RangeError when the temperature is not a number
 * Source: EN 15026:2007 Annex C (from memory).
 * @example temperatureRiseByOutdoors(16) // 3
 */
export function temperatureRiseByOutdoors(outdoorTemperature: number): number {
  return GREATEST_TEMPERATURE_RISE * partOfWay(outdoorTemperature, TEMPERATURE_RISES_FROM, TEMPERATURE_RISES_TO);
}

/**
 * Indoor relative humidity by outdoor temperature.
 *
 * @param level - normal or high occupancy
 * @param outdoorTemperature - θe, the month's mean [°C]
 * @returns φi as a fraction [–]: 0.3 at −10 °C rising to 0.6 at 20 °C (normal), 0.4 to 0.7 (high), constant outside
 * @throws RangeError when the temperature is not a number
 * Source: EN 15026:2007 Annex C (from memory).
 * @example humidityByOutdoors("normal", 5) // 0.45
 */
export function humidityByOutdoors(level: "normal" | "high", outdoorTemperature: number): number {
  const { least, greatest } = HUMIDITY_BY_LEVEL[level];
  return least + (greatest - least) * partOfWay(outdoorTemperature, HUMIDITY_RISES_FROM, HUMIDITY_RISES_TO);
}

/** Position of a value between two ends, 0 to 1. */
function partOfWay(value: number, from: number, to: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`temperature must be finite, was ${value}`);
  return Math.min(1, Math.max(0, (value - from) / (to - from)));
}
