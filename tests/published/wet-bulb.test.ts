import psychrolib from "psychrolib";
import { describe, expect, test } from "vitest";
import { airPressureAt, vapourPressureFromWetBulb } from "../../packages/core/src/records/wet-bulb.ts";

psychrolib.SetUnitSystem(psychrolib.SI);

describe("wet bulb, against the registry library psychrolib 1.1.1 (ASHRAE formulation)", () => {
  // Another psychrometer equation: within 2 % of saturation at the air's temperature, which is 2 points of RH.
  test.each([
    [20, 15, 0],
    [20, 19.5, 0],
    [30, 18, 100],
    [10, 6, 500],
    [2, 0.5, 0],
    [35, 24, 1600],
    [-2, -3.5, 0],
    [-8, -9, 300],
  ])("%d °C, wet bulb %d °C, at %d m", (temperature, wetBulb, altitude) => {
    const pressure = airPressureAt(altitude);
    const ratio = psychrolib.GetHumRatioFromTWetBulb(temperature, wetBulb, pressure);
    const reference = psychrolib.GetVapPresFromHumRatio(ratio, pressure);
    const saturation = psychrolib.GetSatVapPres(temperature);
    expect(Math.abs(vapourPressureFromWetBulb(temperature, wetBulb, pressure) - reference) / saturation).toBeLessThan(
      0.02,
    );
  });

  test("a wet bulb at the air's own temperature is saturation", () => {
    expect(vapourPressureFromWetBulb(20, 20, 101_325)).toBeCloseTo(2336.95, 1);
  });

  test.each([0, 500, 1619, 3000])("air pressure at %d m (ISO 2533 standard atmosphere), within 0.05 %%", (altitude) => {
    expect(Math.abs(airPressureAt(altitude) / psychrolib.GetStandardAtmPressure(altitude) - 1)).toBeLessThan(0.0005);
  });

  test("what cannot be is refused", () => {
    expect(() => vapourPressureFromWetBulb(20, 15, 0)).toThrow(RangeError);
    expect(() => vapourPressureFromWetBulb(20, 15, Number.NaN)).toThrow(RangeError);
    expect(() => airPressureAt(20_000)).toThrow(RangeError);
  });
});
