import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  saturationPressureOverIce,
  saturationPressureOverWater,
} from "../../packages/core/src/air/saturation-pressure.ts";
import { climateMonths } from "../../packages/core/src/climate/climate-months.ts";
import { readClimate } from "../../packages/core/src/climate/read-climate.ts";
import { climateTable, type RecordsPlace } from "../../packages/core/src/records/climate-table.ts";
import { readRecords } from "../../packages/core/src/records/record-reader.ts";
import type { RecordMonths } from "../../packages/core/src/records/types.ts";
import { EVERY_HOUR, isoRecords, MADE_UP_HUMIDITY, madeUpReadings, temperatureOf } from "./record-years.ts";

const excerpt = (name: string): string => readFileSync(join(import.meta.dirname, "excerpts", name), "utf8");
const place: RecordsPlace = {
  place: "Oslo Blindern",
  country: "Norway",
  latitude: 59.943,
  longitude: 10.721,
  altitude: 94,
  origin: "an\nexcerpt",
  terms: null,
  acknowledgement: null,
};

function monthsOf(text: string): RecordMonths {
  const reading = readRecords(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value;
}

describe("Oslo 2001 and 2002, daily, against python (excerpts/means-by-hand.py)", () => {
  const records = monthsOf(excerpt("oslo-2001-2002.csv"));
  const expected = excerpt("oslo-2001-2002-means.csv")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(",").map(Number));

  test.each(expected)(
    "month %i: %i readings, %d °C, %d Pa, %d %%",
    (month, readings, temperature, pressure, humidity) => {
      const made = records.months[month! - 1]!;
      expect(made.used).toBe(readings);
      expect(made.expected).toBe(readings);
      // To 0.01 K as tables hold it; humidity is of that rounded temperature, which moves it by up to 0.05 points.
      expect(Math.abs(made.temperature - temperature!)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(made.vapourPressure).toBeCloseTo(pressure!, 2);
      expect(Math.abs(made.relativeHumidity * 100 - humidity!)).toBeLessThan(0.05);
    },
  );

  test("the table made from them gives the mean vapour pressure back, to the figures that it holds", () => {
    const table = readClimate(climateTable(records, place), "oslo");
    expect(table.ok).toBe(true);
    const pressures = table.ok ? climateMonths(table.value).vapourPressure : [];
    expected.forEach(([, , , pressure], month) => {
      // Relative humidity to 0.1 points: at worst 0.05 in 60.
      expect(Math.abs(pressures[month]! / pressure! - 1)).toBeLessThan(0.001);
    });
  });

  test("mean relative humidity is another number: the mean of the readings' own would be off by up to a point and more", () => {
    const rows = excerpt("oslo-2001-2002.csv")
      .trim()
      .split("\n")
      .slice(1)
      .map((row) => row.split(","));
    const january = rows.filter(([date]) => date!.slice(5, 7) === "01").map((row) => Number(row[2]));
    const plainMean = january.reduce((sum, value) => sum + value, 0) / january.length;
    expect(Math.abs(records.months[0]!.relativeHumidity * 100 - plainMean)).toBeGreaterThan(1);
  });
});

describe("the table", () => {
  test("tells the place, the period, the readings used and missing and the source, then twelve months", () => {
    const text = climateTable(monthsOf(excerpt("oslo-2001-2002.csv")), place);
    const lines = text.split("\n");
    expect(lines.slice(0, 12)).toEqual([
      "# place: Oslo Blindern",
      "# country: Norway",
      "# latitude: 59.943",
      "# longitude: 10.721",
      "# altitude: 94 m",
      "# period: 2001-01-01 to 2002-12-31, a reading every day",
      "# columns: temperature from “temperature_C” [°C], relative humidity from “relative_humidity_pct” [%]",
      "# records: 730 rows, 730 readings used, 0 missing (0.0 %)",
      "# means: temperature of the readings; relative humidity is their mean vapour pressure over saturation at that mean",
      "# origin: an excerpt",
      "month,temperature_C,relative_humidity_pct",
      "January,-2.80,93.1",
    ]);
    expect(lines).toHaveLength(24);
    const reading = readClimate(text, "oslo");
    expect(reading.ok && [reading.value.latitude, reading.value.longitude, reading.value.altitude]).toEqual([
      59.943, 10.721, 94,
    ]);
  });

  test("a month of −0.001 °C is written as 0.00, without a sign", () => {
    const text = isoRecords(madeUpReadings([2001]).map((reading) => ({ ...reading, temperature: -0.001 })));
    expect(climateTable(monthsOf(text), place)).toContain("\nJanuary,0.00,80.0\n");
  });
});

describe("means", () => {
  test("equal readings are their own mean, hourly and daily", () => {
    for (const hours of [[0], EVERY_HOUR]) {
      const records = monthsOf(isoRecords(madeUpReadings([2001], hours)));
      records.months.forEach((month, index) => {
        expect(month.temperature).toBe(temperatureOf(index + 1));
        expect(month.relativeHumidity).toBeCloseTo(MADE_UP_HUMIDITY / 100, 12);
        expect(month.vapourPressure).toBeCloseTo(0.8 * saturationPressureOverWater(temperatureOf(index + 1)), 8);
      });
    }
  });

  test("vapour pressures are averaged, not relative humidities: half 0 °C 100 %, half 20 °C 50 %", () => {
    const readings = madeUpReadings([2001], [0, 12]).map((reading) =>
      reading.hour === 0
        ? { ...reading, temperature: 0, humidity: 100 }
        : { ...reading, temperature: 20, humidity: 50 },
    );
    const [january] = monthsOf(isoRecords(readings)).months;
    // (610.5 + 0.5 · 2336.95) / 2 = 889.49 Pa over psat(10 °C) = 1227.31 Pa, by hand.
    expect(january!.temperature).toBe(10);
    expect(january!.vapourPressure).toBeCloseTo(889.488, 2);
    expect(january!.relativeHumidity).toBeCloseTo(0.724746, 5);
  });

  test("readings in frost are over liquid water; the month is over ice and held at saturation, which is told", () => {
    const readings = madeUpReadings([2001]).map((reading) => ({ ...reading, temperature: -20, humidity: 95 }));
    const records = monthsOf(isoRecords(readings));
    const [january] = records.months;
    expect(january!.vapourPressure).toBeCloseTo(0.95 * saturationPressureOverWater(-20), 9);
    expect(january!.vapourPressure).toBeGreaterThan(saturationPressureOverIce(-20));
    expect(january!.relativeHumidity).toBe(1);
    expect(january!.heldAtSaturation).toBe(true);
    expect(climateTable(records, place)).toContain("# held at 100 %: January, February, March");
  });

  test("every reading counts alike over the years", () => {
    const warm = madeUpReadings([2001]);
    const cold = madeUpReadings([2002]).map((reading) => ({ ...reading, temperature: reading.temperature - 3 }));
    const records = monthsOf(isoRecords([...warm, ...cold]));
    expect(records.months[0]!.temperature).toBe(3.5);
    expect(records.months[0]!.used).toBe(62);
    expect(records).toMatchObject({
      firstDay: "2001-01-01",
      lastDay: "2002-12-31",
      interval: 86_400,
      typicalYear: false,
    });
  });
});
