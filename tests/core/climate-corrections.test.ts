import { assessProject } from "@warmside/core";
import { describe, expect, test } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { correctForAltitude, STANDARD_LAPSE_RATE } from "../../packages/core/src/climate/altitude.ts";
import { climateMonths } from "../../packages/core/src/climate/climate-months.ts";
import {
  applySeverity,
  MEAN_YEAR,
  ONE_IN_TEN_COLDER,
  ONE_IN_TEN_WARMER,
  oneInTenYear,
} from "../../packages/core/src/climate/severity.ts";
import type { OutdoorClimate } from "../../packages/core/src/project/types.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { changed, projectOf } from "./project-texts.ts";

const climate: OutdoorClimate = {
  name: "place",
  origin: ["made up for this test"],
  latitude: 50,
  longitude: 5,
  altitude: 100,
  temperature: [-3, -1, 0, 4, 8, 12, 16, 15, 11, 7, 3, -2],
  relativeHumidity: [0.9, 0.88, 0.85, 0.8, 0.75, 0.72, 0.7, 0.71, 0.76, 0.82, 0.87, 0.9],
};

describe("severity", () => {
  test("the mean year is the climate itself", () => {
    expect(applySeverity(climate, MEAN_YEAR)).toBe(climate);
  });

  test.each([
    [ONE_IN_TEN_COLDER, -2, "severity: one in ten colder, −2 K in every month, relative humidity unchanged"],
    [ONE_IN_TEN_WARMER, 2, "severity: one in ten warmer, +2 K in every month, relative humidity unchanged"],
    [{ name: "+1.5 K", offset: 1.5 }, 1.5, "severity: +1.5 K, +1.5 K in every month, relative humidity unchanged"],
  ])("%o shifts every month, keeps relative humidity and says so", (severity, offset, remark) => {
    const shifted = applySeverity(climate, severity);
    expect(shifted.temperature).toEqual(climate.temperature.map((temperature) => temperature + offset));
    expect(shifted.relativeHumidity).toEqual(climate.relativeHumidity);
    expect(shifted.origin).toEqual(["made up for this test", remark]);
  });

  test("an offset that is not a number is refused", () => {
    expect(() => applySeverity(climate, { name: "x", offset: Number.NaN })).toThrow(
      new TypeError("severity.offset must be a difference of temperatures, was NaN"),
    );
  });
});

describe("altitude", () => {
  test("a site 240 m higher is 1.56 K colder at 6.5 K/km, and the result says so", () => {
    const corrected = correctForAltitude(climate, { altitude: 340, lapseRate: STANDARD_LAPSE_RATE });
    corrected.temperature.forEach((temperature, month) => {
      expect(temperature).toBeCloseTo(climate.temperature[month]! - 1.56, 12);
    });
    expect(corrected.relativeHumidity).toEqual(climate.relativeHumidity);
    expect(corrected.altitude).toBe(340);
    expect(corrected.origin.at(-1)).toBe(
      "altitude correction: from 100 m to 340 m at 6.5 K/km, −1.56 K in every month, relative humidity unchanged",
    );
  });

  test("a lower site is warmer, and up and down again changes nothing", () => {
    const lower = correctForAltitude(climate, { altitude: 0, lapseRate: 0.005 });
    expect(lower.temperature[0]).toBeCloseTo(-2.5, 12);
    const back = correctForAltitude(lower, { altitude: 100, lapseRate: 0.005 });
    back.temperature.forEach((temperature, month) => {
      expect(temperature).toBeCloseTo(climate.temperature[month]!, 12);
    });
  });

  test("a climate without altitude cannot be corrected, nor by what is not a number", () => {
    expect(() => correctForAltitude({ ...climate, altitude: null }, { altitude: 1, lapseRate: 0.0065 })).toThrow(
      /altitude/,
    );
    expect(() => correctForAltitude(climate, { altitude: Number.NaN, lapseRate: 0.0065 })).toThrow(RangeError);
  });
});

describe("outdoor months", () => {
  test("vapour pressure is relative humidity times saturation, over ice below 0 °C and over water from 0 °C", () => {
    const { temperature, vapourPressure } = climateMonths(climate);
    expect(temperature).toEqual(climate.temperature);
    // Worked in python from ISO 13788:2012 E.7 and E.8: 0.9·610.5·exp(21.875·−3/262.5), 0.85·610.5, 0.8·610.5·exp(17.269·4/241.3).
    expect(vapourPressure[0]).toBeCloseTo(427.9121, 3);
    expect(vapourPressure[2]).toBeCloseTo(518.925, 9);
    expect(vapourPressure[3]).toBeCloseTo(650.2785, 3);
    expect(vapourPressure[6]).toBeCloseTo(0.7 * saturationPressure(16), 9);
  });
});

describe("what the file says of its year and its height is what is worked out", () => {
  const january = (line: string) => {
    const { climate, rooms, buildUps } = assessProject(projectOf(changed("indoor:", `${line}\nindoor:`)));
    return { outdoors: climate.months[0]!, room: rooms[0]!.months[0]!, heat: buildUps[0]!.heat!, climate };
  };
  const mean = january("severity: mean year");

  test.each([
    ["severity: one in ten colder", -2],
    ["severity: one in ten warmer", 2],
    ["severity: +1.5 K", 1.5],
    ["altitude: 302 m", -1.95],
    ["altitude: 302 m\nlapse rate: 5 K/km", -1.5],
    ["altitude: 302 m\nseverity: +1 K", -0.95],
  ])("%s: %d K in January, at De Bilt (station 2 m)", (line, change) => {
    const { outdoors, room, climate } = january(line);
    expect(outdoors.temperature - mean.outdoors.temperature).toBeCloseTo(change, 9);
    expect(outdoors.relativeHumidity).toBeCloseTo(mean.outdoors.relativeHumidity, 9);
    const pressure = outdoors.relativeHumidity * saturationPressure(outdoors.temperature);
    expect(outdoors.vapourPressure).toBeCloseTo(pressure, 6);
    // Class 3: 810 Pa over outdoors at 0 °C, none at 20 °C.
    expect(room.vapourPressure).toBeCloseTo(pressure + (810 * (20 - outdoors.temperature)) / 20, 6);
    expect(climate.origin.length).toBeGreaterThan(mean.climate.origin.length);
  });

  test("a colder year asks for a better inside surface", () => {
    const colder = january("severity: one in ten colder");
    expect(colder.heat.requiredTemperatureFactor).not.toBe(mean.heat.requiredTemperatureFactor);
    expect(colder.heat.transmittance).toBe(mean.heat.transmittance);
  });

  test("the year of one in ten that is always tried is that of the place, whichever year is reported", () => {
    const colderOf = (line: string) => {
      const { sites } = surroundingsOf(projectOf(changed("indoor:", `${line}\nindoor:`)));
      return sites.colder.outdoor.temperature[0]! - mean.outdoors.temperature;
    };
    expect(colderOf("severity: mean year")).toBeCloseTo(-2, 9);
    expect(colderOf("severity: one in ten colder")).toBeCloseTo(-2, 9);
    expect(colderOf("severity: one in ten warmer")).toBeCloseTo(-2, 9);
    // A stated difference is a place of its own, such as a warmer future.
    expect(colderOf("severity: +1 K")).toBeCloseTo(-1, 9);
    expect(oneInTenYear(climate, ONE_IN_TEN_COLDER, ONE_IN_TEN_COLDER).temperature).toEqual(climate.temperature);
    expect(oneInTenYear(climate, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER).temperature[0]).toBe(
      climate.temperature[0]! + 4,
    );
  });
});
