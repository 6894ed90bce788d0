import type { WrittenProject } from "../project/schema/schema-project.ts";
import type { AltitudeCorrection, OutdoorClimate, Severity } from "../project/types.ts";
import { correctForAltitude, STANDARD_LAPSE_RATE } from "./altitude.ts";
import { applySeverity, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "./severity.ts";

/** The year and the site correction that a project states. */
export interface SiteStated {
  severity: Severity;
  altitudeCorrection: AltitudeCorrection | null;
}

/**
 * Reads which year and which site correction a project states.
 *
 * @param written - the project file's data, read
 * @returns both; without a severity the mean year, without an altitude a correction of null
 */
export function siteStated(written: WrittenProject): SiteStated {
  return { severity: severityOf(written), altitudeCorrection: altitudeCorrectionOf(written) };
}

/**
 * The climate that a project is worked out for.
 *
 * @param climate - the station's climate; its altitude must be known if the site's is stated
 * @param stated - severity and altitude of the site
 * @returns the climate, corrected to the site's altitude and then to the year asked for
 */
export function climateAtSite(climate: OutdoorClimate, { severity, altitudeCorrection }: SiteStated): OutdoorClimate {
  const atSite = altitudeCorrection === null ? climate : correctForAltitude(climate, altitudeCorrection);
  return applySeverity(atSite, severity);
}

function severityOf({ severity: written }: WrittenProject): Severity {
  if (typeof written === "object") {
    return { name: `${written.value < 0 ? "−" : "+"}${Math.abs(written.value)} K`, offset: written.value };
  }
  return [ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER].find(({ name }) => name === written) ?? MEAN_YEAR;
}

function altitudeCorrectionOf(written: WrittenProject): AltitudeCorrection | null {
  if (written.altitude === undefined) return null;
  return { altitude: written.altitude.value, lapseRate: written["lapse rate"]?.value ?? STANDARD_LAPSE_RATE };
}
