import { describe, expect, test } from "vitest";
import { summerDrying, winterCondensate } from "../../packages/core/src/further-checks/two-season/two-season.ts";
import type { BuildUp, HumidityRule, Room, SolidLayer } from "../../packages/core/src/project/types.ts";
import type { TwoSeasonResult } from "../../packages/core/src/result/types.ts";
import { nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import { checked, heatedRoom, layerOf, shippedClimate, siteOf } from "../core/build-ups.ts";
import { buildUp, material, sheet, solid } from "./build-up-by-hand.ts";
import { plainSlices } from "./plain-section.ts";

describe("worked: sd 2 m inside and 0.5 m outside a plane at −3 °C in winter (DIN 4108-3 climate from memory)", () => {
  // With R 1.59 inside and 0.12 outside the plane lies at 20 − 25·(0.25 + 1.59)/(0.25 + 1.59 + 0.12 + 0.04) = −3 °C.
  const line = nodeLine(
    plainSlices([
      { resistance: 1.59, sd: 2 },
      { resistance: 0.12, sd: 0.5 },
    ]),
  );
  const condensates = winterCondensate({ line });

  test("0.0581 kg/m² condense at the plane and nowhere else", () => {
    const plane = line.count - 2;
    expect(condensates[plane]).toBeCloseTo(0.0581, 4);
    expect(condensates.every((amount, node) => node === plane || amount === 0)).toBe(true);
  });

  test("1.944 kg/m² can dry in the summer of a wall", () => {
    expect(summerDrying(1700, 2, 0.5)).toBeCloseTo(1.944, 3);
  });
});

const outdoor = shippedClimate("de-bilt");
const check = (
  layers: SolidLayer[],
  more: Partial<BuildUp> = {},
  room: Room = heatedRoom({ kind: "class", class: 3 }),
): TwoSeasonResult => {
  const asked = buildUp(layers, { twoSeasonCheck: true, ...more });
  return checked(asked, siteOf(outdoor, room), room).checks.twoSeasonCheck!;
};
const wool = layerOf("mineral wool slab", 140);
const board = layerOf("gypsum plasterboard", 12.5);
const strand = layerOf("oriented strand board", 11);

describe("the verdict of its own", () => {
  test("nothing condenses behind a vapour layer: passed", () => {
    const result = check([board, layerOf("polyethylene sheet 0.15 mm"), wool, strand]);
    expect(result).toMatchObject({
      applies: true,
      passes: true,
      plane: null,
      condensate: 0,
      surfaceResistanceInside: 0.25,
    });
    expect(result.edition).toContain("2014");
  });

  test("one plane, by hand: 20.0 °C to −5 °C over Rsi 0.25, board, wool, sheathing, Rse 0.04", () => {
    // θ = −5 + 25·(0.04 + 0.011/0.13)/(0.25 + 0.0125/0.21 + 0.14/λ + 0.011/0.13 + 0.04); psat below 0 °C by E.8.
    const lambda = wool.material.conductivity!;
    const total = 0.25 + 0.0125 / 0.21 + 0.14 / lambda + 0.011 / 0.13 + 0.04;
    const temperature = -5 + (25 * (0.04 + 0.011 / 0.13)) / total;
    const plane = 610.5 * Math.exp((21.875 * temperature) / (265.5 + temperature));
    const sdInside = 0.0125 * 10 + 0.14 * wool.material.vapourResistanceFactorDry!;
    const sdOutside = 0.011 * 50;
    const condensate = 2e-10 * 90 * 86_400 * ((1168 - plane) / sdInside - (plane - 321) / sdOutside);
    const result = check([board, wool, strand]);
    expect(result.condensate).toBeCloseTo(condensate, 9);
    expect(result.summerCapacity).toBeCloseTo(2e-10 * 90 * 86_400 * 500 * (1 / sdInside + 1 / sdOutside), 9);
    expect(result).toMatchObject({ applies: true, passes: false, sectionId: { kind: "whole" } });
    expect(result.plane).toBe("between mineral wool slab and oriented strand board");
  });

  test("limits: 3 % of a board's dry mass, 5 % of timber's, 0.5 where one side takes up no water, else 1.0 kg/m²", () => {
    const brick = solid(0.1, 0.8, {
      name: "brick",
      material: material(0.8, 60, { name: "brick", kind: "mineral", group: "masonry" }),
    });
    const clay = solid(0.2, 0.09, {
      name: "light clay",
      material: material(0.09, 2, { name: "light clay", kind: "mineral", group: "masonry" }),
    });
    expect(check([board, wool, strand]).limit).toBeCloseTo(0.03 * 650 * 0.011, 12);
    expect(check([board, wool, layerOf("softwood timber", 20)]).limit).toBeCloseTo(
      Math.min(0.5, 0.05 * 500 * 0.02),
      12,
    );
    expect(check([board, wool, brick]).limit).toBe(0.5);
    expect(check([board, clay, brick]).limit).toBe(1);
  });

  test("roofs are warmed to 2000 Pa in summer, walls and ceilings under a roof space to 1700 Pa", () => {
    const layers = [board, wool, strand];
    const wall = check(layers).summerCapacity;
    const roof = check(layers, { element: "flat roof" });
    const ceiling = check(layers, { element: "flat roof", roofSpace: "felt or boards" });
    expect(roof.summerCapacity / wall).toBeCloseTo(800 / 500, 9);
    expect(ceiling.summerCapacity / wall).toBeCloseTo(1, 9);
  });

  test("more than it can dry fails even under the limit", () => {
    const result = check([board, sheet(3), wool, sheet(300)]);
    expect(result.condensate).toBeLessThan(result.limit);
    expect(result.condensate).toBeGreaterThan(result.summerCapacity);
    expect(result.passes).toBe(false);
  });

  test("two planes: the standard is named, and no verdict is given", () => {
    const openFibre = solid(0.06, 0.04, { name: "fibre", material: material(0.04, 1, { name: "fibre" }) });
    const tightFibre = solid(0.06, 0.04, { name: "felt", material: material(0.04, 4, { name: "felt" }) });
    const result = check([openFibre, tightFibre, sheet(20)]);
    expect(result).toMatchObject({ applies: false, passes: null });
    expect(result.reason).toContain("more than one plane");
  });
});

describe("what it is meant for", () => {
  const layers = [board, wool, strand];
  const reason = (more: Partial<BuildUp>, room?: Room): string | null => check(layers, more, room).reason;
  const damp: HumidityRule = { kind: "class", class: 4 };

  test.each<[string, Partial<Room>]>([
    ["unheated", { temperature: { kind: "unheated" }, humidity: { kind: "as outdoors" } }],
    ["cooled", { cooling: 24 }],
    ["a pool", { pool: true }],
    ["of steam", { burstsOfSteam: true }],
    ["wetter than class 3", { humidity: damp }],
    [
      "wetter than class 3 by its own humidity",
      { humidity: { kind: "months", relativeHumidity: new Array(12).fill(0.75) } },
    ],
  ])("not for a room that is %s", (_, change) => {
    const room = { ...heatedRoom({ kind: "class", class: 3 }), ...change };
    expect(reason({}, room)).not.toBeNull();
    expect(check(layers, {}, room).passes).toBeNull();
  });

  test("classes 1 to 3 are within it, and so is 40 % all year", () => {
    for (const number of [1, 2, 3] as const)
      expect(reason({}, heatedRoom({ kind: "class", class: number }))).toBeNull();
    expect(reason({}, heatedRoom({ kind: "months", relativeHumidity: new Array(12).fill(0.4) }))).toBeNull();
  });

  test("off unless asked for", () => {
    const room = heatedRoom({ kind: "class", class: 3 });
    expect(checked(buildUp(layers), siteOf(outdoor, room), room).checks.twoSeasonCheck).toBeNull();
  });
});
