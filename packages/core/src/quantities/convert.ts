import { VAPOUR_PERMEABILITY_OF_AIR } from "../constants.ts";
import { requireNumber } from "../require.ts";
import { converted } from "./unit-reader.ts";

/**
 * sd from a vapour resistance in the unit of British data sheets.
 *
 * @param resistance - vapour resistance [MN·s/g], 0 to 10¹²
 * @returns sd [m]
 * @throws RangeError when the input is out of range
 * Source: sd = δ0 · Z with δ0 of ISO 13788 (from memory): 1 MN·s/g is 0.2 m.
 * @example sdFromVapourResistance(250) // 50
 */
export function sdFromVapourResistance(resistance: number): number {
  requireNumber(resistance, "vapour resistance", "MN·s/g", 0, MOST_CONVERTED);
  return VAPOUR_PERMEABILITY_OF_AIR * converted(resistance, "MN s/g", "N s/kg");
}

/**
 * sd from a permeance in US perms.
 *
 * @param perms - permeance [perm], 10⁻⁹ to 10¹²
 * @returns sd [m]
 * @throws RangeError when the input is out of range
 * Source: sd = δ0 / W; 1 perm is 5.72·10⁻¹¹ kg/(m²·s·Pa) (unit definition, from memory).
 * @example sdFromPerms(1) // 3.497
 */
export function sdFromPerms(perms: number): number {
  requireNumber(perms, "permeance", "perm", LEAST_PERMEANCE, MOST_CONVERTED);
  return VAPOUR_PERMEABILITY_OF_AIR / converted(perms, "perm", "kg/(m^2 s Pa)");
}

/**
 * Length from inches.
 *
 * @param inches - [in], −10¹² to 10¹²
 * @returns [m]
 * @throws RangeError when the input is out of range
 * Source: definition of the inch.
 * @example metresFromInches(2) // 0.0508
 */
export function metresFromInches(inches: number): number {
  requireNumber(inches, "length", "inches", -MOST_CONVERTED, MOST_CONVERTED);
  return converted(inches, "inch", "m");
}

/**
 * Temperature from degrees Fahrenheit.
 *
 * @param fahrenheit - [°F], −10¹² to 10¹²
 * @returns [°C]
 * @throws RangeError when the input is out of range
 * Source: definition of the Fahrenheit scale.
 * @example celsiusFromFahrenheit(68) // 20
 */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  requireNumber(fahrenheit, "temperature", "°F", -MOST_CONVERTED, MOST_CONVERTED);
  return converted(fahrenheit, "degF", "degC");
}

/**
 * Thermal resistance from the unit of North American data sheets.
 *
 * @param resistance - [h·ft²·°F/Btu], 0 to 10¹²
 * @returns [m²·K/W]
 * @throws RangeError when the input is out of range
 * Source: definition of the units.
 * @example resistanceFromImperial(20) // 3.522
 */
export function resistanceFromImperial(resistance: number): number {
  requireNumber(resistance, "thermal resistance", "h·ft²·°F/Btu", 0, MOST_CONVERTED);
  // A difference of 1 °F is one of 1 °R, whose scale has no offset.
  return converted(resistance, "hour ft^2 degR/BTU", "m^2 K/W");
}

/** Largest number that is converted [–]: far beyond anything that is built. */
const MOST_CONVERTED = 1e12;
/** Least permeance taken [perm]: an sd of three and a half million kilometres. */
const LEAST_PERMEANCE = 1e-9;
