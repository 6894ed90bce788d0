import { assessBuildUp, type Surroundings } from "./assess-build-up.ts";
import { climateMonths } from "./climate/climate-months.ts";
import { applySeverity } from "./climate/severity.ts";
import { monthsOfAir } from "./describe/months-of-air.ts";
import type { OutdoorClimate, Project, Room } from "./project/types.ts";
import type { ProjectResult, RoomResult } from "./result/types.ts";
import { describeRoom } from "./rooms/describe-room.ts";
import { roomMonths } from "./rooms/room-months.ts";
import { wetterRoom } from "./rooms/wetter-room.ts";
import type { Site } from "./surroundings/far-side-months.ts";

/** Taken off every month in the one-in-ten colder year [K]. Source: ISO 13788:2012 clause 4.2 (from memory). */
export const ONE_IN_TEN_COLDER = -2;

/**
 * Assesses every build-up of a project.
 *
 * @param project - as `readProject` gives it
 * @returns plain data, unrounded SI
 * @throws RangeError when a value is out of range
 */
export function assessProject(project: Project): ProjectResult {
  const surroundings = surroundingsOf(project);
  const buildUps = project.buildUps.map((buildUp) => assessBuildUp(buildUp, surroundings));
  return {
    format: 1,
    method: "ISO 13788:2012 clause 6",
    project: project.name,
    reference: project.reference,
    query: project.query === null ? null : { ...project.query },
    climate: {
      name: project.climate.name,
      severity: project.severity.name,
      origin: project.climate.origin,
      latitude: project.climate.latitude,
      longitude: project.climate.longitude,
      altitude: project.climate.altitude,
      altitudeCorrection: altitudeCorrection(project),
      months: monthsOfAir(surroundings.sites.reported.outdoor),
    },
    rooms: usedRooms(project).map((room) => roomResult(room, surroundings.sites.reported)),
    buildUps,
    oddities: project.oddities.map((oddity) => ({ ...oddity })),
  };
}

/**
 * What surrounds a project's build-ups: the reported year, the one-in-ten colder year, and the year with wetter rooms.
 *
 * @param project - the project; its climate already carries severity and altitude
 * @param climate - another outdoor climate to put the project in (default its own)
 * @returns sites and rooms
 * Source: ISO 13788:2012 clause 4.2 (from memory).
 */
export function surroundingsOf(project: Project, climate: OutdoorClimate = project.climate): Surroundings {
  const colder = applySeverity(climate, { name: "one in ten colder", offset: ONE_IN_TEN_COLDER });
  const rooms = [...project.rooms.values()];
  return {
    rooms: project.rooms,
    sites: {
      reported: siteOf(climate, rooms, project.humidityMargin),
      colder: siteOf(colder, rooms, project.humidityMargin),
      wetter: siteOf(climate, rooms.map(wetterRoom), project.humidityMargin),
    },
  };
}

function siteOf(climate: OutdoorClimate, rooms: readonly Room[], humidityMargin: number): Site {
  const outdoor = climateMonths(climate);
  return { outdoor, rooms: new Map(rooms.map((room) => [room.name, roomMonths(room, outdoor, humidityMargin)])) };
}

function usedRooms(project: Project): Room[] {
  const used = new Set(project.buildUps.flatMap(({ room, faces }) => [room, faces]));
  return [...project.rooms.values()].filter(({ name }) => used.has(name));
}

function roomResult(room: Room, site: Site): RoomResult {
  return { name: room.name, ...describeRoom(room), months: monthsOfAir(site.rooms.get(room.name)!) };
}

function altitudeCorrection({ altitudeCorrection }: Project): ProjectResult["climate"]["altitudeCorrection"] {
  if (altitudeCorrection === null) return null;
  return { siteAltitude: altitudeCorrection.altitude, lapseRate: altitudeCorrection.lapseRate };
}
