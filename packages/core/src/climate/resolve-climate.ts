import type { Problem } from "../problems/types.ts";
import { findClimateText, type Supplies } from "../project/find-text.ts";
import type { ReadingContext } from "../project/reading-context.ts";
import type { OutdoorClimate } from "../project/types.ts";
import { textAt } from "../project/value-at.ts";
import { readClimate } from "./read-climate.ts";

/**
 * The climate that a project names: one of the shipped tables, or one of the user's own.
 *
 * @param shipped - text of each shipped table by name
 * @param supplies - hands out the table that is named by its path
 * @param context - the file, and where problems of the name go
 * @returns the climate, or null with the problems of the table
 */
export function resolveClimate(
  shipped: Readonly<Record<string, string>>,
  supplies: Supplies | undefined,
  context: ReadingContext,
): { value: OutdoorClimate | null; problems: readonly Problem[] } {
  const written = textAt(context.file.data, ["climate"]);
  const found = written === null ? null : findClimateText(written, ["climate"], shipped, supplies, context);
  if (found === null) return { value: null, problems: [] };
  const reading = readClimate(found.text, found.name);
  if (reading.ok) return { value: reading.value, problems: [] };
  const file = found.file ?? `climate/${found.name}.csv`;
  return { value: null, problems: reading.problems.map((problem) => inFile(problem, file)) };
}

function inFile(problem: Problem, file: string): Problem {
  return { ...problem, details: { ...problem.details, file } };
}
