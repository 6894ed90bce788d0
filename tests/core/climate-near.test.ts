import { describe, expect, test } from "vitest";
import { readAltitude, readDegrees } from "../../packages/core/src/climate/degrees.ts";
import { distanceBetween, nearestClimates } from "../../packages/core/src/climate/nearest-climates.ts";
import type { OutdoorClimate } from "../../packages/core/src/project/types.ts";
import { columnOfCell } from "../../packages/core/src/tables/column-of-cell.ts";

const at = (
  name: string,
  latitude: number | null,
  longitude: number | null,
  altitude: number | null,
): OutdoorClimate => ({
  name,
  origin: [],
  latitude,
  longitude,
  altitude,
  temperature: Array<number>(12).fill(10),
  relativeHumidity: Array<number>(12).fill(0.8),
});

describe("distance on a round Earth of mean radius 6371.009 km", () => {
  test("closed cases: nothing, a quarter of a great circle, half of one, a degree of latitude", () => {
    const quarter = (Math.PI / 2) * 6_371_009;
    expect(distanceBetween(52, 5, 52, 5)).toBe(0);
    expect(distanceBetween(0, 0, 0, 90)).toBeCloseTo(quarter, 3);
    expect(distanceBetween(90, 0, 0, 47)).toBeCloseTo(quarter, 3);
    expect(distanceBetween(0, 0, 0, 180)).toBeCloseTo(2 * quarter, 3);
    expect(distanceBetween(89, 0, 89, 180)).toBeCloseTo(quarter / 45, 3);
  });

  test("the shorter way over the date line", () => {
    expect(distanceBetween(0, 179, 0, -179)).toBeCloseTo(distanceBetween(0, 1, 0, -1), 6);
  });

  test("Heathrow to De Bilt is 393 km, worked in python by the spherical law of cosines", () => {
    expect(Math.round(distanceBetween(51.479, -0.449, 52.1, 5.18) / 1000)).toBe(393);
  });

  test.each([
    [91, 0],
    [0, 181],
    [Number.NaN, 0],
    [0, Number.POSITIVE_INFINITY],
  ])("%d, %d is no place", (latitude, longitude) => {
    expect(() => distanceBetween(latitude, longitude, 0, 0)).toThrow(RangeError);
    expect(() => distanceBetween(0, 0, latitude, longitude)).toThrow(RangeError);
  });
});

describe("the nearest climates", () => {
  const climates = [
    at("far", 60, 10, 0),
    at("unknown", null, null, 0),
    at("near", 52, 5, 10),
    at("high", 52.1, 5, null),
  ];

  test("come nearest first, without those whose position is not told", () => {
    const near = nearestClimates(climates, { latitude: 52, longitude: 5, altitude: 400 });
    expect(near.map(({ climate }) => climate.name)).toEqual(["near", "high", "far"]);
    expect(near[0]).toMatchObject({ distance: 0, heightOverStation: 390, far: false, otherHeight: true });
    expect(near[1]).toMatchObject({ heightOverStation: null, otherHeight: false });
    expect(near[2]).toMatchObject({ far: true, heightOverStation: 400 });
  });

  test("a caution begins over 100 km and over 300 m, either way", () => {
    const degree = distanceBetween(0, 0, 1, 0);
    const site = (metres: number, altitude: number) => ({ latitude: metres / degree, longitude: 0, altitude });
    const station = [at("station", 0, 0, 300)];
    expect(nearestClimates(station, site(99_900, 600))[0]).toMatchObject({ far: false, otherHeight: false });
    expect(nearestClimates(station, site(100_100, 601))[0]).toMatchObject({ far: true, otherHeight: true });
    expect(nearestClimates(station, site(0, 0))[0]).toMatchObject({ otherHeight: false });
    expect(nearestClimates(station, site(0, -1))[0]).toMatchObject({ otherHeight: true });
    expect(nearestClimates(station, { latitude: 0, longitude: 0, altitude: null })[0]).toMatchObject({
      otherHeight: false,
    });
  });
});

describe("degrees and heights as they are written", () => {
  test.each([
    ["52.1", "latitude", 52.1],
    ["-33.9", "latitude", -33.9],
    ["−33.9", "latitude", -33.9],
    ["33.9 S", "latitude", -33.9],
    ["33.9° s", "latitude", -33.9],
    ["0.449W", "longitude", -0.449],
    ["160.517 E", "longitude", 160.517],
    ["90", "latitude", 90],
    ["-180", "longitude", -180],
    ["90.1", "latitude", null],
    ["180.1", "longitude", null],
    ["-33.9 S", "latitude", null],
    ["+33.9 N", "latitude", null],
    ["33.9 E", "latitude", null],
    ["52,1", "latitude", null],
    ["52°6'", "latitude", null],
    ["", "latitude", null],
    ["N", "latitude", null],
  ] as const)("“%s” as a %s is %s", (text, axis, degrees) => {
    expect(readDegrees(text, axis)).toBe(degrees);
  });

  test.each([
    ["25", 25],
    ["25 m", 25],
    ["-3.5m", -3.5],
    ["9000", 9000],
    ["9001", null],
    ["-501", null],
    ["82 ft", null],
    ["", null],
  ])("“%s” is %s m", (text, metres) => {
    expect(readAltitude(text)).toBe(metres);
  });
});

describe("where a cell begins", () => {
  test.each([
    ["May,13.8,74.2", 0, 1],
    ["May,13.8,74.2", 1, 5],
    ["May,  13.8,74.2", 1, 7],
    ['May,"13,8",74.2', 2, 12],
    ["May,13.8", 2, 5],
  ])("%s, cell %i", (line, cell, column) => {
    expect(columnOfCell(line, cell)).toBe(column);
  });
});
