/** Humidity classes of rooms by use: from 1, stores, to 5, laundries and pools. */
export type HumidityClass = 1 | 2 | 3 | 4 | 5;

/**
 * Vapour excess of each class at and below 0 °C outdoors [Pa]. Source: ISO 13788:2012 Annex A (from memory).
 */
export const VAPOUR_EXCESS_IN_FROST: Readonly<Record<HumidityClass, number>> = {
  1: 270,
  2: 540,
  3: 810,
  4: 1080,
  5: 1360,
};

/** Outdoor temperatures between which the excess falls to 0 [°C]. Source: ISO 13788:2012 Annex A (from memory). */
export const FULL_EXCESS_BELOW = 0;
export const NO_EXCESS_ABOVE = 20;

/**
 * Vapour excess of a room over outdoors by its humidity class.
 *
 * @param humidityClass - 1 to 5
 * @param outdoorTemperature - θe, the month's mean [°C]
 * @returns Δp [Pa]: the class's value up to 0 °C, falling linearly to 0 at 20 °C and above
 * @throws RangeError when the temperature is not a number
 * Source: ISO 13788:2012 Annex A, Figure A.1 (from memory), for heated rooms.
 * @example vapourExcessOfClass(3, 5.8) // 575.1
 */
export function vapourExcessOfClass(humidityClass: HumidityClass, outdoorTemperature: number): number {
  if (!Number.isFinite(outdoorTemperature))
    throw new RangeError(`temperature must be finite, was ${outdoorTemperature}`);
  const span = NO_EXCESS_ABOVE - FULL_EXCESS_BELOW;
  const share = (NO_EXCESS_ABOVE - outdoorTemperature) / span;
  return VAPOUR_EXCESS_IN_FROST[humidityClass] * Math.min(1, Math.max(0, share));
}
