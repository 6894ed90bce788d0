import type { BuildUp } from "./build-up.ts";
import type { AltitudeCorrection, OutdoorClimate, Severity } from "./climate.ts";
import type { Junction } from "./junction.ts";
import type { PriceList } from "./prices.ts";
import type { Room } from "./room.ts";

/** The question, whom it is submitted to and which drawings it concerns, as printed on the first page. */
export interface Query {
  question: string | null;
  to: string | null;
  site: string | null;
  preparedBy: string | null;
  date: string | null;
  drawings: readonly string[];
}

/** A place, its rooms, and the build-ups to assess. */
export interface Project {
  name: string;
  reference: string | null;
  query: Query | null;
  /** The year the project is worked out for, with altitude and severity already applied. */
  climate: OutdoorClimate;
  severity: Severity;
  altitudeCorrection: AltitudeCorrection | null;
  /** Factor on the vapour excess of humidity classes, 1 unless stated [–]. */
  humidityMargin: number;
  /** Rooms by name; includes "indoor" if any build-up uses it. */
  rooms: ReadonlyMap<string, Room>;
  buildUps: readonly BuildUp[];
  /** Corners, edges and window sides to check. */
  junctions: readonly Junction[];
  /** Mean rain of the heating season [m/s of water, 1 mm/day is 1.1574e-8]; null when not given. */
  rainOfHeatingSeason: number | null;
  accept: readonly string[];
  /** Notes on odd values, and on rooms that do not fit the climate; marked as accepted if `accept` names them. */
  oddities: readonly Oddity[];
  climatesForPlace: readonly string[];
  prices: PriceList | null;
}

/** A note on something possible but odd; not a problem. */
export interface Oddity {
  code: string;
  path: string;
  message: string;
  accepted: boolean;
}
