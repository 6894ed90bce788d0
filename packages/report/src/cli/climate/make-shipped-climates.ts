import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  climateTable,
  type OutdoorClimate,
  problemInText,
  readClimate,
  readRecords,
  wordProblem,
} from "@warmside/core";
import { climateReadme } from "./climate-readme.ts";
import { SHIPPED_PLACES, type ShippedPlace } from "./shipped-places.ts";

/**
 * Makes every table of climate/, and its README, from a folder of weather records.
 *
 * @param recordsFolder - holds `daily-*.csv` and `hourly-*.csv`
 * @param climateFolder - where the tables go
 * @returns the files written
 * @throws Error when records are refused: then nothing is written
 */
export function makeShippedClimates(recordsFolder: string, climateFolder: string): string[] {
  const tables = SHIPPED_PLACES.map((place) => ({
    place,
    text: tableOf(place, readFileSync(join(recordsFolder, place.records), "utf8")),
  }));
  const climates = tables.map(({ place, text }) => climateOf(place, text));
  const files = tables.map(({ place, text }) => ({ file: join(climateFolder, `${place.name}.csv`), text }));
  files.push({ file: join(climateFolder, "README.md"), text: climateReadme(climates) });
  for (const { file, text } of files) writeFileSync(file, text);
  return files.map(({ file }) => file);
}

/**
 * The climate table of one shipped place.
 *
 * @param place - where the records were taken and whose they are
 * @param text - its weather records
 * @returns the table's text
 * @throws Error when the records are refused
 */
export function tableOf(place: ShippedPlace, text: string): string {
  const records = readRecords(text, { altitude: place.altitude });
  if (records.ok) return climateTable(records.value, place);
  throw new Error(
    `${place.records}: ${records.problems.map((problem) => problemInText(wordProblem(problem))).join("\n")}`,
  );
}

function climateOf(place: ShippedPlace, text: string): OutdoorClimate {
  const climate = readClimate(text, place.name);
  if (climate.ok) return climate.value;
  throw new Error(
    `${place.name}: ${climate.problems.map((problem) => problemInText(wordProblem(problem))).join("\n")}`,
  );
}
