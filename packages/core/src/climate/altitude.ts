import { refuseFaults } from "../given/faults.ts";
import { checkClimate } from "../given/surroundings.ts";
import type { AltitudeCorrection, OutdoorClimate } from "../project/types.ts";
import { formatNumber } from "../quantities/format-quantity.ts";
import { requireObject } from "../require.ts";

/**
 * Fall of the air's temperature with height, unless the file states one [K/m]: 6.5 K/km.
 * Source: ISO 2533 standard atmosphere, lowest layer (from memory).
 */
export const STANDARD_LAPSE_RATE = 0.0065;

/** Above this difference of height, a station represents a site only with a caution [m]. Rule of this project. */
export const NOTABLE_ALTITUDE_DIFFERENCE = 300;

/**
 * The climate corrected from its station's height to the site's. Every month's temperature falls with height by the
 * lapse rate; its relative humidity stays.
 *
 * @param climate - twelve monthly means with the station's altitude
 * @param correction - the site's altitude [m] and the lapse rate [K/m], both finite
 * @returns the corrected climate; its origin says what was done
 * @throws RangeError when the station's altitude is not known or a value is not finite
 * Assumes the same relative humidity at both heights; does not cover cold air that pools in valleys.
 */
export function correctForAltitude(climate: OutdoorClimate, correction: AltitudeCorrection): OutdoorClimate {
  requireObject(correction, "correction", ["altitude", "lapseRate"]);
  refuseFaults(checkClimate(climate, ["climate"]));
  if (climate.altitude === null) throw new RangeError(`the climate ${climate.name} does not state its altitude`);
  const heightAboveStation = correction.altitude - climate.altitude;
  const change = -correction.lapseRate * heightAboveStation;
  if (!Number.isFinite(change)) throw new RangeError("altitude and lapse rate must be finite");
  const corrected = climate.temperature.map((temperature) => temperature + change);
  const ratePerKilometre = Number((correction.lapseRate * 1000).toPrecision(6));
  const remark =
    `altitude correction: from ${climate.altitude} m to ${correction.altitude} m at ${ratePerKilometre} K/km, ` +
    `${change < 0 ? "−" : "+"}${formatNumber(Math.abs(change), 2)} K in every month, relative humidity unchanged`;
  return { ...climate, altitude: correction.altitude, temperature: corrected, origin: [...climate.origin, remark] };
}
