import { CLIMATE_CSVS, type OutdoorClimate, readClimate } from "@warmside/core";

/**
 * Every climate that warmside carries.
 *
 * @returns the climates by name
 * @throws Error when a shipped table cannot be read: that is a fault of the program
 */
export function shippedClimates(): OutdoorClimate[] {
  return Object.entries(CLIMATE_CSVS)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, text]) => {
      const reading = readClimate(text, name);
      if (!reading.ok) throw new Error(`the shipped climate ${name} cannot be read: ${reading.problems[0]!.code}`);
      return reading.value;
    });
}
