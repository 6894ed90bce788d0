import { GAS_CONSTANT_OF_VAPOUR, ZERO_CELSIUS_IN_KELVIN } from "../constants.ts";

/** The water given off in a room, and the air changes that carry it away. */
export interface MoistureBalance {
  /** G [kg/s], ≥ 0 */
  production: number;
  /** V [m³], above 0 */
  volume: number;
  /** n [1/s], above 0 */
  airChanges: number;
}

/**
 * Vapour excess of a room over outdoors, from the water given off in the room and its air changes.
 *
 * @param balance - production ≥ 0 [kg/s], volume above 0 [m³], air changes above 0 [1/s]
 * @param indoorTemperature - θi [°C], above −273.15
 * @returns Δp [Pa]
 * @throws RangeError when a value is out of range or not a number
 * Source: ISO 13788:2012 Annex A (from memory): Δp = G / (n · V) · 461.5 · T.
 * Assumes a steady state in which the room's surfaces store no moisture.
 * @example vapourExcessOfBalance({ production: 6 / 86400, volume: 90, airChanges: 0.6 / 3600 }, 20) // 626.34
 */
export function vapourExcessOfBalance(balance: MoistureBalance, indoorTemperature: number): number {
  const { production, volume, airChanges } = balance;
  if (!(production >= 0)) throw new RangeError(`moisture production must be 0 kg/s or more, was ${production}`);
  if (!(volume > 0)) throw new RangeError(`volume must be above 0 m³, was ${volume}`);
  if (!(airChanges > 0)) throw new RangeError(`air changes must be above 0 /s, was ${airChanges}`);
  const kelvin = indoorTemperature + ZERO_CELSIUS_IN_KELVIN;
  if (!(kelvin > 0)) throw new RangeError(`temperature must be above absolute zero, was ${indoorTemperature} °C`);
  const airExchanged = airChanges * volume;
  const excessByVolume = production / airExchanged;
  return excessByVolume * GAS_CONSTANT_OF_VAPOUR * kelvin;
}
