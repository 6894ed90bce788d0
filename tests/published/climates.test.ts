import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { climateMonths } from "../../packages/core/src/climate/climate-months.ts";
import { readClimate } from "../../packages/core/src/climate/read-climate.ts";
import type { OutdoorClimate } from "../../packages/core/src/project/types.ts";
import { climateReadme } from "../../packages/report/src/cli/climate/climate-readme.ts";
import { SHIPPED_PLACES } from "../../packages/report/src/cli/climate/shipped-places.ts";

const folder = join(import.meta.dirname, "../../climate");
const textOf = (name: string): string => readFileSync(join(folder, `${name}.csv`), "utf8");
const climateOf = (name: string): OutdoorClimate => {
  const reading = readClimate(textOf(name), name);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value;
};

const NAMES = [
  "albuquerque-new-mexico",
  "basel",
  "budapest",
  "de-bilt",
  "dresden",
  "dusseldorf",
  "greensboro-north-carolina",
  "heathrow",
  "kassel",
  "ljubljana",
  "maastricht",
  "melbourne-florida",
  "montelimar",
  "munich",
  "oslo",
  "perpignan",
  "rome",
  "sand-point-alaska",
  "tours",
];

describe("printed monthly means (worked from the same open records by a separate route, python; half of the last figure)", () => {
  test.each([
    ["heathrow", "January", 0, 5.8, 85],
    ["heathrow", "July", 6, 18.7, 69],
    ["melbourne-florida", "August", 7, 26.9, 81],
  ])("%s, %s: %d °C and %d %%", (name, _, month, temperature, humidity) => {
    const climate = climateOf(name);
    expect(Math.abs(climate.temperature[month as number]! - (temperature as number))).toBeLessThanOrEqual(0.05);
    expect(Math.abs(climate.relativeHumidity[month as number]! * 100 - (humidity as number))).toBeLessThanOrEqual(0.5);
  });
});

describe("climatological normals 1991 to 2020 of the national weather services (from memory)", () => {
  // Another, longer period than the records' ten years: within 1 K in a month, which tells one station from another.
  test.each([
    ["de-bilt", 3.6, 18.3],
    ["heathrow", 5.7, 19.0],
    ["oslo", -2.3, 17.7],
    ["munich", 0.3, 19.4],
    ["budapest", 0.3, 22.2],
  ])("%s: January %d °C, July %d °C", (name, january, july) => {
    const climate = climateOf(name);
    expect(Math.abs(climate.temperature[0]! - january)).toBeLessThan(1);
    expect(Math.abs(climate.temperature[6]! - july)).toBeLessThan(1);
  });
});

describe("shipped climates", () => {
  test("are the nineteen places of the records, and nothing else stands at the folder's top", () => {
    expect(readdirSync(folder).sort()).toEqual(["README.md", ...NAMES.map((name) => `${name}.csv`)].sort());
    expect(SHIPPED_PLACES.map(({ name }) => name).sort()).toEqual(NAMES);
  });

  test.each(NAMES)("%s can be read, and tells place, position, period, readings, origin and terms", (name) => {
    const climate = climateOf(name);
    const place = SHIPPED_PLACES.find((shipped) => shipped.name === name)!;
    const { latitude, longitude, altitude } = place;
    expect(climate).toMatchObject({ latitude, longitude, altitude });
    const labels = climate.origin.map((line) => line.split(":")[0]);
    const told = [
      "place",
      "country",
      "latitude",
      "longitude",
      "altitude",
      "period",
      "columns",
      "records",
      "means",
      "origin",
      "terms",
    ];
    expect(labels).toEqual(place.acknowledgement === null ? told : [...told, "acknowledgement"]);
  });

  test.each(NAMES)("%s is a northern year: coldest from December to February, warmest from June to August", (name) => {
    const { temperature } = climateOf(name);
    expect([11, 0, 1]).toContain(temperature.indexOf(Math.min(...temperature)));
    expect([5, 6, 7]).toContain(temperature.indexOf(Math.max(...temperature)));
  });

  test.each(NAMES)("%s holds more vapour in its warmest month than in its coldest", (name) => {
    const { temperature, vapourPressure } = climateMonths(climateOf(name));
    const coldest = temperature.indexOf(Math.min(...temperature));
    const warmest = temperature.indexOf(Math.max(...temperature));
    expect(vapourPressure[warmest]!).toBeGreaterThan(1.2 * vapourPressure[coldest]!);
  });

  test("temperatures are to 0.01 K and relative humidities to 0.1 points", () => {
    for (const name of NAMES) {
      const rows = textOf(name).trim().split("\n").slice(-12);
      for (const row of rows) expect(row).toMatch(/^[A-Z][a-z]+,-?\d{1,2}\.\d{2},\d{2,3}\.\d$/);
    }
  });

  test("the README is the one that the project makes from the tables", () => {
    const climates = SHIPPED_PLACES.map(({ name }) => climateOf(name));
    expect(readFileSync(join(folder, "README.md"), "utf8")).toBe(climateReadme(climates));
  });
});
