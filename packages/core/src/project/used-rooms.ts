import type { Project, Room } from "./types.ts";

/**
 * The rooms in use: those that a build-up begins in or faces.
 *
 * @param project - its rooms and build-ups
 * @returns the rooms, in the file's order
 */
export function usedRooms({ rooms, buildUps }: Pick<Project, "rooms" | "buildUps">): Room[] {
  const used = new Set(buildUps.flatMap(({ room, faces }) => [room, faces]));
  return [...rooms.values()].filter(({ name }) => used.has(name));
}
