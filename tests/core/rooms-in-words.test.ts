import { describe, expect, test } from "vitest";
import type { Room } from "../../packages/core/src/project/types.ts";
import { describeRoom } from "../../packages/core/src/rooms/describe-room.ts";

const room: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "class", class: 3 },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};
const twelve = (value: number): number[] => Array<number>(12).fill(value);

describe("a room in words", () => {
  test("a heated room with a class", () => {
    expect(describeRoom(room)).toEqual({
      temperatureRule: "heated to 20 °C; in warmer months it follows outdoors",
      humidityRule:
        "humidity class 3: in cold months damper than outdoors, from 20 °C outdoors the vapour pressure of outdoors",
      source: "ISO 13788:2012 Annex A",
    });
  });

  test("some days a week: the assumption is told for temperature and vapour", () => {
    const words = describeRoom({
      ...room,
      temperature: { kind: "heated", setPoint: 18, daysPerWeek: 3, otherwise: 8 },
    });
    expect(words.temperatureRule).toBe(
      "heated to 18 °C on 3 days a week, on other days at least 8 °C; each month has the mean of its days, 3 in 7 " +
        "heated, without heat stored in the walls; in warmer months it follows outdoors",
    );
    expect(words.humidityRule).toContain("; on unheated days the vapour pressure of outdoors");
    const oneDay = describeRoom({
      ...room,
      temperature: { kind: "heated", setPoint: 18, daysPerWeek: 1, otherwise: null },
    });
    expect(oneDay.temperatureRule).toContain("on 1 day a week, on other days the temperature of outdoors");
  });

  test.each([
    [{ kind: "held", months: twelve(18.5) }, 24, "held at 18.5 °C; cooled to at most 24 °C"],
    [
      { kind: "held", months: [-2, ...Array<number>(11).fill(5)] },
      null,
      "held at −2, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5 °C, January to December",
    ],
    [{ kind: "by outdoor temperature" }, null, "20 °C, rising to 25 °C as the outdoor mean goes from 10 °C to 20 °C"],
    [{ kind: "unheated" }, null, "unheated: the temperature of outdoors"],
  ] as const)("the temperature rule %o", (temperature, cooling, words) => {
    expect(describeRoom({ ...room, temperature, cooling }).temperatureRule).toBe(words);
  });

  test.each([
    [
      { kind: "months", relativeHumidity: twelve(0.55) },
      "relative humidity 55 % all year",
      "stated in the project file",
    ],
    [
      { kind: "months", relativeHumidity: [0.4, ...Array<number>(11).fill(0.5)] },
      "relative humidity 40, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50 %, January to December",
      "stated in the project file",
    ],
    [
      { kind: "by outdoor temperature", level: "normal" },
      "relative humidity by outdoor temperature, normal use: 30 % at −10 °C rising to 60 % at 20 °C",
      "EN 15026:2007 Annex C",
    ],
    [
      { kind: "by outdoor temperature", level: "high" },
      "relative humidity by outdoor temperature, high use: 40 % at −10 °C rising to 70 % at 20 °C",
      "EN 15026:2007 Annex C",
    ],
    [
      { kind: "balance", production: 6 / 86_400, volume: 90, airChanges: 0.6 / 3600 },
      "moisture balance: 6 kg of water a day into 90 m³ with 0.6 air changes an hour",
      "ISO 13788:2012 Annex A",
    ],
    [{ kind: "as outdoors" }, "the vapour pressure of outdoors", "stated in the project file"],
  ] as const)("the humidity rule %o", (humidity, words, source) => {
    expect(describeRoom({ ...room, humidity })).toMatchObject({ humidityRule: words, source });
  });

  test("humidity by outdoor temperature tells that a set point rises", () => {
    const words = describeRoom({ ...room, humidity: { kind: "by outdoor temperature", level: "high" } });
    expect(words.temperatureRule).toContain(
      "heated to 20 °C, rising by up to 5 K as the outdoor mean goes from 10 °C to 20 °C",
    );
  });

  test("an unheated room is outdoor air", () => {
    const store = describeRoom({ ...room, temperature: { kind: "unheated" }, humidity: { kind: "as outdoors" } });
    expect(store.source).toBe("assumption of this project: outdoor air");
  });
});
