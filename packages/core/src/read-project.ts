import { saturationPressure } from "./air/saturation-pressure.ts";
import { correctForAltitude, STANDARD_LAPSE_RATE } from "./climate/altitude.ts";
import { climateMonths } from "./climate/climate-months.ts";
import { readClimate } from "./climate/read-climate.ts";
import { applySeverity, MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "./climate/severity.ts";
import { MONTH_NAMES } from "./constants.ts";
import { materialsOfProject } from "./materials/materials-of-project.ts";
import { pricesOfProject } from "./materials/prices-of-project.ts";
import { orderProblems } from "./problems/order-problems.ts";
import { ProblemsError } from "./problems/problems-error.ts";
import type { Problem, Reading } from "./problems/types.ts";
import { collectNotes } from "./project/accept-notes.ts";
import { findClimateText, findPlaces, type Supplies } from "./project/find-text.ts";
import { noteOddValues } from "./project/odd-values.ts";
import { parseFileText } from "./project/parse-file-text.ts";
import { collectProblems } from "./project/problem-collector.ts";
import { addProblemsOfShape } from "./project/problems-of-shape.ts";
import type { ReadingContext } from "./project/reading-context.ts";
import { resolveBuildUp } from "./project/resolve-build-up.ts";
import { pathOfRoom, type Rooms, resolveRooms } from "./project/resolve-room.ts";
import { projectSchema } from "./project/schema-project.ts";
import { pricesOf, queryOf } from "./project/top-of-project.ts";
import type {
  AirMonths,
  AltitudeCorrection,
  BuildUp,
  OutdoorClimate,
  Project,
  Room,
  Severity,
} from "./project/types.ts";
import { listAt, textAt } from "./project/value-at.ts";
import type { WrittenProject, WrittenSeverity } from "./project/written-project.ts";
import { type ImpossibleMonth, impossibleMonths } from "./rooms/impossible-months.ts";
import { CLIMATE_CSVS, MATERIALS_CSV } from "./shipped-tables.ts";

export type { Supplies };

/**
 * Reads a project file: text to project, or every problem at once.
 *
 * @param text - YAML or JSON
 * @param supplies - hands out the tables that the project names by path; nothing is opened here
 * @returns the project with all names resolved and all quantities in SI, or its problems ordered by line
 */
export function readProject(text: string, supplies?: Supplies): Reading<Project> {
  const parsed = parseFileText(text);
  if (!parsed.ok) return { ok: false, problems: orderProblems(parsed.problems) };
  const file = parsed.value;
  const collector = collectProblems(file);
  const notes = collectNotes(file.data);
  const materials = materialsOfProject(MATERIALS_CSV, supplies, { file, collector });
  const context: ReadingContext = { file, collector, findMaterial: materials.find, note: notes.note };
  addProblemsOfShape(file, collector);

  const rooms = resolveRooms(context);
  const buildUps = resolveBuildUps(rooms, context);
  const climate = resolveClimate(supplies, context);
  const prices = pricesOfProject(supplies, context);
  const placesForStudy = findPlaces(["climates for place"], Object.keys(CLIMATE_CSVS), context);
  const written = projectSchema.safeParse(file.data);
  if (written.success && climate.value !== null) {
    checkYear(written.data, climate.value, rooms, context);
    noteOddValues(written.data, context);
  }

  const found = collector.problems.filter(({ code }) => materials.isComplete || code !== "material-unknown");
  const problems = [...found, ...materials.problems, ...climate.problems, ...prices.problems];
  if (problems.length > 0) return { ok: false, problems: orderProblems(problems) };
  if (!written.success || climate.value === null || buildUps.some((buildUp) => buildUp === null)) {
    throw new Error("a project without problems could not be read");
  }
  const value: Project = {
    name: written.data.project,
    reference: written.data.reference ?? null,
    query: queryOf(written.data),
    climate: climate.value,
    severity: severityOf(written.data.severity),
    altitudeCorrection: altitudeCorrectionOf(written.data),
    humidityMargin: written.data["humidity margin"]?.value ?? 1,
    rooms: rooms as ReadonlyMap<string, Room>,
    buildUps: buildUps as BuildUp[],
    accept: written.data.accept ?? [],
    oddities: notes.oddities,
    climatesForPlace: placesForStudy,
    prices: pricesOf(written.data, prices.value),
  };
  return { ok: true, value };
}

/**
 * Reads a project file, or throws.
 *
 * @param text - YAML or JSON
 * @param supplies - hands out the tables that the project names by path
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

function resolveClimate(
  supplies: Supplies | undefined,
  context: ReadingContext,
): { value: OutdoorClimate | null; problems: readonly Problem[] } {
  const written = textAt(context.file.data, ["climate"]);
  const found = written === null ? null : findClimateText(written, ["climate"], CLIMATE_CSVS, supplies, context);
  if (found === null) return { value: null, problems: [] };
  const reading = readClimate(found.text, found.name);
  if (reading.ok) return { value: reading.value, problems: [] };
  return {
    value: null,
    problems: reading.problems.map((problem) => inFile(problem, found.file ?? `climate/${found.name}.csv`)),
  };
}

function inFile(problem: Problem, file: string): Problem {
  return { ...problem, details: { ...problem.details, file } };
}

/** What can be told only with the year: a site's height over a station of unknown height, rooms that cannot exist. */
function checkYear(written: WrittenProject, climate: OutdoorClimate, rooms: Rooms, context: ReadingContext): void {
  const correction = altitudeCorrectionOf(written);
  if (correction !== null && climate.altitude === null) {
    context.collector.add("altitude-of-station", ["altitude"], { name: climate.name });
    return;
  }
  const atSite = correction === null ? climate : correctForAltitude(climate, correction);
  const outdoor = climateMonths(applySeverity(atSite, severityOf(written.severity)));
  for (const [name, room] of rooms) {
    const months = room === null ? [] : impossibleMonths(room, outdoor, written["humidity margin"]?.value ?? 1);
    if (months.length > 0) {
      context.collector.addAtKey("room-impossible", pathOfRoom(name), detailsOf(months, outdoor));
    }
  }
}

function detailsOf(months: readonly ImpossibleMonth[], outdoor: AirMonths): Problem["details"] {
  const worst = months.reduce((one, other) =>
    other.vapourPressure / other.saturation > one.vapourPressure / one.saturation ? other : one,
  );
  return {
    months: months.map(({ month }) => MONTH_NAMES[month]!),
    worst: MONTH_NAMES[worst.month]!,
    vapourPressure: Math.round(worst.vapourPressure),
    saturation: Math.round(worst.saturation),
    isWarmerThanOutdoors: worst.saturation > saturationPressure(outdoor.temperature[worst.month]!) ? "yes" : "no",
  };
}

function severityOf(written: WrittenSeverity | undefined): Severity {
  const named = [MEAN_YEAR, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER].find(({ name }) => name === (written ?? "mean year"));
  if (named !== undefined || typeof written !== "object") return named ?? MEAN_YEAR;
  return { name: `${written.value < 0 ? "−" : "+"}${Math.abs(written.value)} K`, offset: written.value };
}

function altitudeCorrectionOf(written: WrittenProject): AltitudeCorrection | null {
  if (written.altitude === undefined) return null;
  return { altitude: written.altitude.value, lapseRate: written["lapse rate"]?.value ?? STANDARD_LAPSE_RATE };
}
