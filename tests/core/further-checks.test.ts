import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { relativeHumidity } from "../../packages/core/src/air/humidity.ts";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { growthLimit } from "../../packages/core/src/further-checks/mould/growth-limit.ts";
import { type HumidInterface, humidInterfaces } from "../../packages/core/src/further-checks/mould/humid-interfaces.ts";
import { equilibriumMoisture } from "../../packages/core/src/further-checks/wood/equilibrium-moisture.ts";
import type { BuildUp, HumidityRule, Layer } from "../../packages/core/src/project/types.ts";
import { firstNotFinite } from "../laws/every-number.ts";
import { air, buildUp, material, sheet, solid } from "../published/build-up-by-hand.ts";
import { checked, heatedRoom, layerOf, materialNamed, shippedClimate, siteOf, studs } from "./build-ups.ts";

const lining = layerOf("gypsum plasterboard", 12.5);
const vapourLayer = layerOf("polyethylene sheet 0.15 mm");
const wool = layerOf("mineral wool slab", 140, { framing: studs });
const sheathing = layerOf("oriented strand board", 11);
const cladding = [air(0.025, { ventilation: "well" }), layerOf("softwood timber", 20)];
const ordinary = buildUp([lining, vapourLayer, wool, sheathing, layerOf("breather membrane"), ...cladding]);
const withoutSheet = buildUp([lining, wool, sheathing, layerOf("breather membrane"), ...cladding]);
const classOf = (number: 1 | 2 | 3 | 4 | 5): HumidityRule => ({ kind: "class", class: number });
const climates = readdirSync("climate")
  .filter((file) => file.endsWith(".csv"))
  .map((file) => file.replace(".csv", ""));

const humidIn = (built: BuildUp, climate: string, humidity: HumidityRule): HumidInterface[] => {
  const site = siteOf(shippedClimate(climate), heatedRoom(humidity));
  return humidInterfaces(calculateBuildUp(built, site), site.outdoor);
};

describe("mould's growth limit (Hukka and Viitanen 1999, from memory)", () => {
  // Worked by hand from φcr = 100 − 3.13θ + 0.160θ² − 0.00267θ³, to the last figure that follows.
  test.each([
    [5, 0.8801625],
    [10, 0.8203],
    [15, 0.8003875],
    [20, 0.8004],
    [20.1, 0.8],
    [35, 0.8],
    [2, 0.9435864],
    [0, 1],
    [-8, 1],
  ])("%d °C: %d", (temperature, limit) => {
    expect(growthLimit(temperature)).toBeCloseTo(limit, 9);
  });

  test("no number is refused", () => {
    expect(() => growthLimit(Number.NaN)).toThrow(RangeError);
  });
});

describe("mould at an interface", () => {
  test.each(climates)(
    "is silent on the ordinary sound wall in %s, in classes 1 to 3 and by outdoor temperature",
    (climate) => {
      for (const humidity of [
        classOf(1),
        classOf(2),
        classOf(3),
        { kind: "by outdoor temperature", level: "normal" } as const,
      ]) {
        expect(humidIn(ordinary, climate, humidity), JSON.stringify(humidity)).toEqual([]);
      }
    },
  );

  test("nineteen climates were asked", () => {
    expect(climates).toHaveLength(19);
  });

  test("speaks of the sheathing of the same wall without its vapour layer, and not below 0 °C", () => {
    const found = humidIn(withoutSheet, "oslo", classOf(3)).find(({ section }) => section.kind === "between framing")!;
    expect(found).toMatchObject({
      place: { inner: { material: "mineral wool slab" }, outer: { material: "oriented strand board" } },
      food: "oriented strand board",
    });
    expect(found.months.length).toBeGreaterThan(1);
    for (const month of found.months) {
      expect(month.temperature).toBeGreaterThan(0);
      expect(month.relativeHumidity).toBeGreaterThan(month.limit);
      expect(month.relativeHumidity).toBeGreaterThan(month.outdoors + 0.02);
    }
    expect(found.months.map(({ month }) => month)).not.toContain("January");
  });

  test("steel and mineral wool feed no mould; the same place with paper does", () => {
    const steel = (inner: Layer) => buildUp([inner, layerOf("mineral wool slab", 140), layerOf("steel", 1)]);
    const outer = (found: HumidInterface[]) => found.filter(({ place }) => place.outer?.material === "steel");
    expect(outer(humidIn(steel(lining), "de-bilt", classOf(3)))).toEqual([]);
    const cellulose = buildUp([lining, layerOf("cellulose blown", 140), layerOf("steel", 1)]);
    expect(outer(humidIn(cellulose, "de-bilt", classOf(3)))).toHaveLength(1);
  });

  test("the outer face and the room surface are left out, however humid", () => {
    const board = solid(0.02, 0.13, { name: "board", material: material(0.13, 50, { name: "board", kind: "board" }) });
    expect(humidIn(buildUp([board]), "sand-point-alaska", classOf(5))).toEqual([]);
  });

  test("and so is the other face of a partition, though its room is damper than outdoors", () => {
    const partition = buildUp([layerOf("fibreboard 600", 20)], { element: "partition", faces: "damp room" });
    const site = siteOf(shippedClimate("oslo"), heatedRoom(classOf(2)));
    const damp = { temperature: new Array(12).fill(20), vapourPressure: new Array(12).fill(2200) };
    const withDampRoom = { ...site, rooms: new Map([...site.rooms, ["damp room", damp]]) };
    expect(humidInterfaces(calculateBuildUp(partition, withDampRoom), site.outdoor)).toEqual([]);
  });

  test("a place no more humid than outdoors is never named, though it is over the limit", () => {
    const open = buildUp([layerOf("fibreboard 250", 12), layerOf("fibreboard 250", 12)]);
    const site = siteOf(shippedClimate("de-bilt"), {
      ...heatedRoom({ kind: "as outdoors" }),
      temperature: { kind: "unheated" },
    });
    const calculation = calculateBuildUp(open, site);
    const november = relativeHumidity(site.outdoor.vapourPressure[10]!, site.outdoor.temperature[10]!);
    expect(november).toBeGreaterThan(growthLimit(site.outdoor.temperature[10]!));
    expect(humidInterfaces(calculation, site.outdoor)).toEqual([]);
  });
});

describe("wood moisture", () => {
  const room = heatedRoom(classOf(3));
  const site = siteOf(shippedClimate("oslo"), room);
  const { checks } = checked(withoutSheet, site, room);

  test("is told of the sheathing in both sections and of the studs where a section runs through them", () => {
    expect(checks.wood.map(({ section, layer, name }) => `${section}: ${layer} ${name}`)).toEqual([
      "between framing: 2 oriented strand board",
      "through studs: 1 studs in mineral wool slab",
      "through studs: 2 oriented strand board",
    ]);
  });

  test("at the outer face is the equilibrium with the air outdoors, at that face's temperature", () => {
    const bare = checked(buildUp([lining, wool, sheathing]), site, room);
    const { climate, line } = bare.calculation.sections[0]!;
    for (const [month, { outer }] of bare.checks.wood[0]!.months.entries()) {
      const temperature = climate.temperature[month]![line.count - 1]!;
      const humidity = relativeHumidity(site.outdoor.vapourPressure[month]!, temperature);
      expect(outer).toBeCloseTo(equilibriumMoisture(temperature, humidity), 12);
    }
  });

  test("counts the months over 20 % at either face", () => {
    const [entry] = checks.wood;
    const over = entry!.months.filter(({ inner, outer }) => inner > 0.2 || outer > 0.2).length;
    expect(entry!.monthsOverLimit).toBe(over);
    expect(over).toBeGreaterThan(2);
    expect(entry!.months[0]!.inner).toBeCloseTo(equilibriumMoisture(-5, 1), 2);
  });

  test("and the outer face alone counts too: damp outdoors, dry within", () => {
    const damp = siteOf(shippedClimate("de-bilt"), room);
    const board = checked(buildUp([layerOf("cross-laminated timber", 100)]), damp, room).checks.wood[0]!;
    expect(board.months.every(({ inner }) => inner < 0.2)).toBe(true);
    expect(board.monthsOverLimit).toBe(board.months.filter(({ outer }) => outer > 0.2).length);
    expect(board.monthsOverLimit).toBeGreaterThan(0);
  });

  test("timber that is dry stays under it: insulation outside the board", () => {
    const warm = checked(buildUp([lining, sheathing, layerOf("expanded polystyrene", 150)]), site, room).checks.wood;
    expect(warm).toHaveLength(1);
    expect(warm[0]!.monthsOverLimit).toBe(0);
  });
});

describe("resistance by humidity", () => {
  const room = heatedRoom(classOf(4));
  const site = siteOf(shippedClimate("oslo"), room);
  const membrane = sheet(10, {
    name: "membrane",
    material: {
      ...materialNamed("breather membrane"),
      name: "membrane",
      equivalentAirLayerThickness: 10,
      equivalentAirLayerThicknessByHumidity: [
        [0.3, 10],
        [0.8, 0.5],
      ],
    },
  });
  const wall = (more: Partial<BuildUp> = {}) => buildUp([lining, membrane, wool, sheathing], more);

  test("a membrane given by a table varies alone, within its table", () => {
    const result = checked(wall(), site, room).checks.variableResistance!;
    expect(result).toMatchObject({ converged: true, tolerance: 1e-8 });
    expect(result.layers.map(({ name }) => name)).toEqual(["membrane"]);
    for (const { relativeHumidity: humidity, sd } of result.layers[0]!.months) {
      expect(sd).toBeCloseTo(Math.min(10, Math.max(0.5, 10 - ((humidity - 0.3) / 0.5) * 9.5)), 6);
    }
    const sds = result.layers[0]!.months.map(({ sd }) => sd);
    expect(Math.max(...sds)).toBeGreaterThan(Math.min(...sds) + 1);
  });

  test("on request every layer with two values of μ varies, between its dry and its wet value", () => {
    const { layers } = checked(wall({ variableResistance: true }), site, room).checks.variableResistance!;
    expect(layers.map(({ name }) => name)).toEqual(["gypsum plasterboard", "membrane", "oriented strand board"]);
    for (const [layer, thickness, dry, wet] of [
      [0, 0.0125, 10, 4],
      [2, 0.011, 50, 30],
    ] as const) {
      for (const { relativeHumidity: humidity, sd } of layers[layer]!.months) {
        const part = Math.min(1, Math.max(0, (humidity - 0.25) / 0.5));
        expect(sd).toBeCloseTo(thickness * (dry + (wet - dry) * part), 7);
      }
      const humidities = layers[layer]!.months.map(({ relativeHumidity: humidity }) => humidity);
      expect(Math.min(...humidities)).toBeLessThan(0.75 + 0.25 * layer);
    }
  });

  test("a film too thin for a humidity of its own varies untold, and changes nothing", () => {
    const film = solid(1e-7, 0.2, { name: "film", material: material(0.2, 5, { vapourResistanceFactorWet: 2 }) });
    const thin = buildUp([lining, film, membrane, wool, sheathing], { variableResistance: true });
    const without = checked(wall({ variableResistance: true }), site, room).checks.variableResistance!;
    const result = checked(thin, site, room).checks.variableResistance!;
    expect(result.layers.map(({ name }) => name)).toEqual(without.layers.map(({ name }) => name));
    expect(result).toMatchObject({ converged: true, verdict: without.verdict });
    expect(result.peak.amount).toBeCloseTo(without.peak.amount, 4);
    expect(firstNotFinite(result)).toBeNull();
  });

  test("is not worked out where nothing asks for it", () => {
    expect(checked(ordinary, site, room).checks.variableResistance).toBeNull();
  });
});

test("an ordinary build-up has wood and gaps only", () => {
  const room = heatedRoom(classOf(3));
  const { checks } = checked(ordinary, siteOf(shippedClimate("de-bilt"), room), room);
  expect(checks).toMatchObject({ trappedWater: [], twoSeasonCheck: null, leak: null, variableResistance: null });
  expect(checks.wood.length).toBeGreaterThan(0);
  expect(checks.gaps.length).toBeGreaterThan(0);
});
