import { assessProject, type ProjectResult, problemInText, wordProblem } from "@warmside/core";
import { expect } from "vitest";
import { readCounted } from "../../../packages/core/src/read-project.ts";
import { lawsBroken } from "./lawful-result.ts";
import type { ProjectFile } from "./random-project-files.ts";

/** Steps that reading may take for each character of a file (counted, so that no clock decides). */
const STEPS_PER_CHARACTER = 1000;

/** What a file of sound values may still be refused for: a room that cannot exist in its climate, too much insulation, a space beside a room of its own air, too many framings that cross. */
export const REFUSED_TOGETHER = ["room-impossible", "resists-too-much", "space-of-own-air", "too-many-ways"];

/**
 * A file through the whole chain to its result, which must be lawful; its reading takes steps in proportion to its length.
 *
 * @returns the result; null for a file whose values are sound each by itself and cannot be together
 */
export function resultOf({ text, supplies }: ProjectFile): ProjectResult | null {
  const work = { steps: 0 };
  const reading = readCounted(text, supplies, work);
  expect(work.steps).toBeLessThan(STEPS_PER_CHARACTER * text.length);
  if (!reading.ok) {
    const others = reading.problems.filter(({ code }) => !REFUSED_TOGETHER.includes(code));
    expect(others.map((problem) => problemInText(wordProblem(problem)))).toEqual([]);
    return null;
  }
  const result = assessProject(reading.value);
  expect(lawsBroken(result)).toEqual([]);
  return result;
}
