import { checkFit } from "./climate/check-fit.ts";
import { climateAtSite, siteStated } from "./climate/climate-at-site.ts";
import { resolveClimate } from "./climate/resolve-climate.ts";
import { materialsOfProject } from "./materials/materials-of-project.ts";
import { pricesOfProject } from "./materials/prices-of-project.ts";
import { offers } from "./problems/offers.ts";
import { orderProblems } from "./problems/order-problems.ts";
import { ProblemsError } from "./problems/problems-error.ts";
import type { Reading } from "./problems/types.ts";
import type { WorkCount } from "./problems/work-count.ts";
import { collectOddities, noteIdleAcceptances, type OddityCollector } from "./project/collect-oddities.ts";
import { findPlaces, type Supplies } from "./project/find-text.ts";
import { noteOddValues } from "./project/odd-values.ts";
import { collectProblems } from "./project/problem-collector.ts";
import type { ReadingContext } from "./project/reading-context.ts";
import { resolveBuildUp } from "./project/resolve/resolve-build-up.ts";
import { resolveJunctions } from "./project/resolve/resolve-junctions.ts";
import { pathOfRoom, type Rooms, resolveRooms } from "./project/resolve/resolve-room.ts";
import { addProblemsOfIssues } from "./project/schema/problems-of-shape.ts";
import { readShape } from "./project/schema/read-shape.ts";
import type { WrittenProject } from "./project/schema/schema-project.ts";
import { parseFileText } from "./project/text/parse-file-text.ts";
import { noteIdleHourRate, noteIdleMargin, pricesOf, queryOf } from "./project/top-of-project.ts";
import type { BuildUp, OutdoorClimate, Project, Room } from "./project/types.ts";
import { usedRooms } from "./project/used-rooms.ts";
import { listAt } from "./project/value-at.ts";
import { requireText } from "./require.ts";
import { checkRoomsInYear } from "./rooms/check-rooms-in-year.ts";
import { SHIPPED_CLIMATES, SHIPPED_MATERIALS } from "./shipped-tables.ts";

export type { Supplies };

/**
 * Reads a project file: gives the project, or every problem at once.
 *
 * @param text - YAML or JSON
 * @param supplies - supplies the tables that the project names by path; nothing is opened here
 * @returns the project with all names resolved and all quantities in SI, or its problems ordered by line
 */
export function readProject(text: string, supplies?: Supplies): Reading<Project> {
  requireText(text, "text");
  return readCounted(text, supplies, { steps: 0 });
}

/**
 * Reads a project file and counts the steps it takes.
 *
 * @param text - YAML or JSON
 * @param supplies - supplies the tables that the project names by path
 * @param work - where steps are counted
 * @returns the project, or its problems
 */
export function readCounted(text: string, supplies: Supplies | undefined, work: WorkCount): Reading<Project> {
  const parsed = parseFileText(text, work);
  if (!parsed.ok) return { ok: false, problems: orderProblems(parsed.problems) };
  const file = parsed.value;
  const collector = collectProblems(file);
  const notes = collectOddities(file.data);
  const materials = materialsOfProject(SHIPPED_MATERIALS, supplies, { file, collector }, work);
  const shape = readShape(file.data);
  const context: ReadingContext = {
    file,
    shape,
    collector,
    findMaterial: materials.find,
    nearNames: offers(work),
    note: notes.note,
  };
  addProblemsOfIssues(shape.issues, [], file, collector);

  const rooms = resolveRooms(context);
  const buildUps = resolveBuildUps(rooms, context);
  const climate = resolveClimate(SHIPPED_CLIMATES, supplies, context);
  const prices = pricesOfProject(supplies, context);
  const placesForStudy = findPlaces(["climates for place"], Object.keys(SHIPPED_CLIMATES), context);
  const written = shape.whole;
  const junctions = written !== null ? resolveJunctions(written, buildUps, context) : [];
  const atSite = written !== null && climate.value !== null ? yearOfSite(written, climate.value, rooms, context) : null;
  if (written !== null) {
    noteOddValues(written, context);
    noteIdleHourRate(written, prices.value, context);
    noteIdleMargin(written, rooms.values(), context);
  }

  const found = collector.problems.filter(({ code }) => materials.isComplete || code !== "material-unknown");
  const problems = [...found, ...materials.problems, ...climate.problems, ...prices.problems];
  if (problems.length > 0) return { ok: false, problems: orderProblems(problems) };
  if (written === null || atSite === null || buildUps.some((buildUp) => buildUp === null)) {
    throw new Error("a project without problems could not be read");
  }
  const value: Project = {
    name: written.project,
    reference: written.reference ?? null,
    query: queryOf(written),
    climate: atSite,
    ...siteStated(written),
    humidityMargin: humidityMarginOf(written),
    rooms: rooms as ReadonlyMap<string, Room>,
    buildUps: buildUps as BuildUp[],
    junctions,
    rainOfHeatingSeason: written["rain of the heating season"]?.value ?? null,
    accept: written.accept ?? [],
    oddities: notes.oddities,
    climatesForPlace: placesForStudy,
    prices: pricesOf(written, prices.value),
  };
  noteFit(value, notes);
  noteIdleAcceptances(value.accept, notes);
  return { ok: true, value };
}

/**
 * Reads a project file, or throws.
 *
 * @param text - YAML or JSON
 * @param supplies - supplies the tables that the project names by path
 * @returns the project
 * @throws ProblemsError with every problem, in words
 */
export function readProjectOrThrow(text: string, supplies?: Supplies): Project {
  const reading = readProject(text, supplies);
  if (!reading.ok) throw new ProblemsError(reading.problems);
  return reading.value;
}

function resolveBuildUps(rooms: Rooms, context: ReadingContext): (BuildUp | null)[] {
  const slugs = new Set<string>();
  return listAt(context.file.data, ["build-ups"]).map((_, index) =>
    resolveBuildUp(["build-ups", index], rooms, slugs, context),
  );
}

/** The year the project is worked out for. Also reports rooms that cannot exist, which only the year can show. */
function yearOfSite(
  written: WrittenProject,
  climate: OutdoorClimate,
  rooms: Rooms,
  context: ReadingContext,
): OutdoorClimate | null {
  const stated = siteStated(written);
  if (stated.altitudeCorrection !== null && climate.altitude === null) {
    context.collector.add("altitude-of-station", ["altitude"], { name: climate.name });
    return null;
  }
  const atSite = climateAtSite(climate, stated);
  checkRoomsInYear(rooms, atSite, humidityMarginOf(written), context);
  return atSite;
}

function humidityMarginOf(written: WrittenProject): number {
  return written["humidity margin"]?.value ?? 1;
}

/** Notes where the climate does not fit the use of a room; `accept` acknowledges them like odd values. */
function noteFit(project: Project, notes: OddityCollector): void {
  for (const room of usedRooms(project)) {
    for (const { code, message } of checkFit(project.climate, room)) notes.add(code, pathOfRoom(room.name), message);
  }
}
