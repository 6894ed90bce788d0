import { climateMonths } from "../climate/climate-months.ts";
import { isOneInTen, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER, oneInTenYear } from "../climate/severity.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkClimate, checkPlaceAndRooms } from "../given/surroundings.ts";
import type { OutdoorClimate, Project, Room, Severity } from "../project/types.ts";
import { heatedDaily } from "../rooms/heated-daily.ts";
import { roomMonths } from "../rooms/room-months.ts";
import { wetterRoom } from "../rooms/wetter-room.ts";
import type { Site } from "./far-side-months.ts";

/**
 * The reported site; the mean year, which follows any 1-in-10 year; the 1-in-10 cold and warm years; the reported year
 * with wetter rooms, and with rooms heated every day.
 */
export interface AssessmentSites {
  reported: Site;
  /** The same object as `reported`, unless that is itself a 1-in-10 year. */
  mean: Site;
  colder: Site;
  warmer: Site;
  wetter: Site;
  heatedDaily: Site;
}

/** What surrounds a project's build-ups: the sites of the calculated years, and the rooms by name. */
export interface Surroundings {
  sites: AssessmentSites;
  rooms: ReadonlyMap<string, Room>;
  /** Factor on the vapour excess of humidity classes [–]. */
  humidityMargin: number;
}

/** The parts of a project that set the air around its build-ups. */
export interface PlaceAndRooms extends Pick<Project, "climate" | "rooms" | "humidityMargin"> {
  /** The mean year if omitted. */
  severity?: Severity;
}

/**
 * What surrounds a project's build-ups, in the reported year and in every other year calculated beside it.
 *
 * @param project - the project; its climate already includes severity (the mean year unless stated) and altitude
 * @param climate - another outdoor climate for the project, of the same severity (default: its own)
 * @returns sites and rooms
 * @throws TypeError or RangeError when a value is of the wrong kind or out of range, with its name, unit and range
 * Source: ISO 13788:2012 clause 4.2 (from memory).
 */
export function surroundingsOf(project: PlaceAndRooms, climate: OutdoorClimate = project?.climate): Surroundings {
  refuseFaults([...checkPlaceAndRooms(project, ["project"]), ...checkClimate(climate, ["climate"])]);
  const { severity = MEAN_YEAR, rooms, humidityMargin } = project;
  const all = [...rooms.values()];
  const reported = siteOf(climate, all, humidityMargin);
  return {
    rooms,
    humidityMargin,
    sites: {
      reported,
      mean: isOneInTen(severity) ? siteOf(oneInTenYear(climate, severity, MEAN_YEAR), all, humidityMargin) : reported,
      colder: siteOf(oneInTenYear(climate, severity, ONE_IN_TEN_COLDER), all, humidityMargin),
      warmer: siteOf(oneInTenYear(climate, severity, ONE_IN_TEN_WARMER), all, humidityMargin),
      wetter: siteOf(climate, all.map(wetterRoom), humidityMargin),
      heatedDaily: siteOf(climate, all.map(heatedDaily), humidityMargin),
    },
  };
}

/**
 * The same surroundings with one room changed, in every calculated year.
 *
 * @param surroundings - before the change
 * @param room - the changed room, with its name unchanged
 * @returns surroundings in which only that room's air differs
 */
export function withRoom(surroundings: Surroundings, room: Room): Surroundings {
  const { sites, rooms, humidityMargin } = surroundings;
  const changed = (site: Site, as: Room): Site => ({
    ...site,
    rooms: new Map([...site.rooms, [room.name, roomMonths(as, site.outdoor, humidityMargin)]]),
  });
  const reported = changed(sites.reported, room);
  return {
    humidityMargin,
    rooms: new Map([...rooms, [room.name, room]]),
    sites: {
      reported,
      mean: sites.mean === sites.reported ? reported : changed(sites.mean, room),
      colder: changed(sites.colder, room),
      warmer: changed(sites.warmer, room),
      wetter: changed(sites.wetter, wetterRoom(room)),
      heatedDaily: changed(sites.heatedDaily, heatedDaily(room)),
    },
  };
}

function siteOf(climate: OutdoorClimate, rooms: readonly Room[], humidityMargin: number): Site {
  const outdoor = climateMonths(climate);
  return { outdoor, rooms: new Map(rooms.map((room) => [room.name, roomMonths(room, outdoor, humidityMargin)])) };
}
