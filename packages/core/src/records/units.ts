import { ZERO_CELSIUS_IN_KELVIN } from "../constants.ts";
import type { HumidityUnit, PressureUnit, TemperatureUnit } from "./types.ts";

/**
 * The temperature unit that a heading names.
 *
 * @param unit - the unit part of a heading, in lower case; null without one
 * @returns the unit, or null when it names none that is known
 */
export function temperatureUnitOf(unit: string | null): TemperatureUnit | null {
  if (unit === null) return null;
  if (/^(°|deg|deg )?c(elsius)?$/.test(unit)) return "°C";
  if (/^(°|deg|deg )?f(ahrenheit)?$/.test(unit)) return "°F";
  return /^k(elvin)?$/.test(unit) ? "K" : null;
}

/**
 * The humidity unit that a heading names.
 *
 * @param unit - the unit part of a heading, in lower case; null without one
 * @returns the unit, or null when it names none that is known
 */
export function humidityUnitOf(unit: string | null): HumidityUnit | null {
  if (unit === null) return null;
  if (["%", "pct", "percent"].includes(unit)) return "%";
  return ["fraction", "0-1", "-"].includes(unit) ? "fraction" : null;
}

/**
 * The pressure unit that a heading names; a millibar is a hectopascal.
 *
 * @param unit - the unit part of a heading, in lower case; null without one
 * @returns the unit, or null when it names none that is known
 */
export function pressureUnitOf(unit: string | null): PressureUnit | null {
  if (unit === null) return null;
  if (unit === "pa") return "Pa";
  if (["hpa", "mb", "mbar"].includes(unit)) return "hPa";
  return unit === "kpa" ? "kPa" : null;
}

/**
 * A temperature in degrees Celsius.
 *
 * @param value - in the given unit
 * @param unit - °C, °F or K
 * @returns θ [°C]
 * Source: definition of the scales.
 * @example inCelsius(50, "°F") // 10
 */
export function inCelsius(value: number, unit: TemperatureUnit): number {
  if (unit === "°C") return value;
  if (unit === "K") return value - ZERO_CELSIUS_IN_KELVIN;
  return (value - FREEZING_POINT_IN_FAHRENHEIT) / FAHRENHEIT_DEGREES_PER_KELVIN;
}

/** Pascals in each unit [Pa]. Source: definition. */
export const PASCALS: Readonly<Record<PressureUnit, number>> = { Pa: 1, hPa: 100, kPa: 1000 };

/** The figure for full saturation in each unit [–]. Source: definition. */
export const SATURATION_AS: Readonly<Record<HumidityUnit, number>> = { "%": 100, fraction: 1 };

/** Source: definition of the Fahrenheit scale. */
const FREEZING_POINT_IN_FAHRENHEIT = 32;
const FAHRENHEIT_DEGREES_PER_KELVIN = 1.8;
