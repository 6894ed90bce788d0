import type { Problem } from "../problems/types.ts";
import type { TableRow } from "../tables/read-table.ts";
import { type CellReader, cellReader } from "../tables/table-cells.ts";
import { COLDEST_MONTH, GREATEST_HUMIDITY_PERCENT, LEAST_HUMIDITY_PERCENT, WARMEST_MONTH } from "./climate-limits.ts";
import { monthIndex } from "./month-column.ts";

/** One row of a climate table; values that could not be read are null. */
export interface ClimateRow {
  line: number;
  /** 0 for January. */
  month: number | null;
  /** [°C] */
  temperature: number | null;
  /** As a fraction [–]. */
  relativeHumidity: number | null;
}

/**
 * Reads one month of a climate table.
 *
 * @param row - line and cells
 * @param problems - where problems go
 * @returns the month, with null for values that could not be read
 */
export function readClimateRow(row: TableRow, problems: Problem[]): ClimateRow {
  const cells = cellReader(row, problems);
  return {
    line: row.line,
    month: readMonth(cells),
    temperature: readTemperature(cells),
    relativeHumidity: readHumidity(cells),
  };
}

function readMonth(cells: CellReader): number | null {
  const written = cells.text("month");
  const month = monthIndex(written ?? "");
  if (month === null) cells.refuse("climate-month-unknown", { column: "month" }, written);
  return month;
}

function readTemperature(cells: CellReader): number | null {
  const column = "temperature_C";
  const temperature = cells.number(column);
  if (temperature === null || (temperature >= COLDEST_MONTH && temperature <= WARMEST_MONTH)) return temperature;
  const range = { least: COLDEST_MONTH, greatest: WARMEST_MONTH };
  cells.refuse("climate-temperature-range", { column, ...range }, cells.text(column));
  return null;
}

function readHumidity(cells: CellReader): number | null {
  const column = "relative_humidity_pct";
  const percent = cells.number(column);
  if (percent === null) return null;
  if (percent > LEAST_HUMIDITY_PERCENT && percent <= GREATEST_HUMIDITY_PERCENT) return percent / 100;
  const range = { least: LEAST_HUMIDITY_PERCENT, greatest: GREATEST_HUMIDITY_PERCENT };
  if (percent > 0 && percent <= LEAST_HUMIDITY_PERCENT)
    cells.refuse("climate-humidity-fraction", { column, percent: percent * 100 }, cells.text(column));
  else cells.refuse("climate-humidity-range", { column, ...range }, cells.text(column));
  return null;
}
