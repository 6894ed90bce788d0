import { describe, expect, test } from "vitest";
import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import type { AirMonths, Room } from "../../packages/core/src/project/types.ts";
import { humidityByOutdoors, temperatureRiseByOutdoors } from "../../packages/core/src/rooms/by-outdoor-temperature.ts";
import { vapourExcessOfClass } from "../../packages/core/src/rooms/humidity-class.ts";
import { vapourExcessOfBalance } from "../../packages/core/src/rooms/moisture-balance.ts";
import { roomMonths } from "../../packages/core/src/rooms/room-months.ts";

/** Twelve months, the first of them the given temperatures [°C], the rest repeating the last. */
const outdoors = (temperatures: readonly number[], humidity: number): AirMonths => {
  const temperature = Array.from({ length: 12 }, (_, month) => temperatures[Math.min(month, temperatures.length - 1)]!);
  return { temperature, vapourPressure: temperature.map((degrees) => vapourPressure(humidity, degrees)) };
};
const room: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "as outdoors" },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};

describe("ISO 13788:2012 Annex A, humidity classes (values from memory)", () => {
  test.each([
    [1, 270],
    [2, 540],
    [3, 810],
    [4, 1080],
    [5, 1360],
  ] as const)(
    "class %i has an excess of %i Pa at and below 0 °C, half of it at 10 °C, none from 20 °C",
    (number, excess) => {
      expect(vapourExcessOfClass(number, 0)).toBe(excess);
      expect(vapourExcessOfClass(number, -20)).toBe(excess);
      expect(vapourExcessOfClass(number, 10)).toBe(excess / 2);
      expect(vapourExcessOfClass(number, 20)).toBe(0);
      expect(vapourExcessOfClass(number, 28)).toBe(0);
    },
  );

  // Worked in python from E.7, E.8 and the classes; 80 % outdoors. Tolerance 0.05 Pa: the last printed figure.
  test.each([
    [2, [747.5, 1028.4, 1251.8, 1869.6]],
    [4, [1287.5, 1568.4, 1521.8, 1869.6]],
  ] as const)("class %i at −10, 0, 10 and 20 °C outdoors", (number, expected) => {
    const air = roomMonths({ ...room, humidity: { kind: "class", class: number } }, outdoors([-10, 0, 10, 20], 0.8), 1);
    expected.forEach((pressure, month) => {
      expect(Math.abs(air.vapourPressure[month]! - pressure)).toBeLessThan(0.05);
    });
  });
});

describe("EN 15026:2007 Annex C, by outdoor temperature (values from memory)", () => {
  // θe, θi, φi normal, pi normal, pi high: worked in python from the rule and E.7. Tolerance 0.01 Pa.
  const rows = [
    [-15, 20, 0.3, 701.085, 934.78],
    [-10, 20, 0.3, 701.085, 934.78],
    [5, 20, 0.45, 1051.628, 1285.323],
    [10, 20, 0.5, 1168.476, 1402.171],
    [15, 22.5, 0.55, 1498.207, 1770.608],
    [20, 25, 0.6, 1899.552, 2216.144],
    [24, 25, 0.6, 1899.552, 2216.144],
  ] as const;
  const outdoor = outdoors(
    rows.map(([temperature]) => temperature),
    0.5,
  );

  test.each(["normal", "high"] as const)("a room heated to 20 °C gives the rule exactly, %s use", (level) => {
    for (const temperature of [room.temperature, { kind: "by outdoor temperature" } as const]) {
      const air = roomMonths({ ...room, temperature, humidity: { kind: "by outdoor temperature", level } }, outdoor, 1);
      rows.forEach(([, indoor, , normal, high], month) => {
        expect(air.temperature[month]).toBeCloseTo(indoor, 12);
        expect(air.vapourPressure[month]).toBeCloseTo(level === "normal" ? normal : high, 2);
      });
    }
  });

  test.each(rows)(
    "at %d °C outdoors: %d °C and %d indoors, ten points more in high use",
    (outdoor, indoor, humidity) => {
      expect(20 + temperatureRiseByOutdoors(outdoor)).toBeCloseTo(indoor, 12);
      expect(humidityByOutdoors("normal", outdoor)).toBeCloseTo(humidity, 12);
      expect(humidityByOutdoors("high", outdoor)).toBeCloseTo(humidity + 0.1, 12);
    },
  );
});

describe("ISO 13788:2012 Annex A, moisture balance (from memory)", () => {
  test("6 kg a day into 90 m³ at 0.6 air changes an hour and 20 °C is 626.3 Pa (worked in python)", () => {
    const balance = { production: 6 / 86_400, volume: 90, airChanges: 0.6 / 3600 };
    expect(vapourExcessOfBalance(balance, 20)).toBeCloseTo(626.3367, 3);
  });
});
