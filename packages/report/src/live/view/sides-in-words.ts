import type { BuildUpResult, SectionMonth } from "@warmside/core";
import { sideWords } from "../../words.ts";

/** What lies on the two sides, and which of them is warm. */
export interface Sides {
  room: { name: string; side: "warm side" | "cold side" | null };
  far: { name: string; side: "warm side" | "cold side" | null };
}

/**
 * The two sides of a build-up in words.
 *
 * @param result - the build-up
 * @returns their names, and which is the warm side; null where nothing drives vapour
 */
export function sidesOf(result: BuildUpResult): Sides {
  const { room, far } = sideWords(result);
  const warmSide = result.vapourLayer?.warmSide ?? "neither";
  if (warmSide === "neither") return { room: { name: room, side: null }, far: { name: far, side: null } };
  const isFar = isFarSideWarm(result);
  return {
    room: { name: room, side: isFar ? "cold side" : "warm side" },
    far: { name: far, side: isFar ? "warm side" : "cold side" },
  };
}

/** Whether vapour is pushed in from the far side over the year. */
export function isFarSideWarm({ vapourLayer }: Pick<BuildUpResult, "vapourLayer">): boolean {
  return vapourLayer?.warmSide === "outside";
}

/** Which way vapour is pushed in a month; null where hardly any is. */
export function pushOf({ indoor, outdoor }: Pick<SectionMonth, "indoor" | "outdoor">): "out" | "in" | null {
  const drive = indoor.vapourPressure - outdoor.vapourPressure;
  if (Math.abs(drive) < LEAST_DRIVE) return null;
  return drive > 0 ? "out" : "in";
}

/** Less than this moves nothing worth an arrow [Pa] (this project's rule). */
const LEAST_DRIVE = 5;
