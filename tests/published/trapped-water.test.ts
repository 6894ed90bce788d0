import { describe, expect, test } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { waterFromReading } from "../../packages/core/src/further-checks/trapped-water/trapped-amount.ts";
import type { BuildUp, Layer, TrappedWater } from "../../packages/core/src/project/types.ts";
import type { TrappedWaterResult } from "../../packages/core/src/result/types.ts";
import { followTrappedWater } from "../../packages/core/src/year/trapped-water.ts";
import { checked, heatedRoom, layerOf, shippedClimate, siteOf, studs } from "../core/build-ups.ts";
import { air, buildUp, sheet } from "./build-up-by-hand.ts";
import { drivenSection, sameMonths } from "./plain-section.ts";

const OCTOBER = 9;
const DAY = 86_400;
const PERMEABILITY = 2e-10;

describe("closed form: one wet plane in open layers, the same air on both sides (ISO 13788:2012 clause 7, from memory)", () => {
  // Nothing can condense elsewhere, so the plane loses δ0·(psat − p)·(1/sd inside + 1/sd outside) until 1 g/m² is left.
  const rate = (temperature: number, humidity: number, inside: number, outside: number): number =>
    PERMEABILITY * (1 - humidity) * saturationPressure(temperature) * (1 / inside + 1 / outside) * DAY;
  const open = drivenSection(
    [
      { resistance: 0.1, sd: 2 },
      { resistance: 0.2, sd: 3 },
    ],
    sameMonths(15, 0.6),
    sameMonths(15, 0.6),
  );

  test.each([0.01, 1, 4])("%d kg/m²: days to dry, across the ends of months", (amount) => {
    const run = followTrappedWater(open, 1, amount, OCTOBER);
    expect(run.daysToDry).toBeCloseTo((amount - 0.001) / rate(15, 0.6, 2, 3), 6);
  });

  test("leaves to both sides as the inverse of their sd, nothing stands elsewhere", () => {
    const run = followTrappedWater(open, 1, 1, OCTOBER);
    expect(run.toRoom / run.toFarSide).toBeCloseTo(3 / 2, 9);
    expect(run.toRoom + run.toFarSide).toBeCloseTo(0.999, 12);
    expect(run).toMatchObject({ mostHeldElsewhere: 0, nodeElsewhere: null });
  });

  test("dries at each month's own rate", () => {
    const temperature = [2, 3, 6, 9, 13, 16, 18, 18, 14, 10, 6, 3];
    const months = { temperature, vapourPressure: temperature.map((degrees) => 0.8 * saturationPressure(degrees)) };
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let left = 1 - 0.001;
    let expected = 0;
    for (let month = OCTOBER; ; month = (month + 1) % 12) {
      const perDay = rate(temperature[month]!, 0.8, 2, 3);
      if (perDay * days[month]! >= left) {
        expected += left / perDay;
        break;
      }
      left -= perDay * days[month]!;
      expected += days[month]!;
    }
    const seasons = drivenSection(
      [
        { resistance: 0.1, sd: 2 },
        { resistance: 0.2, sd: 3 },
      ],
      months,
      months,
    );
    expect(followTrappedWater(seasons, 1, 1, OCTOBER).daysToDry).toBeCloseTo(expected, 6);
    expect(expected).toBeGreaterThan(100);
  });

  test("no water, or less than 1 g/m², is dry at once", () => {
    expect(followTrappedWater(open, 1, 0, OCTOBER)).toMatchObject({ daysToDry: 0, toRoom: 0, toFarSide: 0 });
    expect(followTrappedWater(open, 1, 0.0009, OCTOBER).daysToDry).toBe(0);
  });

  test("between two sides that let nothing out it stays for the ten years", () => {
    const closed = drivenSection(
      [
        { resistance: 0.1, sd: 1e5 },
        { resistance: 0.1, sd: 1e5 },
      ],
      sameMonths(15, 0.6),
      sameMonths(15, 0.6),
    );
    const run = followTrappedWater(closed, 1, 1, OCTOBER);
    expect(run.daysToDry).toBeNull();
    expect(run.held).toHaveLength(120);
    expect(run.held[119]![1]).toBeCloseTo(1 - 3650 * rate(15, 0.6, 1e5, 1e5), 9);
  });

  test.each([
    [0, 1],
    [2, 1],
    [1, -1],
    [1, Number.NaN],
    [Number.NaN, 1],
  ])("water at node %d, %d kg/m², is refused", (node, amount) => {
    expect(() => followTrappedWater(open, node, amount, OCTOBER)).toThrow(RangeError);
  });
});

const room = heatedRoom({ kind: "class", class: 2 });
const site = siteOf(shippedClimate("maastricht"), room);
const fill = layerOf("cellulose blown", 160, { framing: studs });
const polythene = layerOf("polyethylene sheet 0.15 mm");
const wall = (layers: Layer[], ...trappedWater: TrappedWater[]): BuildUp => buildUp(layers, { trappedWater });
const water = (layer: number, more: Partial<TrappedWater> = {}): TrappedWater => ({
  layer,
  amount: 1,
  reading: null,
  startMonth: OCTOBER,
  ...more,
});
const resultOf = (built: BuildUp): TrappedWaterResult => checked(built, site, room).checks.trappedWater[0]!;

describe("the check of a build-up", () => {
  const twoSheets = [
    layerOf("gypsum plasterboard", 12.5),
    polythene,
    fill,
    { ...polythene, name: "outer sheet" },
    air(0.025, { ventilation: "well" }),
  ];
  const openBoards = [
    layerOf("gypsum plasterboard", 12.5),
    layerOf("oriented strand board", 15),
    fill,
    layerOf("fibreboard 400", 18),
    air(0.025, { ventilation: "well" }),
  ];

  test("between two sheets of 50 m: within the clause's scope, not dry within ten years, the water stands at the cold sheet", () => {
    const result = resultOf(wall(twoSheets, water(2)));
    expect(result).toMatchObject({
      layer: 2,
      withinScope: true,
      daysToDry: null,
      startMonth: "October",
      section: "between framing",
    });
    expect(result.elsewhere).toBe("between cellulose blown and outer sheet");
    expect(result.mostHeldElsewhere).toBeGreaterThan(0.9);
    expect(result.held).toHaveLength(120);
    expect(result.heldElsewhere[119]! + result.held[119]! + result.toRoom + result.toFarSide).toBeCloseTo(1, 9);
  });

  test("changes are ranked, fastest first, and each is what that build-up itself would do", () => {
    const { variants } = resultOf(wall(twoSheets, water(2)));
    const days = variants.map(({ daysToDry }) => daysToDry ?? Number.POSITIVE_INFINITY);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(variants).toHaveLength(3);
    const changedLike = (words: string): number | null =>
      variants.find(({ change }) => change.startsWith(words))!.daysToDry;
    const replaced = (index: number, layer: Layer): Layer[] => twoSheets.map((old, at) => (at === index ? layer : old));
    expect(changedLike("with a breather membrane")).toBeCloseTo(
      resultOf(wall(replaced(3, sheet(0.2)), water(2))).daysToDry!,
      9,
    );
    expect(changedLike("without the vapour layer")).toBeCloseTo(
      resultOf(wall([twoSheets[0]!, ...twoSheets.slice(2)], water(1))).daysToDry!,
      9,
    );
    expect(changedLike("with the vapour layer ten times")).toBe(
      resultOf(wall(replaced(1, sheet(5)), water(2))).daysToDry,
    );
  });

  test("what a layer is required for is never opened", () => {
    const required = [
      ...twoSheets.slice(0, 3),
      { ...polythene, purpose: "damp-proof membrane" as const },
      twoSheets[4]!,
    ];
    expect(resultOf(wall(required, water(2))).variants.map(({ change }) => change)).not.toContainEqual(
      expect.stringContaining("breather"),
    );
  });

  test("between open boards: beyond the clause's scope, dry within a season", () => {
    const result = resultOf(wall(openBoards, water(2)));
    expect(result.withinScope).toBe(false);
    expect(result.daysToDry).toBeLessThan(120);
    expect(result.toFarSide).toBeGreaterThan(result.toRoom);
    expect(result.variants.map(({ change }) => change)).toContain(
      "with an open wood fibre board instead of fibreboard 400",
    );
  });

  test("with one tight side only it is beyond the clause's scope", () => {
    const tightInside = twoSheets.map((layer, at) => (at === 3 ? layerOf("breather membrane") : layer));
    const tightOutside = twoSheets.map((layer, at) => (at === 1 ? layerOf("breather membrane") : layer));
    expect(resultOf(wall(tightInside, water(2))).withinScope).toBe(false);
    expect(resultOf(wall(tightOutside, water(2))).withinScope).toBe(false);
  });

  test("of several ways through the wet layer the one that dries slowest is told", () => {
    const battens = { ...studs, name: "battens" };
    const outer = layerOf("wood fibre insulation board", 60, { framing: battens });
    const result = resultOf(
      wall(
        [layerOf("gypsum plasterboard", 12.5), layerOf("oriented strand board", 15), fill, outer, openBoards[4]!],
        water(2),
      ),
    );
    const alone = (layer: Layer): number =>
      resultOf(
        wall(
          [layerOf("gypsum plasterboard", 12.5), layerOf("oriented strand board", 15), fill, layer, openBoards[4]!],
          water(2),
        ),
      ).daysToDry!;
    expect(result.section).toBe("through battens");
    expect(result.daysToDry).toBeCloseTo(alone(layerOf("softwood timber", 60)), 9);
    expect(result.daysToDry).toBeGreaterThan(alone(layerOf("wood fibre insulation board", 60)));
  });

  test("started in April it is gone sooner than started in October", () => {
    expect(resultOf(wall(openBoards, water(2, { startMonth: 3 }))).daysToDry).toBeLessThan(
      resultOf(wall(openBoards, water(2))).daysToDry!,
    );
  });

  test("a layer outside a well-ventilated one has no result", () => {
    const clad = [...twoSheets, layerOf("softwood timber", 20)];
    expect(checked(wall(clad, water(5)), site, room).checks.trappedWater).toEqual([]);
  });
});

describe("a moisture-meter reading", () => {
  test("worked by hand: 28 % in 90 mm of timber of 500 kg/m³ is 10 % of 45 kg, 4.5 kg/m²; 18 % and less are none", () => {
    expect(waterFromReading(0.28, 500, 0.09)).toBeCloseTo(4.5, 12);
    expect(waterFromReading(0.18, 500, 0.09)).toBe(0);
    expect(waterFromReading(0.12, 500, 0.09)).toBe(0);
    expect(() => waterFromReading(28, 500, 0.09)).toThrow(RangeError);
  });

  const reading = { amount: null, reading: 0.22 };

  test("of a timber layer lies in the layer", () => {
    const solidWall = wall(
      [layerOf("cross-laminated timber", 100), layerOf("wood fibre insulation board", 100)],
      water(0, reading),
    );
    expect(resultOf(solidWall)).toMatchObject({ section: "whole", amount: expect.closeTo(0.04 * 480 * 0.1, 12) });
  });

  test("in a layer that is no timber it is of the studs through it", () => {
    const framed = wall([layerOf("gypsum plasterboard", 12.5), fill, layerOf("fibreboard 250", 18)], water(1, reading));
    expect(resultOf(framed)).toMatchObject({ section: "through studs", amount: expect.closeTo(0.04 * 500 * 0.16, 12) });
  });
});
