/**
 * What to call a room on the outer side of a build-up.
 *
 * @param name - the room's name
 * @returns "the store"; the room of every build-up that names none is "the indoor room"
 * @example roomInWords("store") // "the store"
 */
export function roomInWords(name: string): string {
  return name === "indoor" ? "the indoor room" : `the ${name}`;
}

/**
 * What to call the room that a sentence is about.
 *
 * @param name - the room's name
 * @returns "the store"; the room of every build-up that names none is "the room"
 * @example ownRoomInWords("indoor") // "the room"
 */
export function ownRoomInWords(name: string): string {
  return name === "indoor" ? "the room" : `the ${name}`;
}
