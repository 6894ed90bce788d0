import { assessBuildUp, judgeBuildUp } from "../assess-build-up.ts";
import { climateMonths } from "../climate/climate-months.ts";
import { applySeverity } from "../climate/severity.ts";
import { yearSummary } from "../describe/moisture-result.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkProject } from "../given/project.ts";
import { withFactorsOfJunctions } from "../plane-checks/project-junctions.ts";
import type { AirMonths, BuildUp, OutdoorClimate, Project, Room } from "../project/types.ts";
import { requireFunction, requireList } from "../require.ts";
import type {
  PlacementCell,
  PlacementOfBuildUp,
  PlacementRow,
  PlacementStudy,
  VapourLayerResult,
} from "../result/types.ts";
import { describeRoom } from "../rooms/describe-room.ts";
import { impossibleMonths } from "../rooms/impossible-months.ts";
import { roomInWords } from "../rooms/room-in-words.ts";
import { roomMonth } from "../rooms/room-months.ts";
import { SHIPPED_CLIMATES } from "../shipped-tables.ts";
import { type Surroundings, surroundingsOf } from "../surroundings/surroundings.ts";
import { gridInWords, positionInWords } from "./placement/grid-in-words.ts";
import { layerMargin } from "./placement/margin.ts";
import { type PlacedBuildUp, placements } from "./placement/positions.ts";
import { type RoomInUse, usesOf } from "./placement/uses.ts";

/** The climates studied besides the project's own, if the file names none: cold, hot and humid, and hot and dry. */
export const CLIMATES_FOR_PLACE: Readonly<Record<string, string>> = {
  oslo: "cold",
  "melbourne-florida": "hot and humid",
  "albuquerque-new-mexico": "hot and dry in summer",
};

/**
 * Studies the vapour layer of every build-up in each sensible position: towards the room, within the insulation,
 * towards the outer side, left out, and on both faces. Does so in the project's own climate and in others, for the room
 * heated and cooled.
 *
 * @param project - the project
 * @param climates - the other climates (default: those that the file names, otherwise a cold, a hot humid and a hot dry
 *   one); the project's severity is applied to them
 * @param reached - called after each build-up, with the number done and the total
 * @returns a grid for each build-up, with every cell assessed in full, and a sentence that sums it up
 */
export function studyPlacement(
  project: Project,
  climates: readonly OutdoorClimate[] = climatesFor(project),
  reached: (done: number, of: number) => void = () => undefined,
): PlacementStudy {
  requireList(climates, "climates");
  requireFunction(reached, "reached");
  refuseFaults(checkProject(project, ["project"]));
  const others = climates
    .filter(({ name }) => name !== project.climate.name)
    .map((climate) => applySeverity(climate, project.severity));
  const all = [project.climate, ...others];
  return {
    climates: all.map(({ name }, index) => ({
      name,
      kind: index === 0 ? "the project's own" : kindOfClimate(name),
      severity: project.severity.name,
    })),
    buildUps: project.buildUps.map((buildUp, index) => {
      const grid = placementOf(buildUp, project, all);
      reached(index + 1, project.buildUps.length);
      return grid;
    }),
  };
}

/** The kind of a climate. The caller may give it any name, even that of a property which every object has. */
function kindOfClimate(name: string): string {
  return Object.hasOwn(CLIMATES_FOR_PLACE, name) ? CLIMATES_FOR_PLACE[name]! : "as named";
}

function climatesFor(project: Project): OutdoorClimate[] {
  const names = project.climatesForPlace.length > 0 ? project.climatesForPlace : Object.keys(CLIMATES_FOR_PLACE);
  return names.map((name) => SHIPPED_CLIMATES[name]!);
}

function placementOf(buildUp: BuildUp, project: Project, climates: readonly OutdoorClimate[]): PlacementOfBuildUp {
  const { name, slug } = buildUp;
  const reason = whyLeftOut(buildUp, project);
  // The vapour layer has no effect on heat: the factors of junctions are the same in every position.
  const made = reason === null ? placements(withFactorsOfJunctions(project, buildUp)) : null;
  if (made === null) {
    const leftOut = reason ?? "It has no insulation beside which a vapour layer could lie.";
    return { name, slug, layer: null, leftOut, positions: [], rows: [], message: null };
  }
  const farSide = farSideInWords(buildUp.faces);
  const uses = usesOf(project.rooms.get(buildUp.room)!);
  const rows = climates.flatMap((climate) =>
    uses.map((use, index) => rowOf(made.placed, buildUp, project, climate, use, uses.slice(0, index))),
  );
  return {
    name,
    slug,
    layer: { name: made.layer.name, sd: made.layer.material.equivalentAirLayerThickness!, added: made.added },
    leftOut: null,
    positions: made.placed.map(({ position, isDrawn }) => ({
      position,
      isDrawn,
      words: positionInWords(position, farSide),
    })),
    rows,
    message: gridInWords(rows, farSide),
  };
}

/** Why a build-up has no grid: it lies on the ground, between rooms with their own air, or is beyond the method. */
function whyLeftOut(buildUp: BuildUp, project: Project): string | null {
  if (buildUp.faces === "ground") return "It lies on the ground, whatever the climate: its membrane stays where it is.";
  const farRoom = project.rooms.get(buildUp.faces);
  if (farRoom !== undefined && farRoom.temperature.kind !== "unheated")
    return betweenRooms(project.rooms.get(buildUp.room)!, farRoom);
  const { beyond } = assessBuildUp(buildUp, surroundingsOf(project));
  return beyond === null ? null : `It is beyond this method: ${beyond.reason}`;
}

/** Why a build-up between two rooms with their own air has no grid, by the kind of both rooms. */
function betweenRooms(room: Room, farRoom: Room): string {
  if (room.temperature.kind === "unheated") {
    return `It begins in ${roomInWords(room.name)}, which is unheated, and faces ${roomInWords(farRoom.name)}: the grids heat and cool the room in which the layers begin. Written from the other side it has one.`;
  }
  const bothHeated = room.temperature.kind !== "held" && farRoom.temperature.kind !== "held";
  return bothHeated
    ? "It lies between two heated rooms: outdoor air hardly reaches it."
    : "It lies between two rooms with a temperature of their own: outdoor air hardly reaches it.";
}

function rowOf(
  placed: readonly PlacedBuildUp[],
  buildUp: BuildUp,
  project: Project,
  climate: OutdoorClimate,
  { use, room }: RoomInUse,
  before: readonly RoomInUse[],
): PlacementRow {
  const rooms = new Map([...project.rooms, [room.name, room]]);
  const { temperatureRule, humidityRule } = describeRoom(room);
  const row = { climate: climate.name, use, temperatureRule, humidityRule };
  const used = [room, ...(buildUp.faces === room.name ? [] : [rooms.get(buildUp.faces)])].filter(
    (one) => one !== undefined,
  );
  const outdoor = climateMonths(climate);
  const impossible = used.find((one) => impossibleMonths(one, outdoor, project.humidityMargin).length > 0);
  if (impossible !== undefined) {
    const leftOut = `${impossible.name === "indoor" ? "The room" : `The ${impossible.name}`} as stated would be wetter than air can be.`;
    return { ...row, warmSide: null, warmSideName: null, leftOut, cells: [] };
  }
  const same = before.find((one) => haveSameAir(one.room, room, outdoor, project.humidityMargin));
  if (same !== undefined) {
    const leftOut = `The cooling never runs there: the row would repeat that of the room ${same.use}.`;
    return { ...row, warmSide: null, warmSideName: null, leftOut, cells: [] };
  }
  const surroundings = surroundingsOf({ ...project, rooms }, climate);
  const assessed = placed.map((one) => cellOf(one, surroundings));
  const { warmSide, warmSideName } = assessed[0]!;
  return { ...row, warmSide, warmSideName, leftOut: null, cells: assessed.map(({ cell }) => cell) };
}

/** Whether a room has the same air in every month in two uses. */
function haveSameAir(one: Room, other: Room, outdoor: AirMonths, humidityMargin: number): boolean {
  return outdoor.temperature.every((_, month) => {
    const [first, second] = [one, other].map((room) => roomMonth(room, month, outdoor, humidityMargin));
    return first!.temperature === second!.temperature && first!.vapourPressure === second!.vapourPressure;
  });
}

function cellOf(
  placed: PlacedBuildUp,
  surroundings: Surroundings,
): { cell: PlacementCell } & Pick<VapourLayerResult, "warmSide" | "warmSideName"> {
  const { evidence, findings, judgement } = judgeBuildUp(placed.buildUp, surroundings, "what the judgement depends on");
  const isBeyond = findings.some(({ effect }) => effect === "beyond");
  const moisture = isBeyond ? null : yearSummary(evidence.calculation.governing.year);
  const { warmSide, warmSideName } = evidence.vapourLayer;
  const margins = moisture === null ? [] : placed.at.flatMap((sheet) => layerMargin(evidence, sheet) ?? []);
  const onWarmSide = warmSide === "inside" ? margins[0] : margins[margins.length - 1];
  return {
    warmSide,
    warmSideName,
    cell: {
      position: placed.position,
      judgement: judgement.word,
      verdict: moisture?.verdict ?? null,
      peak: moisture?.peak ?? null,
      carriedOver: moisture?.carriedOver ?? null,
      dewPointMargin: onWarmSide?.margin ?? null,
      dewPointMarginMonth: onWarmSide?.month ?? null,
    },
  };
}

function farSideInWords(faces: string): string {
  if (faces === "outdoors") return "outdoors";
  return roomInWords(faces);
}
