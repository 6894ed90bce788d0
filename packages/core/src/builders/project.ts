import { MEAN_YEAR } from "../climate/severity.ts";
import { checkProject } from "../given/project.ts";
import { comparable, nearNames } from "../problems/near-names.ts";
import { ProblemsError } from "../problems/problems-error.ts";
import { makeSlug } from "../project/slug.ts";
import type { BuildUp, OutdoorClimate, Project, Room } from "../project/types.ts";
import { requireList, requireObject } from "../require.ts";
import { SHIPPED_CLIMATES } from "../shipped-tables.ts";
import { checked } from "./given-or-thrown.ts";
import { room } from "./room.ts";

/** A place, its rooms, and the build-ups to assess. */
export interface ProjectValues extends Partial<Omit<Project, "climate" | "rooms" | "buildUps">> {
  /** A shipped place by its name, or a climate. */
  climate: string | OutdoorClimate;
  /** (default one heated room of class 3 at 20 °C, called "indoor") */
  rooms?: readonly Room[];
  buildUps: readonly BuildUp[];
}

/**
 * A project like one that `readProject` makes from a file.
 *
 * @param values - place, rooms and build-ups
 * @returns the project; build-ups of the same name get different slugs
 * @throws ProblemsError with every problem, in the words of the project file's reader
 */
export function project(values: ProjectValues): Project {
  requireObject(values, "values", ["climate", "buildUps"]);
  requireList(values.buildUps, "buildUps");
  const { name = "project", rooms = [room()] } = values;
  const taken = new Set<string>();
  const made: Project = {
    reference: null,
    query: null,
    severity: MEAN_YEAR,
    altitudeCorrection: null,
    humidityMargin: 1,
    junctions: [],
    rainOfHeatingSeason: null,
    accept: [],
    oddities: [],
    climatesForPlace: [],
    prices: null,
    ...values,
    name,
    climate: typeof values.climate === "string" ? climateNamed(values.climate) : values.climate,
    rooms: new Map(rooms.map((each) => [each.name, each])),
    buildUps: values.buildUps.map((buildUp) => ({ ...buildUp, slug: makeSlug(buildUp.name, taken) })),
  };
  return checked(made, checkProject, name);
}

function climateNamed(written: string): OutdoorClimate {
  const known = Object.keys(SHIPPED_CLIMATES);
  const name = known.find((place) => comparable(place) === comparable(written));
  if (name !== undefined) return SHIPPED_CLIMATES[name]!;
  const details = { name: written, near: nearNames(written, known), known };
  throw new ProblemsError([{ code: "climate-unknown", path: ["climate"], position: null, received: written, details }]);
}
