/**
 * Physical constants and fixed values of the standards, each with its unit and source.
 * Values are from memory of the standards unless a second route is named.
 */

/** Water vapour permeability of still air δ0 [kg/(m·s·Pa)]. Source: ISO 13788:2012 clause 6.1 (from memory). */
export const VAPOUR_PERMEABILITY_OF_AIR = 2e-10;

/** Gas constant of water vapour [J/(kg·K)]. Source: ISO 13788:2012 Annex A (from memory). */
export const GAS_CONSTANT_OF_VAPOUR = 461.5;

/** 0 °C in kelvin [K]. Source: definition of the Celsius scale. */
export const ZERO_CELSIUS_IN_KELVIN = 273.15;

/** Seconds in a day [s]. Source: definition. */
export const SECONDS_PER_DAY = 86_400;

/** Hours in a day [h]. Source: definition. */
export const HOURS_PER_DAY = 24;

/**
 * Stefan-Boltzmann constant σ [W/(m²·K⁴)].
 * Source: ISO 6946:2017 Annex C (from memory); CODATA rounded to four figures.
 */
export const STEFAN_BOLTZMANN = 5.67e-8;

/** Emissivity of a face unless stated otherwise [–]. Source: ISO 6946:2017 Annex D (from memory). */
export const USUAL_EMISSIVITY = 0.9;

/** Thickest still air layer that the formula covers [m]. Source: ISO 6946:2017 clause 6.9 (from memory). */
export const THICKEST_STILL_AIR = 0.3;

/**
 * With openings up to this, an air layer is unventilated [m² per m or per m²].
 * Source: ISO 6946:2017 clause 6.9 (from memory).
 */
export const UNVENTILATED_UP_TO = 500e-6;

/** From this on it is well ventilated; between the two, slightly. Source: ISO 6946:2017 clause 6.9 (from memory). */
export const WELL_VENTILATED_FROM = 1500e-6;

/** The twelve calendar months, January to December. */
export const MONTH_NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** Months in a year. Source: definition. */
export const MONTHS_PER_YEAR = 12;

/** Days of each month; February has 28. Source: ISO 13788:2012 clause 6 works with calendar months (from memory). */
export const DAYS_IN_MONTH: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Relative humidity from which mould can grow in warm conditions [–]. Source: ISO 13788:2012 clause 5.3 (from memory);
 * the same in Hukka and Viitanen 1999 above 20 °C.
 */
export const MOULD_HUMIDITY = 0.8;
