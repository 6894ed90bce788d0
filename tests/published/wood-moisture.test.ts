import { describe, expect, test } from "vitest";
import { equilibriumMoisture } from "../../packages/core/src/further-checks/wood/equilibrium-moisture.ts";

describe("FPL Wood Handbook, table of equilibrium moisture content (from memory)", () => {
  // Printed to 0.1 %; the form is fitted to the table, so the tolerance is one unit of the last figure.
  test.each([
    [21.1, 0.2, 4.5],
    [21.1, 0.5, 9.2],
    [21.1, 0.65, 12.0],
    [21.1, 0.8, 16.0],
    [21.1, 0.9, 20.5],
    [21.1, 0.95, 23.9],
    [4.4, 0.5, 9.5],
    [4.4, 0.8, 16.5],
    [4.4, 0.9, 21.0],
  ])("%d °C at relative humidity %d: %d %%", (temperature, humidity, percent) => {
    expect(Math.abs(100 * equilibriumMoisture(temperature, humidity) - percent)).toBeLessThan(0.05);
  });
});

describe("worked in python from the two-hydrate form, four figures", () => {
  test.each([
    [10, 0.85, 18.36],
    [0, 0.9, 21.03],
    [20, 0.6, 11.0],
  ])("%d °C at relative humidity %d: %d %%", (temperature, humidity, percent) => {
    expect(100 * equilibriumMoisture(temperature, humidity)).toBeCloseTo(percent, 2);
  });
});

describe("limits of the form", () => {
  test("no water in dry air, more in damper air, about 29 % in saturated air", () => {
    expect(equilibriumMoisture(10, 0)).toBe(0);
    for (let percent = 1; percent <= 100; percent += 1) {
      expect(equilibriumMoisture(10, percent / 100)).toBeGreaterThan(equilibriumMoisture(10, (percent - 1) / 100));
    }
    expect(equilibriumMoisture(0, 1)).toBeCloseTo(0.2897, 4);
  });

  test("in frost the coldest line of the table counts, 30 °F", () => {
    expect(equilibriumMoisture(-20, 0.9)).toBe(equilibriumMoisture(-1.1, 0.9));
    expect(equilibriumMoisture(-1, 0.9)).not.toBe(equilibriumMoisture(-1.1, 0.9));
  });

  test.each([
    [Number.NaN, 0.5],
    [20, Number.NaN],
    [20, 1.01],
    [20, -0.01],
    [120, 0.5],
    [-120, 0.5],
  ])("%d °C at %d is refused", (temperature, humidity) => {
    expect(() => equilibriumMoisture(temperature, humidity)).toThrow(RangeError);
  });
});
