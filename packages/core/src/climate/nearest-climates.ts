import type { OutdoorClimate } from "../project/types.ts";
import { requireObject } from "../require.ts";
import { NOTABLE_ALTITUDE_DIFFERENCE } from "./altitude.ts";
import { MOST_LATITUDE, MOST_LONGITUDE } from "./degrees.ts";

/** Mean radius of the Earth [m]. Source: IUGG, R1 (from memory). */
export const EARTH_RADIUS = 6_371_009;

/** Above this distance, a station represents a site only with a caution [m]. Rule of this project. */
export const NOTABLE_DISTANCE = 100_000;

/** A place on the Earth: degrees, north and east positive; altitude [m], null when not known. */
export interface PlaceOnEarth {
  /** [°] */
  latitude: number;
  /** [°] */
  longitude: number;
  /** [m] */
  altitude: number | null;
}

/** A climate with its distance from a site. */
export interface NearClimate {
  climate: OutdoorClimate;
  /** Distance along the Earth's surface [m]. */
  distance: number;
  /** Height of the site above the station [m]; null when either is not known. */
  heightOverStation: number | null;
  /** Whether the station is far away, or at another height: it may then not represent the site. */
  far: boolean;
  otherHeight: boolean;
}

/**
 * Climates by their distance from a site, nearest first; those without a position are left out.
 *
 * @param climates - places with their positions
 * @param site - latitude −90 to 90, longitude −180 to 180 [degrees], altitude [m]
 * @returns the climates with their distances; those at equal distances stay in the order given
 * @throws RangeError when the position is out of range or not a number
 */
export function nearestClimates(climates: readonly OutdoorClimate[], site: PlaceOnEarth): NearClimate[] {
  if (!Array.isArray(climates)) throw new TypeError("climates must be a list");
  requireObject(site, "site", ["latitude", "longitude", "altitude"]);
  const near = climates.flatMap((climate) => {
    if (climate.latitude === null || climate.longitude === null) return [];
    const distance = distanceBetween(site.latitude, site.longitude, climate.latitude, climate.longitude);
    const heightOverStation =
      site.altitude === null || climate.altitude === null ? null : site.altitude - climate.altitude;
    const far = distance > NOTABLE_DISTANCE;
    const otherHeight = heightOverStation !== null && Math.abs(heightOverStation) > NOTABLE_ALTITUDE_DIFFERENCE;
    return [{ climate, distance, heightOverStation, far, otherHeight }];
  });
  return near.sort((one, other) => one.distance - other.distance);
}

/**
 * Distance between two places along the surface of a spherical Earth.
 *
 * @param latitude - −90 to 90 [degrees]
 * @param longitude - −180 to 180 [degrees]
 * @param otherLatitude - the other place, −90 to 90 [degrees]
 * @param otherLongitude - the other place, −180 to 180 [degrees]
 * @returns distance [m]
 * @throws RangeError when a value is out of range or not a number
 * Source: haversine formula for the great circle; within 0.6 % of the flattened Earth.
 * @example distanceBetween(0, 0, 0, 90) // 10007557.5
 */
export function distanceBetween(
  latitude: number,
  longitude: number,
  otherLatitude: number,
  otherLongitude: number,
): number {
  const onEarth =
    Math.max(Math.abs(latitude), Math.abs(otherLatitude)) <= MOST_LATITUDE &&
    Math.max(Math.abs(longitude), Math.abs(otherLongitude)) <= MOST_LONGITUDE;
  if (!onEarth)
    throw new RangeError(`no place on Earth: ${latitude}, ${longitude} or ${otherLatitude}, ${otherLongitude}`);
  const north = halfSineSquared(otherLatitude - latitude);
  const east = halfSineSquared(otherLongitude - longitude);
  const parallels = Math.cos(inRadians(latitude)) * Math.cos(inRadians(otherLatitude));
  const haversine = north + parallels * east;
  return 2 * EARTH_RADIUS * Math.asin(Math.min(1, Math.sqrt(haversine)));
}

function halfSineSquared(degrees: number): number {
  return Math.sin(inRadians(degrees) / 2) ** 2;
}

function inRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
