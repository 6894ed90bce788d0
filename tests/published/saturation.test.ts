import psychrolib from "psychrolib";
import { describe, expect, it, test } from "vitest";
import { dewPoint } from "../../packages/core/src/air/dew-point.ts";
import { humidityByVolume, relativeHumidity, vapourPressure } from "../../packages/core/src/air/humidity.ts";
import {
  saturationPressure,
  saturationPressureOverIce,
  saturationPressureOverWater,
} from "../../packages/core/src/air/saturation-pressure.ts";
import { printedNumbers } from "./printed-table.ts";

const table = printedNumbers("saturation-pressure", "temperature_C", "saturation_pressure_Pa");

describe("ISO 13788:2012 E.7 and E.8, saturation pressure [Pa]; tolerance: half a unit of the fourth figure", () => {
  test.each(table.filter(({ temperature_C }) => temperature_C !== 30))(
    "$temperature_C °C: $saturation_pressure_Pa Pa",
    ({ temperature_C, saturation_pressure_Pa }) => {
      const lastFigure = saturation_pressure_Pa >= 1000 ? 1 : 0.1;
      expect(Math.abs(saturationPressure(temperature_C) - saturation_pressure_Pa)).toBeLessThanOrEqual(lastFigure / 2);
    },
  );

  it("30 °C: the value handed down is 4240 Pa, the equation gives 4240.505, which rounds to 4241", () => {
    // 610.5·exp(17.269·30/267.3) = 610.5·exp(1.938159); held to the equation, and to the table's value within one unit.
    expect(saturationPressure(30)).toBeCloseTo(4240.505, 3);
    expect(
      Math.abs(saturationPressure(30) - table.find((row) => row.temperature_C === 30)!.saturation_pressure_Pa),
    ).toBeLessThan(1);
  });

  test.each(table)("and back: the dew point of $saturation_pressure_Pa Pa is $temperature_C °C", (row) => {
    // A half unit of the fourth figure is at most 0.02 K here: dp/dθ is 4 % a kelvin and more.
    expect(Math.abs(dewPoint(row.saturation_pressure_Pa) - row.temperature_C)).toBeLessThan(0.02);
  });
});

describe("the ASHRAE formulation of the package psychrolib, a general-purpose psychrometric library", () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  const temperatures = Array.from({ length: 121 }, (_, step) => -20 + step / 2);

  it("gives saturation pressures within 0.6 % from −20 to 40 °C", () => {
    for (const temperature of temperatures) {
      const second = psychrolib.GetSatVapPres(temperature);
      expect(Math.abs(saturationPressure(temperature) / second - 1), `${temperature} °C`).toBeLessThan(0.006);
    }
  });

  it("gives vapour pressures of air within 0.6 %", () => {
    for (const temperature of temperatures) {
      const second = psychrolib.GetVapPresFromRelHum(temperature, 0.55);
      expect(Math.abs(vapourPressure(0.55, temperature) / second - 1), `${temperature} °C`).toBeLessThan(0.006);
    }
  });

  it("gives dew points within 0.15 K from −20 to 40 °C at 30, 60 and 90 % (0.6 % of pressure is 0.1 K; its dew point is solved to 0.001)", () => {
    for (const temperature of temperatures) {
      for (const humidity of [0.3, 0.6, 0.9]) {
        const second = psychrolib.GetTDewPointFromRelHum(temperature, humidity);
        const own = dewPoint(humidity * saturationPressure(temperature));
        expect(Math.abs(own - second), `${temperature} °C, ${humidity}`).toBeLessThan(0.15);
      }
    }
  });
});

describe("the two branches", () => {
  it("meet at 0 °C in 610.5 Pa", () => {
    expect(saturationPressureOverWater(0)).toBe(610.5);
    expect(saturationPressureOverIce(0)).toBe(610.5);
  });

  it("over ice lies under over water in frost: 259.3 against 286.3 Pa at −10 °C (worked by hand)", () => {
    // 610.5·exp(21.875·(−10)/255.5) = 610.5·exp(−0.856164); 610.5·exp(17.269·(−10)/227.3) = 610.5·exp(−0.759745)
    expect(saturationPressureOverIce(-10)).toBeCloseTo(610.5 * Math.exp(-0.856164), 2);
    expect(saturationPressureOverWater(-10)).toBeCloseTo(610.5 * Math.exp(-0.759745), 2);
  });
});

describe("humidity of air", () => {
  it("20 °C and 50 % is 1168.5 Pa, and 8.637 g in a cubic metre (worked by hand: 1168.5/(461.5·293.15))", () => {
    expect(vapourPressure(0.5, 20)).toBeCloseTo(1168.48, 1);
    expect(humidityByVolume(1168.48, 20) * 1000).toBeCloseTo(8.637, 3);
    expect(relativeHumidity(1168.48, 20)).toBeCloseTo(0.5, 4);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -273.16, 201])("no saturation pressure at %d °C", (temperature) => {
    expect(() => saturationPressure(temperature)).toThrow(RangeError);
  });

  it.each([Number.NaN, 0, -1, Number.POSITIVE_INFINITY])("no dew point of %d Pa", (pressure) => {
    expect(() => dewPoint(pressure)).toThrow(RangeError);
  });

  it("refuses a humidity over 1, a negative pressure and a temperature under absolute zero", () => {
    expect(() => vapourPressure(1.01, 20)).toThrow(RangeError);
    expect(() => vapourPressure(Number.NaN, 20)).toThrow(RangeError);
    expect(() => relativeHumidity(-1, 20)).toThrow(RangeError);
    expect(() => humidityByVolume(1000, -273.15)).toThrow(RangeError);
    expect(() => humidityByVolume(Number.NaN, 20)).toThrow(RangeError);
  });
});
