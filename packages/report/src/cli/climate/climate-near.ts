import {
  inSpeech,
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
import { findTowns, type Town } from "./find-town.ts";

/** What `warmside climate near` is asked. */
export interface NearQuestion {
  /** A town, or latitude and longitude. */
  place: readonly string[];
  altitude: string | undefined;
  json: boolean;
}

/** Places that are shown. */
const MOST_SHOWN = 3;

/** Distance beyond which a station does not represent a site [m]. Rule of this project. */
export const FARTHEST_STATION = 500_000;

/**
 * `warmside climate near PLACE`: the nearest climates with their distances, and a caution if the nearest may not
 * represent the site; if all are too far, how to make one.
 *
 * @param question - as written on the command line
 * @param climates - the shipped climates
 * @param towns - the gazetteer, for a place that is a name
 * @returns the nearest three, nearest first
 * @throws CommandProblem when the place, its latitude, longitude or altitude is none
 */
export function climateNear(question: NearQuestion, climates: readonly OutdoorClimate[], towns: string): CommandResult {
  const found = placeOf(question, climates, towns);
  const ranked = nearestClimates(climates, found.site);
  const nearest = ranked.filter(({ distance }) => distance <= FARTHEST_STATION).slice(0, MOST_SHOWN);
  if (question.json) return done(json({ site: found.site, within: FARTHEST_STATION, near: nearest.map(asData) }));
  const [first] = nearest;
  const advice = first === undefined ? noneNear(ranked[0]!) : adviceFor(first, found.site);
  const told = [found.told, nearest.map(inWords), advice];
  return done(groups(...told.map((sentences) => sentences.map((sentence) => paragraph(sentence)))));
}

/** Degrees of latitude and longitude, with or without a letter, set apart by spaces or a comma. */
const TWO_DEGREES = /^([-+\u2212]?[\d.]+ ?°? ?[NS]?)[\s,]+([-+\u2212]?[\d.]+ ?°? ?[EW]?)$/i;

/** The site, and what is said of the town by which it was found. */
function placeOf(
  question: NearQuestion,
  climates: readonly OutdoorClimate[],
  towns: string,
): { site: PlaceOnEarth; told: string[] } {
  const written = question.place.join(" ").trim();
  const [, latitude, longitude] = TWO_DEGREES.exec(written) ?? [];
  if (latitude !== undefined && longitude !== undefined) {
    return { site: siteOf({ latitude, longitude, altitude: question.altitude }), told: [] };
  }
  if (/^[-+\d.\s]*$/.test(written)) {
    throw new CommandProblem("longitude-missing", `The longitude is missing beside "${written}".`);
  }
  const [town, ...others] = [...atHand(written, climates), ...findTowns(written, towns)];
  if (town === undefined) {
    throw new CommandProblem(
      "town-unknown",
      `No town of over 15 000 people is called "${written}". Write the name as the country itself does, a larger town ` +
        "nearby, or latitude and longitude: warmside climate near 51.5 -0.1",
    );
  }
  const altitude = question.altitude === undefined ? null : altitudeOf(question.altitude);
  const same = others.filter(({ country }) => country !== town.country).slice(0, MOST_SHOWN);
  const also = same.map(({ name, country }) => `"${name}, ${country}"`);
  const place = town.country === "" ? town.name : `${town.name}, ${town.country}`;
  const position = `${place} (${town.latitude}, ${town.longitude})`;
  return {
    site: { latitude: town.latitude, longitude: town.longitude, altitude },
    told: [also.length === 0 ? `${position}.` : `${position}. For another of that name write ${inSpeech(also, "or")}.`],
  };
}

/** A place with a shipped climate of that name. */
function atHand(written: string, climates: readonly OutdoorClimate[]): Town[] {
  const name = written
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  const found = climates.find((climate) => climate.name === name);
  if (found === undefined || found.latitude === null || found.longitude === null) return [];
  return [{ name: found.name, country: "", latitude: found.latitude, longitude: found.longitude }];
}

function noneNear({ climate, distance }: NearClimate): string[] {
  return [
    `No climate at hand lies within ${kilometres(FARTHEST_STATION)}. The nearest, ${climate.name}, is ` +
      `${kilometres(distance)} away and says nothing of this place.`,
    "Make one from hourly or daily weather records of a station nearby: warmside climate make RECORDS.csv. National " +
      "weather services give such records away.",
  ];
}

/**
 * Reads a latitude, a longitude and an altitude as they are written on a command line.
 *
 * @param written - the three; an altitude may be left out
 * @returns degrees and metres
 * @throws CommandProblem when one of them is none
 */
export function siteOf(written: { latitude: string; longitude: string; altitude: string | undefined }): PlaceOnEarth {
  const latitude = readDegrees(written.latitude, "latitude");
  const longitude = readDegrees(written.longitude, "longitude");
  if (latitude === null)
    throw notReadable("latitude", written.latitude, "degrees from -90 to 90 or with N or S, for example 52.1");
  if (longitude === null) {
    throw notReadable("longitude", written.longitude, "degrees from -180 to 180 or with E or W, for example -0.45");
  }
  return { latitude, longitude, altitude: written.altitude === undefined ? null : altitudeOf(written.altitude) };
}

function altitudeOf(written: string): number {
  const altitude = readAltitude(written);
  if (altitude === null) throw notReadable("altitude", written, "metres above the sea, for example 120");
  return altitude;
}

function notReadable(what: string, written: string, expected: string): CommandProblem {
  return new CommandProblem(`${what}-unreadable`, `The ${what} "${written}" cannot be read. Write ${expected}.`);
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
      `Caution: ${kilometres(distance)} is far for a station to represent a site. Make a table from records nearer ` +
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
