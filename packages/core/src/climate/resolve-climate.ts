import type { Problem } from "../problems/types.ts";
import { fetchTable, findPlace, type Supplies } from "../project/find-text.ts";
import type { ReadingContext } from "../project/reading-context.ts";
import type { OutdoorClimate } from "../project/types.ts";
import { textAt } from "../project/value-at.ts";
import { inFile } from "../tables/table-problem.ts";
import { readClimate } from "./read-climate.ts";

/**
 * The climate that a project names: a shipped place by name, or the user's own table by a path ending in `.csv`.
 *
 * @param shipped - the shipped climates by name
 * @param supplies - supplies the user's own table
 * @param context - the file, and where problems with the name go
 * @returns the climate, or null with the problems of the table
 */
export function resolveClimate(
  shipped: Readonly<Record<string, OutdoorClimate>>,
  supplies: Supplies | undefined,
  context: ReadingContext,
): { value: OutdoorClimate | null; problems: readonly Problem[] } {
  const written = textAt(context.file.data, ["climate"])?.trim() ?? null;
  if (written === null) return { value: null, problems: [] };
  if (!/\.csv$/i.test(written)) {
    const name = findPlace(written, ["climate"], Object.keys(shipped), context);
    return { value: name === null ? null : shipped[name]!, problems: [] };
  }
  const found = fetchTable(written, ["climate"], supplies, context);
  if (found === null) return { value: null, problems: [] };
  const reading = readClimate(found.text, found.name);
  if (reading.ok) return { value: reading.value, problems: [] };
  return { value: null, problems: inFile(reading.problems, found.file) };
}
