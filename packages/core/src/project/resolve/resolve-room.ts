import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenRoom } from "../schema/schema-room.ts";
import type { HumidityRule, Room, TemperatureRule } from "../types.ts";
import { keysOf, valueAt } from "../value-at.ts";
import { twelveOf } from "./resolve-ground.ts";

/** The room of every build-up that names none. */
export const USUAL_ROOM = "indoor";

/** Words that `faces` takes besides the names of rooms; no room may have such a name. */
export const FACES_WITHOUT_ROOM: readonly string[] = ["outdoors", "ground", "void"];

/** A project's rooms by name; null for a room with problems of its own. */
export type Rooms = ReadonlyMap<string, Room | null>;

/**
 * Reads every room of the project.
 *
 * @param context - data and problems
 * @returns rooms by name, `indoor` among them when the file has it
 */
export function resolveRooms(context: ReadingContext): Rooms {
  const { data } = context.file;
  const rooms = new Map<string, Room | null>();
  if (valueAt(data, [USUAL_ROOM]) !== undefined) rooms.set(USUAL_ROOM, resolveRoom(USUAL_ROOM, [USUAL_ROOM], context));
  for (const name of keysOf(data, ["rooms"])) {
    const path = ["rooms", name];
    if (FACES_WITHOUT_ROOM.includes(name) || (name === USUAL_ROOM && rooms.has(USUAL_ROOM))) {
      context.collector.addAtKey("room-name-taken", path, { name });
    } else rooms.set(name, resolveRoom(name, path, context));
  }
  return rooms;
}

/**
 * Finds a room that a build-up names.
 *
 * @param name - as written
 * @param path - where the name stands
 * @param rooms - the project's rooms
 * @param context - problems
 * @returns its name, or null after adding a problem
 */
export function findRoom(name: string, path: ProblemPath, rooms: Rooms, context: ReadingContext): string | null {
  if (rooms.has(name)) return name;
  const known = [...rooms.keys()];
  if (name === USUAL_ROOM) {
    if (!standsUnderAnotherName(name, context)) context.collector.add("indoor-missing", path);
  } else context.collector.add("room-unknown", path, { name, near: context.nearNames(name, known), known });
  return null;
}

/** Whether a problem has already reported a misspelt key at the top that was meant for this one. */
function standsUnderAnotherName(key: string, { collector }: ReadingContext): boolean {
  return collector.problems.some(
    ({ path, details: { near } }) => path.length === 1 && Array.isArray(near) && near[0] === key,
  );
}

/** Where a room stands in the file. */
export function pathOfRoom(name: string): ProblemPath {
  return name === USUAL_ROOM ? [USUAL_ROOM] : ["rooms", name];
}

function resolveRoom(name: string, path: ProblemPath, context: ReadingContext): Room | null {
  const written = context.shape.at<WrittenRoom>(path);
  if (written === null) return null;
  return {
    name,
    temperature: temperatureRule(written),
    cooling: written.cooling?.value ?? null,
    humidity: humidityRule(written.humidity),
    humidityWhenCooled: written["humidity when cooled"]?.value ?? null,
    burstsOfSteam: written["bursts of steam"] ?? false,
    pool: written.pool ?? false,
  };
}

function temperatureRule(written: WrittenRoom): TemperatureRule {
  if (written.heating !== undefined) {
    return {
      kind: "heated",
      setPoint: written.heating.value,
      daysPerWeek: written["heated days"]?.value ?? DAYS_PER_WEEK,
      otherwise: written.otherwise?.value ?? null,
    };
  }
  if (written.temperature === undefined) return { kind: "unheated" };
  if (written.temperature === "by outdoor temperature") return { kind: "by outdoor temperature" };
  return { kind: "held", months: twelveOf(written.temperature) };
}

function humidityRule(written: WrittenRoom["humidity"]): HumidityRule {
  if (written === undefined) return { kind: "as outdoors" };
  if (Array.isArray(written)) return { kind: "months", relativeHumidity: twelveOf(written) };
  if ("production" in written) {
    const { production, volume, "air changes": airChanges } = written;
    return { kind: "balance", production: production.value, volume: volume.value, airChanges: airChanges.value };
  }
  return written.kind === "constant" ? { kind: "months", relativeHumidity: twelveOf(written.share) } : written;
}

/** Source: definition. */
const DAYS_PER_WEEK = 7;
