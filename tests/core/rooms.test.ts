import { describe, expect, test } from "vitest";
import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import type { AirMonths, HumidityRule, Room, TemperatureRule } from "../../packages/core/src/project/types.ts";
import { vapourExcessOfClass } from "../../packages/core/src/rooms/humidity-class.ts";
import { impossibleMonths } from "../../packages/core/src/rooms/impossible-months.ts";
import { vapourExcessOfBalance } from "../../packages/core/src/rooms/moisture-balance.ts";
import { roomMonths } from "../../packages/core/src/rooms/room-months.ts";

const temperature = [-6, -2, 2, 6, 12, 17, 22, 27, 18, 11, 5, 0];
const outdoor: AirMonths = { temperature, vapourPressure: temperature.map((degrees) => vapourPressure(0.8, degrees)) };
const twelve = (value: number): number[] => Array<number>(12).fill(value);

const roomOf = (rule: TemperatureRule, humidity: HumidityRule, cooling: number | null = null): Room => ({
  name: "indoor",
  temperature: rule,
  cooling,
  humidity,
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
});
const heatedTo = (setPoint: number, daysPerWeek = 7, otherwise: number | null = null): TemperatureRule => ({
  kind: "heated",
  setPoint,
  daysPerWeek,
  otherwise,
});
const half: HumidityRule = { kind: "months", relativeHumidity: twelve(0.5) };
const classThree: HumidityRule = { kind: "class", class: 3 };
const asOutdoors: HumidityRule = { kind: "as outdoors" };

describe("temperature of a room", () => {
  test("heated: the set point, and outdoors in the months that are warmer", () => {
    const air = roomMonths(roomOf(heatedTo(20), half), outdoor, 1);
    expect(air.temperature).toEqual([20, 20, 20, 20, 20, 20, 22, 27, 20, 20, 20, 20]);
  });

  test("heated and cooled: never over the cap", () => {
    const air = roomMonths(roomOf(heatedTo(20), half, 24), outdoor, 1);
    expect(air.temperature).toEqual([20, 20, 20, 20, 20, 20, 22, 24, 20, 20, 20, 20]);
  });

  test("held: its twelve values whatever the weather, the cap above them", () => {
    const months = [16, 16, 17, 18, 19, 20, 21, 21, 20, 18, 17, 16];
    expect(roomMonths(roomOf({ kind: "held", months }, half), outdoor, 1).temperature).toEqual(months);
    expect(roomMonths(roomOf({ kind: "held", months }, half, 20), outdoor, 1).temperature[6]).toBe(20);
  });

  test("unheated: outdoors in temperature and vapour, and the cap above it", () => {
    const air = roomMonths(roomOf({ kind: "unheated" }, asOutdoors), outdoor, 1);
    expect(air).toEqual(outdoor);
    expect(roomMonths(roomOf({ kind: "unheated" }, asOutdoors, 25), outdoor, 1).temperature[7]).toBe(25);
  });

  test("with humidity by outdoor temperature a set point rises by up to 5 K, held temperatures stand", () => {
    const byOutdoors: HumidityRule = { kind: "by outdoor temperature", level: "normal" };
    const air = roomMonths(roomOf(heatedTo(18), byOutdoors), outdoor, 1);
    expect(air.temperature).toEqual([18, 18, 18, 18, 19, 21.5, 23, 27, 22, 18.5, 18, 18]);
    const held = roomMonths(roomOf({ kind: "held", months: twelve(21) }, byOutdoors), outdoor, 1);
    expect(held.temperature).toEqual(twelve(21));
    expect(held.vapourPressure[0]).toBeCloseTo(0.34 * saturationPressure(21), 9);
  });
});

describe("vapour pressure of a room", () => {
  test("a class adds its excess to outdoors, times the margin", () => {
    const air = roomMonths(roomOf(heatedTo(20), classThree), outdoor, 1.1);
    air.vapourPressure.forEach((pressure, month) => {
      const excess = vapourExcessOfClass(3, temperature[month]!);
      expect(pressure).toBeCloseTo(outdoor.vapourPressure[month]! + 1.1 * excess, 9);
    });
    expect(air.vapourPressure[7]).toBe(outdoor.vapourPressure[7]);
  });

  test("a class keeps its excess when the room is cooled", () => {
    const cooled = roomMonths(roomOf(heatedTo(20), classThree, 10), outdoor, 1);
    expect(cooled.vapourPressure).toEqual(roomMonths(roomOf(heatedTo(20), classThree), outdoor, 1).vapourPressure);
    expect(cooled.temperature).toEqual(twelve(10));
  });

  test("twelve relative humidities are of the room's own temperature", () => {
    const relativeHumidity = Array.from({ length: 12 }, (_, month) => 0.4 + month / 100);
    const air = roomMonths(roomOf(heatedTo(20), { kind: "months", relativeHumidity }), outdoor, 1.1);
    expect(air.vapourPressure[0]).toBeCloseTo(0.4 * saturationPressure(20), 9);
    expect(air.vapourPressure[7]).toBeCloseTo(0.47 * saturationPressure(27), 9);
  });

  test("a moisture balance adds its excess at the room's temperature, without the margin", () => {
    const balance = { production: 1e-5, volume: 60, airChanges: 1.5e-4 };
    const air = roomMonths(roomOf(heatedTo(20), { kind: "balance", ...balance }), outdoor, 1.1);
    expect(air.vapourPressure[0]! - outdoor.vapourPressure[0]!).toBeCloseTo(vapourExcessOfBalance(balance, 20), 9);
    expect(air.vapourPressure[7]! - outdoor.vapourPressure[7]!).toBeCloseTo(vapourExcessOfBalance(balance, 27), 9);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a margin of %d is refused", (margin) => {
    expect(() => roomMonths(roomOf(heatedTo(20), classThree), outdoor, margin)).toThrow(/margin/);
  });

  test.each([
    { production: -1, volume: 60, airChanges: 1e-4 },
    { production: 1e-5, volume: 0, airChanges: 1e-4 },
    { production: 1e-5, volume: 60, airChanges: 0 },
    { production: Number.NaN, volume: 60, airChanges: 1e-4 },
  ])("a balance of %o is refused", (balance) => {
    expect(() => vapourExcessOfBalance(balance, 20)).toThrow(RangeError);
  });
});

describe("a room heated some days a week", () => {
  // θe 2 °C 90 %, 3 days at 18 °C, otherwise 8 °C: worked in python as n/7 of the heated and 1 − n/7 of the other days.
  const cold: AirMonths = { temperature: twelve(2), vapourPressure: twelve(vapourPressure(0.9, 2)) };

  test("has the mean temperature and the mean vapour excess of its days", () => {
    const air = roomMonths(roomOf(heatedTo(18, 3, 8), { kind: "class", class: 4 }), cold, 1);
    expect(air.temperature[0]).toBeCloseTo(12.285714, 6);
    expect(air.vapourPressure[0]).toBeCloseTo(1051.3315, 3);
    const humid = roomMonths(roomOf(heatedTo(18, 3, 8), { kind: "months", relativeHumidity: twelve(0.55) }), cold, 1);
    expect(humid.vapourPressure[0]).toBeCloseTo(848.9585, 3);
  });

  test("seven days are every day, and none are outdoors", () => {
    expect(roomMonths(roomOf(heatedTo(18, 7, 8), classThree), cold, 1)).toEqual(
      roomMonths(roomOf(heatedTo(18), classThree), cold, 1),
    );
    const never = roomMonths(roomOf(heatedTo(18, 0), classThree), cold, 1);
    expect(never).toEqual(cold);
  });

  test("without a floor the other days are as outdoors, and a floor never cools", () => {
    expect(roomMonths(roomOf(heatedTo(16, 3.5), asOutdoors), cold, 1).temperature[0]).toBe(9);
    expect(roomMonths(roomOf(heatedTo(16, 3.5, -5), asOutdoors), cold, 1).temperature[0]).toBe(9);
  });

  test("a cooling cap counts on every day", () => {
    const hot: AirMonths = { temperature: twelve(30), vapourPressure: twelve(1000) };
    expect(roomMonths(roomOf(heatedTo(20, 3), asOutdoors, 25), hot, 1).temperature[0]).toBe(25);
  });

  test.each([8, -1, Number.NaN])("%d days are refused", (days) => {
    expect(() => roomMonths(roomOf(heatedTo(18, days), classThree), cold, 1)).toThrow(/days a week/);
  });
});

describe("a room that cannot exist", () => {
  test("class 3 at 80 % outdoors in a room of 8 °C is over saturation in the cold months", () => {
    const room = roomOf({ kind: "held", months: twelve(8) }, classThree);
    const months = impossibleMonths(room, outdoor, 1);
    expect(months.map(({ month }) => month)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(months[2]!.saturation).toBeCloseTo(saturationPressure(8), 9);
    expect(months[2]!.vapourPressure).toBeCloseTo(outdoor.vapourPressure[2]! + 0.9 * 810, 9);
    expect(impossibleMonths(roomOf(heatedTo(20), classThree), outdoor, 1)).toEqual([]);
  });

  test("cooling below the outdoor dew point is told for the months that it cools", () => {
    expect(impossibleMonths(roomOf(heatedTo(16), asOutdoors, 18), outdoor, 1).map(({ month }) => month)).toEqual([
      6, 7,
    ]);
  });

  test("saturation itself is possible, a part in a million over it is not", () => {
    const saturated: AirMonths = { temperature: twelve(10), vapourPressure: twelve(saturationPressure(10)) };
    expect(impossibleMonths(roomOf({ kind: "unheated" }, asOutdoors), saturated, 1)).toEqual([]);
    const over: AirMonths = { ...saturated, vapourPressure: twelve(saturationPressure(10) * (1 + 1e-6)) };
    expect(impossibleMonths(roomOf({ kind: "unheated" }, asOutdoors), over, 1)).toHaveLength(12);
  });

  test("the heated days of a week are looked at by themselves", () => {
    const dry: AirMonths = { temperature: twelve(2), vapourPressure: twelve(100) };
    const room = roomOf(heatedTo(6, 2, 20), { kind: "class", class: 5 });
    const air = roomMonths(room, dry, 1);
    expect(air.vapourPressure[0]!).toBeLessThan(saturationPressure(air.temperature[0]!));
    expect(impossibleMonths(room, dry, 1)[0]).toEqual({
      month: 0,
      vapourPressure: 100 + 0.9 * 1360,
      saturation: saturationPressure(6),
    });
  });
});
