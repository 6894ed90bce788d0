import { valueMeant } from "../../problems/other-values.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { isRoof } from "../is-roof.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenBuildUp } from "../schema/schema-build-up.ts";
import type { Room } from "../types.ts";
import { textAt } from "../value-at.ts";
import { FACES_WITHOUT_ROOM, type Rooms } from "./resolve-room.ts";

/**
 * Finds out what a build-up faces.
 *
 * @param path - where the build-up stands
 * @param rooms - the project's rooms
 * @param context - data and problems
 * @returns outdoors, ground, void or a room's name; null after adding a problem
 */
export function resolveFacing(path: ProblemPath, rooms: Rooms, context: ReadingContext): string | null {
  const faces = textAt(context.file.data, [...path, "faces"]) ?? "outdoors";
  if (FACES_WITHOUT_ROOM.includes(faces) || rooms.has(faces)) return faces;
  const known = [...FACES_WITHOUT_ROOM, ...rooms.keys()];
  context.collector.add("faces-unknown", [...path, "faces"], {
    name: faces,
    near: valueMeant("faces", faces)?.near.filter((name) => known.includes(name)) ?? context.nearNames(faces, known),
    known,
  });
  return null;
}

/**
 * Checks that what a build-up faces goes with its element and with the keys that describe it.
 *
 * @param written - the build-up, of the right shape
 * @param path - where it stands
 * @param room - the room where its layers begin
 * @param faces - what it faces
 * @param context - problems and notes
 */
export function checkFacing(
  written: WrittenBuildUp,
  path: ProblemPath,
  room: string,
  faces: string,
  context: ReadingContext,
): void {
  const { collector } = context;
  if (room === faces) collector.add("faces-own-room", [...path, "faces"], { name: room });
  if (faces === "ground" && written.ground === undefined)
    collector.addAtKey("faces-needs", [...path, "faces"], { faces, key: "ground" });
  if (faces === "void" && written.void === undefined)
    collector.addAtKey("faces-needs", [...path, "faces"], { faces, key: "void" });
  if ((faces === "ground" || faces === "void") && written.element !== "floor") {
    collector.add("faces-only-floor", [...path, "element"], { faces, element: written.element });
  }
  const facesRoom = !FACES_WITHOUT_ROOM.includes(faces);
  if (written.ground !== undefined && faces !== "ground")
    collector.addAtKey("only-when-facing", [...path, "ground"], { key: "ground", faces: "ground" });
  if (written.void !== undefined && faces !== "void")
    collector.addAtKey("only-when-facing", [...path, "void"], { key: "void", faces: "void" });
  if (written.space !== undefined && !facesRoom)
    collector.addAtKey("only-when-facing", [...path, "space"], { key: "space", faces: "a room's name" });
  if (written.element === "partition" && faces === "outdoors") {
    context.note(
      "partition-outdoors",
      [...path, "element"],
      "a partition stands between two rooms, but this one faces outdoors; name the other room under `faces`, or call it a wall",
    );
  }
  for (const key of ["pitch", "span", "clear sky", "roof space"] as const) {
    if (written[key] !== undefined && !isRoof(written))
      collector.addAtKey("only-for-roofs", [...path, key], { key, element: written.element });
  }
}

/** Checks that `space`, a resistance, is not given together with a room that has its own air. */
export function checkSpace(
  written: WrittenBuildUp,
  path: ProblemPath,
  faced: Room | null,
  context: ReadingContext,
): void {
  if (written.space === undefined || faced === null || faced.temperature.kind === "unheated") return;
  context.collector.addAtKey("space-of-own-air", [...path, "space"], { name: faced.name });
}
