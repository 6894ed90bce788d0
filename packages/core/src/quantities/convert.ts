import { VAPOUR_PERMEABILITY_OF_AIR } from "../constants.ts";

/**
 * sd from a vapour resistance in the unit of British data sheets.
 *
 * @param resistance - vapour resistance [MN·s/g], ≥ 0
 * @returns sd [m]
 * @throws RangeError when the input is negative or not a number
 * Source: sd = δ0 · Z with δ0 of ISO 13788 (from memory): 1 MN·s/g is 0.2 m.
 * @example sdFromVapourResistance(250) // 50
 */
export function sdFromVapourResistance(resistance: number): number {
  requireNotNegative("vapour resistance", resistance);
  return VAPOUR_PERMEABILITY_OF_AIR * resistance * NEWTON_SECONDS_PER_KILOGRAM;
}

/**
 * sd from a permeance in US perms.
 *
 * @param perms - permeance [perm], > 0
 * @returns sd [m]
 * @throws RangeError when the input is not above 0
 * Source: sd = δ0 / W; 1 perm is 5.72·10⁻¹¹ kg/(m²·s·Pa) (unit definition, from memory).
 * @example sdFromPerms(1) // 3.497
 */
export function sdFromPerms(perms: number): number {
  if (!(perms > 0)) throw new RangeError(`a permeance must be above 0 perm, was ${perms}`);
  return VAPOUR_PERMEABILITY_OF_AIR / (perms * PERM);
}

/**
 * Length from inches.
 *
 * @param inches - [in], any finite number
 * @returns [m]
 * Source: definition of the inch.
 * @example metresFromInches(2) // 0.0508
 */
export function metresFromInches(inches: number): number {
  requireFinite("length", inches);
  return inches * INCH;
}

/**
 * Temperature from degrees Fahrenheit.
 *
 * @param fahrenheit - [°F], any finite number
 * @returns [°C]
 * Source: definition of the Fahrenheit scale.
 * @example celsiusFromFahrenheit(68) // 20
 */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  requireFinite("temperature", fahrenheit);
  return (fahrenheit - FAHRENHEIT_AT_FREEZING) / FAHRENHEIT_PER_KELVIN;
}

/**
 * Thermal resistance from the unit of North American data sheets.
 *
 * @param resistance - [h·ft²·°F/Btu], ≥ 0
 * @returns [m²·K/W]
 * @throws RangeError when the input is negative or not a number
 * Source: definition of the units.
 * @example resistanceFromImperial(20) // 3.522
 */
export function resistanceFromImperial(resistance: number): number {
  requireNotNegative("thermal resistance", resistance);
  return resistance * IMPERIAL_RESISTANCE;
}

/** 1 MN·s/g in N·s/kg. Source: definition of the prefixes. */
export const NEWTON_SECONDS_PER_KILOGRAM = 1e9;
/** 1 US perm [kg/(m²·s·Pa)]. Source: unit definition (from memory). */
export const PERM = 5.72e-11;
/** 1 inch [m]. Source: definition. */
export const INCH = 0.0254;
/** °F at 0 °C, and °F for each kelvin. Source: definition. */
export const FAHRENHEIT_AT_FREEZING = 32;
export const FAHRENHEIT_PER_KELVIN = 1.8;
/** 1 h·ft²·°F/Btu [m²·K/W]. Source: definition of the units (from memory). */
export const IMPERIAL_RESISTANCE = 0.176_110_2;

function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`a ${name} must be a number of 0 or more, was ${value}`);
  }
}

function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`a ${name} must be a finite number, was ${value}`);
}
