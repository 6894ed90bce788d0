import { orderProblems } from "../problems/order-problems.ts";
import type { Problem, Reading } from "../problems/types.ts";
import type { OutdoorClimate } from "../project/types.ts";
import { requireText } from "../require.ts";
import { readTable, type TableForm, type TableRow } from "../tables/read-table.ts";
import { tableProblem } from "../tables/table-problem.ts";
import { LONGEST_CLIMATE_TABLE, MOST_CLIMATE_ROWS } from "./climate-limits.ts";
import { checkMonths } from "./month-column.ts";
import { readClimateHeader } from "./read-climate-header.ts";
import { type ClimateRow, readClimateRow } from "./read-climate-row.ts";

/** The columns of a climate table, in the order in which they are written. */
export const CLIMATE_COLUMNS: TableForm = {
  what: "climate table",
  required: ["month", "temperature_C", "relative_humidity_pct"],
  optional: [],
};

/**
 * Reads a climate table: `#` lines with its origin, then `month,temperature_C,relative_humidity_pct` and twelve rows
 * from January to December.
 *
 * @param text - the table
 * @param name - the place's name in results, such as `de-bilt`
 * @returns the climate, or every problem of the table at once, ordered by line
 */
export function readClimate(text: string, name: string): Reading<OutdoorClimate> {
  requireText(text, "text");
  requireText(name, "name");
  if (text.length > LONGEST_CLIMATE_TABLE) return { ok: false, problems: [tooLong(text)] };
  const table = readTable(text, CLIMATE_COLUMNS);
  const header = readClimateHeader(table.comments);
  const months = readMonths(table.rows.slice(0, MOST_CLIMATE_ROWS));
  const surplus = table.rows[MOST_CLIMATE_ROWS];
  const whole =
    surplus !== undefined
      ? [tableProblem("climate-too-many-rows", surplus.line, null, { rows: table.rows.length })]
      : table.problems.length === 0
        ? checkMonths(months.rows)
        : [];
  const problems = orderProblems([...header.problems, ...table.problems, ...months.problems, ...whole]);
  if (problems.length > 0) return { ok: false, problems };
  const value: OutdoorClimate = {
    name,
    origin: header.origin,
    latitude: header.latitude,
    longitude: header.longitude,
    altitude: header.altitude,
    temperature: months.rows.map((row) => row.temperature!),
    relativeHumidity: months.rows.map((row) => row.relativeHumidity!),
  };
  return { ok: true, value };
}

function readMonths(tableRows: readonly TableRow[]): { rows: ClimateRow[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const rows = tableRows.map((row) => readClimateRow(row, problems));
  return { rows, problems: joinFractions(problems) };
}

/** Joins the problems of a column written in fractions: it is one slip, not twelve. */
function joinFractions(problems: readonly Problem[]): Problem[] {
  const [first, ...others] = problems.filter(({ code }) => code === "climate-humidity-fraction");
  if (first === undefined || others.length === 0) return [...problems];
  const joined = { ...first, details: { ...first.details, rows: others.length + 1 } };
  return problems.flatMap((problem) => (problem === first ? [joined] : others.includes(problem) ? [] : [problem]));
}

function tooLong(text: string): Problem {
  return tableProblem("climate-too-long", null, null, { characters: text.length, greatest: LONGEST_CLIMATE_TABLE });
}
