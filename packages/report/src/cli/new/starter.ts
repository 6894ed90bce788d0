import { STARTER_FLOOR } from "./starter-floor.ts";
import { starterHead } from "./starter-head.ts";
import { STARTER_PARTITION } from "./starter-partition.ts";
import { STARTER_ROOF } from "./starter-roof.ts";
import { STARTER_WALL } from "./starter-wall.ts";

/** What a project file can begin with. */
export type Element = "wall" | "roof" | "floor" | "partition";

/** The layers of each, with remarks. */
export const STARTERS: Readonly<Record<Element, string>> = {
  wall: STARTER_WALL,
  roof: STARTER_ROOF,
  floor: STARTER_FLOOR,
  partition: STARTER_PARTITION,
};

/** Whether driving rain reaches the outside. */
export type Rain = "no" | "sheltered" | "yes";

/** What is known of the building to begin with. */
export interface StarterAnswers {
  element: Element;
  /** A climate as the project file writes it. */
  climate: string;
  /** Keys of the room inside; the usual ones, with remarks, where they are not known. */
  room: readonly string[] | null;
  /** Null where it is not known. */
  rain: Rain | null;
}

/**
 * The text of a project file to begin with.
 *
 * @param answers - what is known
 * @returns YAML with remarks
 */
export function starterText({ element, climate, room, rain }: StarterAnswers): string {
  const layers = STARTERS[element];
  const withRain =
    rain === null ? layers : layers.replace("element: wall\n", `element: wall\n    wetted by rain: ${rain}\n`);
  return starterHead(element, climate, room) + withRain;
}
