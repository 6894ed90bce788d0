import { formatNumber, type OutdoorClimate } from "@warmside/core";
import { json } from "../answers/json.ts";
import { type CommandResult, done } from "../command-result.ts";
import { line } from "../lines.ts";
import { SPARKLINE_TEMPERATURES } from "./climate-readme.ts";
import { sparkline } from "./sparkline.ts";
import { type MonthInShort, yearInShort } from "./year-in-short.ts";

/**
 * `warmside climate list`: every climate with its coldest and warmest month and its annual mean.
 *
 * @param climates - the shipped climates
 * @param asJson - as data instead of a table
 * @returns one line a place on standard output
 */
export function climateList(climates: readonly OutdoorClimate[], asJson: boolean): CommandResult {
  if (asJson) return done(json({ climates: climates.map(asData) }));
  const longest = Math.max(...climates.map(({ name }) => name.length));
  const head = `${"name".padEnd(longest)}  ${"coldest".padEnd(MONTH_WIDTH)}  ${"warmest".padEnd(MONTH_WIDTH)}  year °C  January to December`;
  return done([head, ...climates.map((climate) => rowFor(climate, longest))].map((row) => line(row)));
}

/** `Feb  −1.9` */
const MONTH_WIDTH = 9;
const YEAR_WIDTH = 7;
const FIGURE_WIDTH = 6;

function rowFor(climate: OutdoorClimate, longest: number): string {
  const { coldest, warmest, mean } = yearInShort(climate);
  const bars = sparkline(climate.temperature, SPARKLINE_TEMPERATURES.least, SPARKLINE_TEMPERATURES.greatest);
  const figures = [inShort(coldest), inShort(warmest), figure(mean).padStart(YEAR_WIDTH)];
  return [climate.name.padEnd(longest), ...figures, bars].join("  ");
}

function inShort({ month, temperature }: MonthInShort): string {
  return month.slice(0, 3) + figure(temperature).padStart(FIGURE_WIDTH);
}

function figure(degrees: number): string {
  return formatNumber(degrees, 1);
}

function asData(climate: OutdoorClimate): object {
  const { name, latitude, longitude, altitude } = climate;
  const { coldest, warmest, mean } = yearInShort(climate);
  return { name, latitude, longitude, altitude, coldest, warmest, annualMean: mean };
}
