import { requireOneOf, requireText } from "../require.ts";
import { plainNumber } from "../tables/plain-number.ts";
import { HIGHEST_ALTITUDE, LOWEST_ALTITUDE } from "./climate-limits.ts";

/** Greatest degrees of latitude and longitude. Source: definition. */
export const MOST_LATITUDE = 90;
export const MOST_LONGITUDE = 180;

/**
 * Reads a latitude or longitude: degrees with a sign or with a letter, not with both.
 *
 * @param text - for example `-33.9`, `33.9 S`, `33.9° S`
 * @param axis - which of the two
 * @returns [degrees], north and east positive; null when it is not an angle
 * @example readDegrees("0.449 W", "longitude") // -0.449
 */
export function readDegrees(text: string, axis: "latitude" | "longitude"): number | null {
  requireText(text, "text");
  requireOneOf(axis, "axis", ["latitude", "longitude"]);
  const { positive, negative, most } = AXES[axis];
  const letter = text.slice(-1).toUpperCase();
  const lettered = letter === positive || letter === negative;
  const figures = (lettered ? text.slice(0, -1) : text).trim().replace(/\s*°$/, "");
  const number = plainNumber(figures);
  if (number === null || (lettered && SIGN.test(figures))) return null;
  const degrees = letter === negative ? -number : number;
  return Math.abs(degrees) <= most ? degrees : null;
}

/**
 * Reads a height above the sea.
 *
 * @param text - metres, with or without `m`
 * @returns height [m]; null when it is not a height, or not one at which weather is recorded
 * @example readAltitude("25 m") // 25
 */
export function readAltitude(text: string): number | null {
  requireText(text, "text");
  const metres = plainNumber(text.replace(/\s*m$/, ""));
  return metres !== null && metres >= LOWEST_ALTITUDE && metres <= HIGHEST_ALTITUDE ? metres : null;
}

const AXES = {
  latitude: { positive: "N", negative: "S", most: MOST_LATITUDE },
  longitude: { positive: "E", negative: "W", most: MOST_LONGITUDE },
} as const;

const SIGN = /^[-+\u2212]/;
