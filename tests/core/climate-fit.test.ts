import { assessProject, readProjectOrThrow } from "@warmside/core";
import { describe, expect, test } from "vitest";
import { checkFit } from "../../packages/core/src/climate/check-fit.ts";
import type { OutdoorClimate, Room } from "../../packages/core/src/project/types.ts";

/** A climate with the same months but for the hot ones: invented for these tests. */
const climateOf = (temperature: readonly number[], relativeHumidity: number): OutdoorClimate => ({
  name: "place",
  origin: [],
  latitude: null,
  longitude: null,
  altitude: null,
  temperature,
  relativeHumidity: temperature.map(() => relativeHumidity),
});
const mild = climateOf([4, 5, 7, 10, 13, 16, 18, 18, 15, 12, 8, 5], 0.8);
const hotHumid = climateOf([19, 18, 21, 23, 25, 26, 27, 27, 27, 24, 20, 18], 0.78);
const hotDry = climateOf([12, 14, 17, 21, 25, 30, 34, 33, 29, 23, 16, 12], 0.25);

const heated: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "class", class: 3 },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};
const codes = (climate: OutdoorClimate, room: Room): string[] => checkFit(climate, room).map((note) => note.code);
const percent = { kind: "months", relativeHumidity: Array<number>(12).fill(0.5) } as const;

describe("a climate and a room's use", () => {
  test("a heated room in a mild climate fits", () => {
    expect(codes(mild, heated)).toEqual([]);
  });

  test("hot and humid with heating alone is told with the months, once cooling is stated it is not", () => {
    const [note] = checkFit(hotHumid, heated);
    expect(note?.code).toBe("hot-humid-heated-only");
    expect(note?.message).toContain("hot and humid in April, May, June, July, August, September and October");
    expect(codes(hotHumid, { ...heated, cooling: 24, humidity: percent })).toEqual([]);
  });

  test("hot and dry is not hot and humid, and two months are no season", () => {
    expect(codes(hotDry, heated)).toEqual([]);
    const twoMonths = climateOf([4, 5, 7, 10, 13, 16, 25, 25, 15, 12, 8, 5], 0.8);
    const threeMonths = climateOf([4, 5, 7, 10, 13, 25, 25, 25, 15, 12, 8, 5], 0.8);
    expect(codes(twoMonths, heated)).toEqual([]);
    expect(codes(threeMonths, heated)).toEqual(["hot-humid-heated-only"]);
  });

  test("a set point that no month goes under means that the heating never runs", () => {
    const frostGuard: Room = {
      ...heated,
      temperature: { kind: "heated", setPoint: 4, daysPerWeek: 7, otherwise: null },
    };
    expect(codes(mild, frostGuard)).toEqual(["heating-never-runs"]);
    expect(
      codes(mild, { ...frostGuard, temperature: { kind: "heated", setPoint: 4.1, daysPerWeek: 7, otherwise: null } }),
    ).toEqual([]);
  });

  test("a cap that no month goes over means that the cooling never runs", () => {
    expect(codes(mild, { ...heated, cooling: 24 })).toEqual(["cooling-never-runs"]);
    expect(codes(mild, { ...heated, cooling: 17, humidity: percent })).toEqual([]);
  });

  test("a humidity class in a room cooler than outdoors is told with the months", () => {
    const cooled = checkFit(hotHumid, { ...heated, cooling: 26 });
    expect(cooled.map((note) => note.code)).toEqual(["class-in-cooled-room"]);
    expect(cooled[0]?.message).toContain("cooler than outdoors in July, August and September");
    const held: Room = { ...heated, temperature: { kind: "held", months: Array<number>(12).fill(17) } };
    expect(checkFit(mild, held).map((note) => note.message)[0]).toContain("in July and August");
    expect(codes(mild, { ...held, humidity: percent })).toEqual([]);
  });

  test("a named room is named", () => {
    expect(checkFit(hotHumid, { ...heated, name: "damp room" })[0]?.message).toContain(
      "the room “damp room” is only heated",
    );
  });
});

describe("the notes reach the reader", () => {
  const project = (accept: string): string => `project: Alder Row kiln shop
climate: melbourne-florida
${accept}
indoor: { heating: 20 °C, humidity: class 2 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 90 mm }
      - { material: oriented strand board, thickness: 11 mm }
`;
  const noteOf = (text: string) =>
    assessProject(readProjectOrThrow(text)).oddities.find(({ code }) => code === "hot-humid-heated-only");

  test("a heated-only room in a hot and humid place is told of in the result", () => {
    expect(noteOf(project(""))).toMatchObject({ path: "indoor", accepted: false });
  });

  test("and can be acknowledged", () => {
    expect(noteOf(project("accept: [hot-humid-heated-only]"))).toMatchObject({ accepted: true });
  });
});
