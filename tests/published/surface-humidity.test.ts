import { describe, expect, it, test } from "vitest";
import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import {
  CRITICAL_SURFACE_HUMIDITY,
  requiredTemperatureFactor,
  temperatureFactor,
} from "../../packages/core/src/heat/temperature-factor.ts";
import { vapourExcessOfClass } from "../../packages/core/src/rooms/humidity-class.ts";

describe("worked: temperature factor asked of the surface (ISO 13788:2012 clause 5; four figures)", () => {
  const roomOfClass = (humidityClass: 2 | 3, outdoors: number, humidity: number) => ({
    temperature: 20,
    vapourPressure: vapourPressure(humidity, outdoors) + vapourExcessOfClass(humidityClass, outdoors),
  });
  const studio = roomOfClass(3, 5.8, 0.85);

  test.each([
    ["mould", 0.8, 0.6439],
    ["condensation", 1, 0.4032],
    ["corrosion", 0.6, 0.9642],
  ] as const)("20 °C, outdoors 5.8 °C 85 %, class 3, against %s (φ %d): %d", (risk, critical, expected) => {
    expect(CRITICAL_SURFACE_HUMIDITY[risk]).toBe(critical);
    expect(requiredTemperatureFactor(studio, 5.8, critical)).toBeCloseTo(expected, 4);
  });

  it("20 °C, outdoors −5 °C 80 %, class 2, against mould: 0.5222", () => {
    expect(requiredTemperatureFactor(roomOfClass(2, -5, 0.8), -5, 0.8)).toBeCloseTo(0.5222, 4);
  });

  it("the surface it asks for is exactly at the critical humidity", () => {
    const factor = requiredTemperatureFactor(studio, 5.8, 0.8)!;
    const surface = 5.8 + factor * (20 - 5.8);
    expect(studio.vapourPressure / saturationPressure(surface)).toBeCloseTo(0.8, 12);
  });
});

describe("limits of the factor asked for", () => {
  it("a difference under 3 K asks nothing: null; 3 K counts", () => {
    expect(requiredTemperatureFactor({ temperature: 20, vapourPressure: 1400 }, 17.001, 0.8)).toBeNull();
    expect(requiredTemperatureFactor({ temperature: 20, vapourPressure: 1400 }, 17, 0.8)).not.toBeNull();
    expect(requiredTemperatureFactor({ temperature: Number.NaN, vapourPressure: 1400 }, 5, 0.8)).toBeNull();
  });

  it("a dry room asks for no more than 0", () => {
    expect(requiredTemperatureFactor({ temperature: 20, vapourPressure: 300 }, 5, 1)).toBe(0);
  });

  it("a room over 80 % asks for more than 1: no construction meets it", () => {
    expect(requiredTemperatureFactor({ temperature: 20, vapourPressure: 2000 }, 5, 0.8)).toBeGreaterThan(1);
  });
});

describe("limits of the factor a build-up has (Rsi 0.25)", () => {
  it("nothing between the surfaces: Rse/(Rsi + Rse)", () => {
    expect(temperatureFactor(0, 0.04)).toBeCloseTo(0.04 / 0.29, 12);
  });

  it("without end: 1", () => {
    expect(temperatureFactor(1e12, 0.04)).toBeCloseTo(1, 10);
  });
});
