import { assessProject, type ProjectResult, problemInText, readProject, wordProblem } from "@warmside/core";
import { expect } from "vitest";
import { lawsBroken } from "./lawful-result.ts";
import type { ProjectFile } from "./random-project-files.ts";

/** Longest work that one build-up's answer may take [ms]: 2 s on an idle machine, twice that where others work on it too. */
const LONGEST_ANSWER = 4000;

/** What a file of sound values may still be refused for: a room that cannot exist in its climate, too much insulation, a space beside a room of its own air. */
export const REFUSED_TOGETHER = ["room-impossible", "resists-too-much", "space-of-own-air"];

/**
 * A file through the whole chain to its result, which must be lawful and in time.
 *
 * @returns the result; null for a file whose values are sound each by itself and cannot be together
 */
export function resultOf({ text, supplies }: ProjectFile): ProjectResult | null {
  const begun = process.cpuUsage();
  const reading = readProject(text, supplies);
  if (!reading.ok) {
    const others = reading.problems.filter(({ code }) => !REFUSED_TOGETHER.includes(code));
    expect(others.map((problem) => problemInText(wordProblem(problem)))).toEqual([]);
    return null;
  }
  const result = assessProject(reading.value);
  const { user, system } = process.cpuUsage(begun);
  expect(lawsBroken(result)).toEqual([]);
  expect((user + system) / 1000, "milliseconds of work").toBeLessThan(LONGEST_ANSWER * reading.value.buildUps.length);
  return result;
}
