import {
  type NearClimate,
  nearestClimates,
  type OutdoorClimate,
  type PlaceOnEarth,
  readAltitude,
  readDegrees,
} from "@warmside/core";
import { json } from "../answers/json.ts";
import { CommandProblem, type CommandResult, done } from "../command-result.ts";
import { groups, paragraph } from "../lines.ts";

/** What `warmside climate near` is asked. */
export interface NearQuestion {
  latitude: string;
  longitude: string;
  altitude: string | undefined;
  json: boolean;
}

/** Places that are shown. */
const MOST_SHOWN = 3;

/**
 * `warmside climate near LAT LON`: the nearest climates with their distances, and a caution where the nearest may not
 * stand for the site.
 *
 * @param question - as written on the command line
 * @param climates - the shipped climates
 * @returns the nearest three, nearest first
 * @throws CommandProblem when latitude, longitude or altitude is none
 */
export function climateNear(question: NearQuestion, climates: readonly OutdoorClimate[]): CommandResult {
  const site = siteOf(question);
  const nearest = nearestClimates(climates, site).slice(0, MOST_SHOWN);
  if (question.json) return done(json({ near: nearest.map(asData) }));
  const [first] = nearest;
  if (first === undefined) throw new Error("no shipped climate tells its position");
  const places = nearest.map((near) => paragraph(inWords(near)));
  return done(
    groups(
      places,
      adviceFor(first, site).map((sentence) => paragraph(sentence)),
    ),
  );
}

/**
 * Reads a latitude, a longitude and an altitude as they are written on a command line.
 *
 * @param written - the three; an altitude may be left out
 * @returns degrees and metres
 * @throws CommandProblem when one of them is none
 */
export function siteOf(written: Pick<NearQuestion, "latitude" | "longitude" | "altitude">): PlaceOnEarth {
  const latitude = readDegrees(written.latitude, "latitude");
  const longitude = readDegrees(written.longitude, "longitude");
  if (latitude === null)
    throw notReadable("latitude", written.latitude, "degrees from -90 to 90 or with N or S, such as 52.1");
  if (longitude === null) {
    throw notReadable("longitude", written.longitude, "degrees from -180 to 180 or with E or W, such as -0.45");
  }
  return { latitude, longitude, altitude: written.altitude === undefined ? null : altitudeOf(written.altitude) };
}

function altitudeOf(written: string): number {
  const altitude = readAltitude(written);
  if (altitude === null) throw notReadable("altitude", written, "metres above the sea, such as 120");
  return altitude;
}

function notReadable(what: string, written: string, expected: string): CommandProblem {
  return new CommandProblem(`${what}-unreadable`, `"${written}" is no ${what}. Write ${expected}.`);
}

function inWords({ climate, distance, heightOverStation }: NearClimate): string {
  const height =
    heightOverStation === null
      ? `at ${climate.altitude ?? "unknown"} m`
      : `at ${climate.altitude} m, the site ${Math.abs(heightOverStation)} m ${heightOverStation < 0 ? "lower" : "higher"}`;
  return `${climate.name}: ${kilometres(distance)} away, ${height}`;
}

function adviceFor(
  { climate, distance, heightOverStation, far, otherHeight }: NearClimate,
  site: PlaceOnEarth,
): string[] {
  const cautions: string[] = [];
  if (site.latitude * climate.latitude! < 0) {
    cautions.push(`Caution: ${climate.name} lies in the other hemisphere. Its summer is the site's winter.`);
  }
  if (far) {
    cautions.push(
      `Caution: ${kilometres(distance)} is far for a station to stand for a site. Better make a table from records nearer ` +
        "by: warmside climate make.",
    );
  }
  if (otherHeight) {
    cautions.push(
      `Caution: the site is ${Math.abs(heightOverStation!)} m ${heightOverStation! < 0 ? "lower" : "higher"} than the station. ` +
        "Write the site's altitude in the project file, so that temperatures are corrected for it.",
    );
  }
  if (heightOverStation === null) cautions.push("Heights were not compared: add --altitude.");
  return [`Write in the project file: climate: ${climate.name}`, ...cautions];
}

function kilometres(metres: number): string {
  return `${Math.round(metres / 1000)} km`;
}

function asData({ climate, distance, heightOverStation, far, otherHeight }: NearClimate): object {
  const { name, latitude, longitude, altitude } = climate;
  return { name, latitude, longitude, altitude, distance, heightOverStation, far, otherHeight };
}
