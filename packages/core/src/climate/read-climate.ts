import { orderProblems } from "../problems/order-problems.ts";
import type { Problem, Reading } from "../problems/types.ts";
import type { OutdoorClimate } from "../project/types.ts";
import { LONGEST_CLIMATE_TABLE } from "./climate-limits.ts";
import { climateProblem } from "./climate-problem.ts";
import { readClimateHeader } from "./read-climate-header.ts";
import { readClimateRows } from "./read-climate-rows.ts";
import { linesOf, looksBinary } from "./text-lines.ts";

/**
 * Reads a climate table: `#` lines with its origin, then `month,temperature_C,relative_humidity_pct` and twelve rows
 * from January to December.
 *
 * @param text - the table
 * @param name - the place's name in results, such as `de-bilt`
 * @returns the climate, or every problem of the table at once, ordered by line
 */
export function readClimate(text: string, name: string): Reading<OutdoorClimate> {
  const wholeProblem = checkWhole(text);
  if (wholeProblem !== null) return { ok: false, problems: [wholeProblem] };
  const lines = linesOf(text).filter((line) => line.text.trim() !== "");
  const header = readClimateHeader(lines.filter(isComment));
  const table = readClimateRows(lines.filter((line) => !isComment(line)));
  const problems = orderProblems([...header.problems, ...table.problems]);
  if (problems.length > 0) return { ok: false, problems };
  const value: OutdoorClimate = {
    name,
    origin: header.origin,
    latitude: header.latitude,
    longitude: header.longitude,
    altitude: header.altitude,
    temperature: table.rows.map((row) => row.temperature!),
    relativeHumidity: table.rows.map((row) => row.relativeHumidity!),
  };
  return { ok: true, value };
}

function isComment(line: { text: string }): boolean {
  return line.text.trimStart().startsWith("#");
}

function checkWhole(text: string): Problem | null {
  if (text.length > LONGEST_CLIMATE_TABLE) {
    const details = { characters: text.length, greatest: LONGEST_CLIMATE_TABLE };
    return climateProblem("climate-too-long", null, null, details);
  }
  if (looksBinary(text)) return climateProblem("climate-binary", null, null);
  if (text.replace(/^\uFEFF/, "").trim() === "") return climateProblem("climate-empty", null, null);
  return null;
}
