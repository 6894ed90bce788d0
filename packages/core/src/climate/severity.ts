import { refuseFaults } from "../given/faults.ts";
import { checkClimate, checkSeverity } from "../given/surroundings.ts";
import type { OutdoorClimate, Severity } from "../project/types.ts";

/** How far a 1-in-10 year lies from the mean year [K]. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_OFFSET = 2;

/** The year as the climate table has it. */
export const MEAN_YEAR: Severity = { name: "mean year", offset: 0 };

/** The 1-in-10 cold year. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_COLDER: Severity = { name: "one in ten colder", offset: -ONE_IN_TEN_OFFSET };

/** The 1-in-10 warm year. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_WARMER: Severity = { name: "one in ten warmer", offset: ONE_IN_TEN_OFFSET };

/**
 * The climate of a colder or warmer year. Every month's temperature is shifted; its relative humidity stays.
 *
 * @param climate - twelve monthly means
 * @param severity - the offset [K], finite, and its name
 * @returns the shifted climate; its origin says what was done, unless the offset is 0
 * @throws TypeError when the offset is not a number, RangeError when it is out of range
 * Source: ISO 13788:2012 clause 4.2 (from memory).
 */
export function applySeverity(climate: OutdoorClimate, severity: Severity): OutdoorClimate {
  refuseFaults([...checkClimate(climate, ["climate"]), ...checkSeverity(severity, ["severity"])]);
  if (severity.offset === 0) return climate;
  const shifted = climate.temperature.map((temperature) => temperature + severity.offset);
  const remark = `severity: ${severity.name}, ${signed(severity.offset)} K in every month, relative humidity unchanged`;
  return { ...climate, temperature: shifted, origin: [...climate.origin, remark] };
}

/**
 * The 1-in-10 cold or warm year, or the mean year, from a climate to which a severity has already been applied.
 *
 * @param climate - the reported year's twelve monthly means
 * @param severity - the severity of the reported year
 * @param year - the cold, the warm or the mean year
 * @returns that year. If the reported year is itself a 1-in-10 year, its offset is removed first; any other reported
 *   year counts as the mean year
 * Source: ISO 13788:2012 clause 4.2 (from memory).
 */
export function oneInTenYear(climate: OutdoorClimate, severity: Severity, year: Severity): OutdoorClimate {
  const reported = isOneInTen(severity) ? severity.offset : 0;
  return applySeverity(climate, { ...year, offset: year.offset - reported });
}

/** Whether a severity is a 1-in-10 year, which mean years follow. */
export function isOneInTen({ name }: Severity): boolean {
  return name === ONE_IN_TEN_COLDER.name || name === ONE_IN_TEN_WARMER.name;
}

function signed(offset: number): string {
  return offset < 0 ? `−${-offset}` : `+${offset}`;
}
