import { refuseFaults } from "../given/faults.ts";
import { checkClimate, checkSeverity } from "../given/surroundings.ts";
import type { OutdoorClimate, Severity } from "../project/types.ts";

/** Change of the year met once in ten years [K]. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_OFFSET = 2;

/** The year as the climate table has it. */
export const MEAN_YEAR: Severity = { name: "mean year", offset: 0 };

/** The colder year met once in ten. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_COLDER: Severity = { name: "one in ten colder", offset: -ONE_IN_TEN_OFFSET };

/** The warmer year met once in ten. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_WARMER: Severity = { name: "one in ten warmer", offset: ONE_IN_TEN_OFFSET };

/**
 * The climate of a colder or warmer year: every month's temperature is shifted, its relative humidity stays.
 *
 * @param climate - twelve monthly means
 * @param severity - the offset [K], finite, and its name
 * @returns the shifted climate; its origin says what was done, unless the offset is 0
 * @throws TypeError when the offset is no number, RangeError when it is out of range
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
 * The colder or warmer year met once in ten, or the mean one, of a climate that already carries a severity.
 *
 * @param climate - the reported year's twelve monthly means
 * @param severity - what the reported year already is
 * @param year - the colder, the warmer or the mean one
 * @returns that year: told from the mean year where the reported one is itself met once in ten, else from the reported
 *   year, which then counts as the mean
 * Source: ISO 13788:2012 clause 4.2 (from memory).
 */
export function oneInTenYear(climate: OutdoorClimate, severity: Severity, year: Severity): OutdoorClimate {
  const reported = isOneInTen(severity) ? severity.offset : 0;
  return applySeverity(climate, { ...year, offset: year.offset - reported });
}

/** Whether a severity is a year met once in ten, which mean years follow. */
export function isOneInTen({ name }: Severity): boolean {
  return name === ONE_IN_TEN_COLDER.name || name === ONE_IN_TEN_WARMER.name;
}

function signed(offset: number): string {
  return offset < 0 ? `−${-offset}` : `+${offset}`;
}
