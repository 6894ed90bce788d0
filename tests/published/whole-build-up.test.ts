import { describe, expect, it, test } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { heatFlowDirection } from "../../packages/core/src/heat/heat-flow-direction.ts";
import { mainInsulation } from "../../packages/core/src/heat/main-insulation.ts";
import { isUpright } from "../../packages/core/src/project/is-upright.ts";
import type { AirMonths, BuildUp, Element } from "../../packages/core/src/project/types.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";
import { nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import { sectionClimate } from "../../packages/core/src/vapour/section-climate.ts";
import { air, buildUp, framing, material, resisting, sheet, solid } from "./build-up-by-hand.ts";
import { plainSlices, sameMonths } from "./plain-section.ts";

/** By hand: what joins the formulas to a build-up and its site. Temperatures linear in resistance, ISO 13788:2012 6.3. */

const site = (outdoor: AirMonths, rooms: Record<string, AirMonths>): Site => ({
  outdoor,
  rooms: new Map(Object.entries(rooms)),
});
const winter = site(sameMonths(0, 0.8), {
  indoor: sameMonths(20, 0.5),
  "damp room": sameMonths(24, 0.7),
  store: sameMonths(4, 0.8),
});

describe("direction of heat flow (ISO 6946:2017 6.8; the yearly sign is this project's rule)", () => {
  const year = (value: number): number[] => new Array(12).fill(value);
  test.each<[Element, number | null, number, string]>([
    ["wall", null, 0, "horizontal"],
    ["wall", null, 30, "horizontal"],
    ["partition", null, 0, "horizontal"],
    ["flat roof", null, 0, "upward"],
    ["flat roof", null, 30, "downward"],
    ["pitched roof", 35, 0, "upward"],
    ["pitched roof", 60, 0, "upward"],
    ["pitched roof", 61, 0, "horizontal"],
    ["floor", null, 0, "downward"],
    ["floor", null, 30, "upward"],
  ])("%s, pitch %d°, room 20 °C, far side %d °C: %s", (element, pitch, far, direction) => {
    expect(heatFlowDirection({ element, pitch }, year(20), year(far))).toBe(direction);
    expect(isUpright({ element, pitch })).toBe(direction === "horizontal");
  });

  it("months count by their days: 28 days of +31 K against 31 days of −28.5 K is −15.5 K·d", () => {
    const far = year(20);
    far[1] = 20 - 31;
    far[0] = 20 + 28.5;
    expect(heatFlowDirection({ element: "flat roof", pitch: null }, year(20), far)).toBe("downward");
  });
});

describe("temperatures of nodes by hand", () => {
  const roof = (more: Partial<BuildUp>): BuildUp => buildUp([resisting(0.86)], { element: "flat roof", ...more });
  const lastTemperature = (build: BuildUp): number => {
    const [section] = calculateBuildUp(build, winter).sections;
    return section!.climate.temperature[0]![section!.line.count - 1]!;
  };

  it("flat roof of R 0.86, 20 and 0 °C: total 1.00, room surface 18 °C, outer surface 0.8 °C", () => {
    const [section] = calculateBuildUp(roof({}), winter).sections;
    expect(section!.climate.temperature[0]![0]).toBeCloseTo(18, 12);
    expect(lastTemperature(roof({}))).toBeCloseTo(0.8, 12);
  });

  it("under a clear sky the outer end is at −2 °C: −2 + 22·0.04 = −1.12 °C, and the air keeps its vapour pressure", () => {
    expect(lastTemperature(roof({ clearSky: true }))).toBeCloseTo(-1.12, 12);
    const { farSide } = calculateBuildUp(roof({ clearSky: true }), winter);
    expect(farSide.months.temperature[0]).toBe(0);
    expect(farSide.months.vapourPressure[0]).toBeCloseTo(0.8 * 610.5, 9);
  });

  it("a partition has 0.13 on both faces: R 0.74, 20 and 24 °C, faces at 20.52 and 23.48 °C", () => {
    const partition = buildUp([resisting(0.74)], { element: "partition", faces: "damp room" });
    const { sections, heat } = calculateBuildUp(partition, winter);
    const { temperature } = sections[0]!.climate;
    expect(temperature[0]![0]).toBeCloseTo(20.52, 12);
    expect(temperature[0]!.at(-1)).toBeCloseTo(23.48, 12);
    expect(heat.transmittance).toBeCloseTo(1, 12);
  });

  it("nodes that are one in sd have the least saturation pressure of the group, whichever side is colder", () => {
    // R 0.24 sd 1; R 0.2 sd 0; R 0.24 sd 1; with 0.13 and 0.04 the total is 0.85: the group lies between R 0.37 and 0.57.
    const line = nodeLine(
      plainSlices([
        { resistance: 0.24, sd: 1 },
        { resistance: 0.2, sd: 0 },
        { resistance: 0.24, sd: 1 },
      ]),
    );
    expect(line.count).toBe(3);
    const between = (inside: number, outside: number) =>
      sectionClimate(line, sameMonths(inside, 0.5), sameMonths(outside, 0.5), 0.13, 0.04, 0);
    expect(between(20, 3).temperature[0]![1]).toBeCloseTo(20 - (17 * 0.57) / 0.85, 12);
    expect(between(3, 20).temperature[0]![1]).toBeCloseTo(3 + (17 * 0.37) / 0.85, 12);
    expect(between(20, 3).saturation[0]![1]).toBeCloseTo(saturationPressure(8.6), 9);
  });

  it("a surface has no more vapour than saturation at it, or else that of its air", () => {
    const thin = buildUp([resisting(0.03)]);
    const { sections } = calculateBuildUp(thin, winter);
    // Total 0.20: surface 20 − 20·0.13/0.2 = 7 °C, 1001.9 Pa, under the air's 1168.5 Pa
    const { climate } = sections[0]!;
    expect(climate.temperature[0]![0]).toBeCloseTo(7, 12);
    expect(climate.insideSurface[0]).toBeCloseTo(saturationPressure(7), 9);
    expect(climate.outsideSurface[0]).toBe(winter.outdoor.vapourPressure[0]);
  });
});

describe("cuts (ISO 13788:2012 6.3, from memory): equal parts of at most 0.25 m²·K/W, air never", () => {
  test.each([
    [0.25, 1],
    [0.2501, 2],
    [0.5, 2],
    [1.1, 5],
    [3.7, 15],
  ])("R %d: %d parts", (resistance, parts) => {
    const line = nodeLine(plainSlices([{ resistance, sd: 1 }]));
    expect(line.count - 1).toBe(parts);
    expect(line.sd[1]).toBeCloseTo(1 / parts, 12);
    expect(line.resistanceFrom[1]).toBeCloseTo(resistance / parts, 12);
  });

  it("air of R 0.6 stays whole", () => {
    const [slice] = plainSlices([{ resistance: 0.6, sd: 0.01 }]);
    expect(nodeLine([{ ...slice!, isAir: true }]).count).toBe(2);
  });
});

describe("which μ", () => {
  const board = (dry: number, wet: number, lambda: number) =>
    solid(0.1, lambda, { material: material(lambda, dry, { vapourResistanceFactorWet: wet }) });
  const wall = buildUp([board(10, 5, 0.5), board(2, 1, 0.04), board(100, 50, 0.13)]);
  const sds = (vapourResistance: "dry" | "unfavourable"): number[] =>
    calculateBuildUp(wall, winter, { vapourResistance }).sections[0]!.slices.map(({ sd }) => sd);

  it("the main insulation is the layer with the largest resistance", () => {
    expect(mainInsulation(calculateBuildUp(wall, winter).heat.counted)?.index).toBe(1);
  });
  it("dry everywhere: 1, 0.2, 10 m", () =>
    expect(sds("dry")).toEqual([1, 0.2, 10].map((sd) => expect.closeTo(sd, 12))));
  it("unfavourable: the wet one up to the cold face of the main insulation, the dry one outside it: 0.5, 0.1, 10 m", () => {
    expect(sds("unfavourable")).toEqual([0.5, 0.1, 10].map((sd) => expect.closeTo(sd, 12)));
  });
});

describe("sections", () => {
  it("mortar is heat only: dry-lining battens over blocks make four paths and two sections", () => {
    const mortar = { ...framing("mortar", 0.067, 0.88), material: material(0.88, 15, { kind: "mineral" }) };
    const wall = buildUp([
      solid(0.089, 0.038, { framing: framing("battens", 0.12) }),
      solid(0.1, 0.11, { framing: mortar }),
    ]);
    const { heat, sections } = calculateBuildUp(wall, winter);
    expect(heat.paths).toHaveLength(4);
    expect(sections.map(({ name, path }) => [name, path.share])).toEqual([
      ["between framing", 0.88],
      ["through battens", 0.12],
    ]);
  });

  it("through the stud its timber stands in the layer's place: R 0.14/0.13, sd 50·0.14", () => {
    const wall = buildUp([solid(0.14, 0.038, { framing: framing("studs", 0.15), facingInner: 20 })]);
    const [between, through] = calculateBuildUp(wall, winter).sections;
    expect(between!.slices.map(({ sd }) => sd)).toEqual([20, 0.14]);
    expect(through!.slices.map(({ sd, resistance }) => [sd, resistance])).toEqual([
      [expect.closeTo(7, 12), 0.14 / 0.13],
    ]);
  });

  it("the worst governs: wool under a tight skin stays wet, the stud beside it holds less", () => {
    const wall = buildUp([solid(0.14, 0.038, { framing: framing("studs", 0.15) }), sheet(100)]);
    const { sections, governing } = calculateBuildUp(wall, winter);
    expect(sections.map(({ year }) => year.verdict)).toEqual(["stays wet", "stays wet"]);
    const [between, through] = sections.map(({ year }) => year.carriedOver);
    expect(between).toBeGreaterThan(2 * through!);
    expect(governing.name).toBe("between framing");
  });

  describe("a slightly ventilated layer is run closed and open, and the worse counts", () => {
    const gap = (ventilation: "none" | "slight" | "well") => air(0.025, { ventilation, ventilationArea: 0.001 });
    const damp = site(sameMonths(0, 0.95), { indoor: sameMonths(20, 0.85) });

    test.each([
      // Closed, the tight skin outside the air catches what the room gives; open, it is left out.
      [
        "closed",
        winter,
        (ventilation: "none" | "slight" | "well") => [resisting(3), gap(ventilation), solid(0.003, 0.2), sheet(100)],
      ],
      // Closed, the wool outside the air keeps the sheet warm; open, the sheet is near the outdoor air's temperature.
      [
        "open",
        damp,
        (ventilation: "none" | "slight" | "well") => [resisting(0.2), sheet(0.5), gap(ventilation), solid(0.3, 0.04)],
      ],
    ] as const)("%s", (counting, where, layers) => {
      const [closed, open, slight] = (["none", "well", "slight"] as const).map((each) =>
        calculateBuildUp(buildUp(layers(each)), where),
      );
      const left = { closed: closed!.governing.year.carriedOver, open: open!.governing.year.carriedOver };
      expect(left[counting]).toBe(Math.max(left.closed, left.open));
      expect(left.closed).not.toBe(left.open);
      expect(slight!.slightVentilationCase).toBe(counting);
      expect(slight!.governing.year.carriedOver).toBe(left[counting]);
      expect(slight!.heat.resistance).toBeCloseTo((closed!.heat.resistance + open!.heat.resistance) / 2, 12);
    });
  });

  it("no slightly ventilated layer: no case", () => {
    expect(calculateBuildUp(buildUp([resisting(1)]), winter).slightVentilationCase).toBeNull();
  });
});

describe("run on", () => {
  const tightSkin = buildUp([resisting(1), sheet(100)]);

  it("a section that only gains grows every year by what it gained in the first", () => {
    const { repeating, withinMonth } = calculateBuildUp(tightSkin, winter).sections[0]!;
    expect(repeating).toMatchObject({ settles: false });
    expect(repeating!.growthPerYear).toBeCloseTo(withinMonth.carriedOver, 9);
  });

  it("a dry section settles at once, one that dries out in its first year, both at nothing", () => {
    const dry = calculateBuildUp(buildUp([sheet(100), resisting(1)]), winter).sections[0]!;
    expect(dry.repeating).toEqual({ settles: true, years: 0, level: 0, growthPerYear: 0 });
    const swing = {
      temperature: [-5, -3, 3, 8, 14, 18, 20, 19, 15, 9, 3, -2],
      vapourPressure: new Array(12).fill(400),
    };
    const driesOut = calculateBuildUp(buildUp([resisting(2), sheet(2)]), site(swing, { indoor: sameMonths(20, 0.4) }))
      .sections[0]!;
    expect(driesOut.withinMonth.verdict).toBe("dries out");
    expect(driesOut.repeating).toMatchObject({ settles: true, years: 1, growthPerYear: 0 });
    expect(driesOut.repeating!.level).toBeLessThan(1e-6);
  });
});
