import { describe, expect, it, test } from "vitest";
import { airLayerResistance } from "../../packages/core/src/heat/air-layer-resistance.ts";
import { countedLayers } from "../../packages/core/src/heat/counted-layers.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import type { HeatFlowDirection } from "../../packages/core/src/result/words.ts";
import { air, buildUp, framing, solid } from "./build-up-by-hand.ts";
import { printedNumbers } from "./printed-table.ts";

const directions = ["upward", "horizontal", "downward"] as const;
const table = printedNumbers("air-layer-resistance", "thickness_mm", ...directions);

describe("ISO 6946:2017 Table 8 (from memory), air layers with ε 0.9 on both sides [m²·K/W]", () => {
  const cases = table.flatMap((row) =>
    directions.map((direction) => [row.thickness_mm, direction, row[direction]] as const),
  );
  test.each(cases)("%d mm, %s: %d after rounding to two decimals", (thickness, direction, printed) => {
    expect(Number(airLayerResistance(thickness / 1000, direction, 0.9, 0.9).toFixed(2))).toBe(printed);
  });
});

describe("worked: air layers with foil, and divided ones (ISO 6946:2017 Annex D; four figures)", () => {
  // hr of black faces: 4 · 5.67e-8 · 283.15³ = 5.14870
  test.each<[string, number, HeatFlowDirection, number, number, number | undefined, number]>([
    // 1/(1.25 + 5.1487/20.1111) = 1/(1.25 + 0.25601)
    ["25 mm, ε 0.05 and 0.9, horizontal", 0.025, "horizontal", 0.05, 0.9, undefined, 0.664],
    ["25 mm, ε 0.05 and 0.9, upward: 1/(1.95 + 0.25601)", 0.025, "upward", 0.05, 0.9, undefined, 0.4533],
    ["25 mm, ε 0.05 and 0.9, downward: 1/(1.00 + 0.25601)", 0.025, "downward", 0.05, 0.9, undefined, 0.7962],
    ["25 mm, ε 0.2 and 0.9, horizontal: 1/(1.25 + 5.1487/5.1111)", 0.025, "horizontal", 0.2, 0.9, undefined, 0.443],
    ["25 mm, ε 0.9, divided at 50 mm", 0.025, "horizontal", 0.9, 0.9, 0.05, 0.2092],
    // ha = 0.025/0.012 = 2.0833
    [
      "12 mm, ε 0.05 and 0.9, horizontal: conduction rules, 1/(2.0833 + 0.25601)",
      0.012,
      "horizontal",
      0.05,
      0.9,
      undefined,
      0.4275,
    ],
    // ha = 0.12·0.1^−0.44 = 0.33051; hr = 5.1487/5.11111 = 1.00736
    ["100 mm, ε 0.2 and 0.9, downward: 1/(0.33051 + 1.00736)", 0.1, "downward", 0.2, 0.9, undefined, 0.7475],
    // d/b 0.25: 2/(1 + 1.030776 − 0.25) = 1.123106; hr = 5.1487/(0.222222 + 1.123106) = 3.82709
    ["25 mm, ε 0.9, divided at 100 mm: 1/(1.25 + 3.82709)", 0.025, "horizontal", 0.9, 0.9, 0.1, 0.197],
    // d/b 1: 2/(1 + 1.414214 − 1) = 1.414214; hr = 5.1487/1.636436 = 3.14629
    ["50 mm, ε 0.9, divided at 50 mm, upward: 1/(1.95 + 3.14629)", 0.05, "upward", 0.9, 0.9, 0.05, 0.1962],
  ])("%s", (_, thickness, direction, inner, outer, width, expected) => {
    expect(airLayerResistance(thickness, direction, inner, outer, width)).toBeCloseTo(expected, 4);
  });

  it("a layer ten times as wide as it is thick is not divided", () => {
    expect(airLayerResistance(0.025, "horizontal", 0.9, 0.9, 0.25)).toBe(
      airLayerResistance(0.025, "horizontal", 0.9, 0.9),
    );
  });

  it("the two faces count alike", () => {
    expect(airLayerResistance(0.02, "upward", 0.05, 0.9)).toBeCloseTo(
      airLayerResistance(0.02, "upward", 0.9, 0.05),
      12,
    );
  });

  it.each([
    [0, 0.9, 1],
    [0.31, 0.9, 1],
    [Number.NaN, 0.9, 1],
    [0.02, 0, 1],
    [0.02, 1.01, 1],
    [0.02, Number.NaN, 1],
    [0.02, 0.9, 0],
    [0.02, 0.9, Number.NaN],
  ])("refuses thickness %d m, ε %d, width %d m", (thickness, emissivity, width) => {
    expect(() => airLayerResistance(thickness, "horizontal", emissivity, 0.9, width)).toThrow(RangeError);
    expect(() => airLayerResistance(thickness, "horizontal", 0.9, emissivity, width)).toThrow(RangeError);
  });
});

describe("limits of an air layer", () => {
  it("ε → 0: the resistance goes to 1/ha, 0.8 m²·K/W for 25 mm upright", () => {
    expect(airLayerResistance(0.025, "horizontal", 1e-9, 0.9)).toBeCloseTo(1 / 1.25, 6);
    expect(airLayerResistance(0.025, "horizontal", 1e-9, 0.9, 0.05)).toBeCloseTo(1 / 1.25, 6);
  });

  it("thickness → 0: the resistance goes to 0 as d/0.025", () => {
    expect(airLayerResistance(1e-6, "horizontal", 0.9, 0.9) / (1e-6 / 0.025)).toBeCloseTo(1, 3);
  });

  it("width → 0: strips see only framing, hr → 5.1487/(0.2222 + 2/0⁺) → hr of ever darker strips, R → 1/ha", () => {
    // √(1 + x²) − x → 0 as x = d/b grows: the view term goes to 2, so hr goes to 5.1487/2.2222 = 2.31691
    expect(airLayerResistance(0.025, "horizontal", 0.9, 0.9, 1e-4)).toBeCloseTo(1 / (1.25 + 2.31691), 3);
  });
});

describe("foil in a build-up", () => {
  const board = (outer: number, inner = 0.9) => solid(0.09, 0.022, { emissivityOuter: outer, emissivityInner: inner });
  const osb = solid(0.011, 0.13);
  const airOf = (build: BuildUp, direction: HeatFlowDirection): number =>
    countedLayers(build, direction).counted.find(({ layer }) => layer.type === "air")!.resistance;

  it("facing an air layer of a few centimetres adds resistance (common practice)", () => {
    const bright = calculateHeat(buildUp([board(0.05), air(0.025), osb]), "horizontal");
    const plain = calculateHeat(buildUp([board(0.9), air(0.025), osb]), "horizontal");
    expect(bright.resistance - plain.resistance).toBeCloseTo(0.664 - 0.1831, 4);
  });

  it("with no air layer in front of it adds none (common practice)", () => {
    const bright = calculateHeat(buildUp([board(0.05, 0.05), osb]), "horizontal");
    expect(bright.resistance).toBe(calculateHeat(buildUp([board(0.9), osb]), "horizontal").resistance);
  });

  it("on the room's surface adds none", () => {
    const bright = calculateHeat(buildUp([board(0.9, 0.05), air(0.025), osb]), "horizontal");
    expect(bright.resistance).toBe(calculateHeat(buildUp([board(0.9), air(0.025), osb]), "horizontal").resistance);
  });

  it("facing up, under the air of a roof, counts 0.2; facing down, 0.05", () => {
    const facingUp = buildUp([board(0.05), air(0.025), osb], { element: "flat roof" });
    const facingDown = buildUp([osb, air(0.025), board(0.9, 0.05)], { element: "flat roof" });
    expect(airOf(facingUp, "upward")).toBeCloseTo(airLayerResistance(0.025, "upward", 0.2, 0.9), 12);
    expect(airOf(facingDown, "upward")).toBeCloseTo(airLayerResistance(0.025, "upward", 0.05, 0.9), 12);
  });

  it("facing up, below the air of a floor, counts 0.2; facing down, 0.05", () => {
    const facingUp = buildUp([osb, air(0.025), board(0.9, 0.05)], { element: "floor" });
    const facingDown = buildUp([board(0.05), air(0.025), osb], { element: "floor" });
    expect(airOf(facingUp, "downward")).toBeCloseTo(airLayerResistance(0.025, "downward", 0.9, 0.2), 12);
    expect(airOf(facingDown, "downward")).toBeCloseTo(airLayerResistance(0.025, "downward", 0.05, 0.9), 12);
  });

  it("a roof steeper than 60° gathers no dust", () => {
    const steep = buildUp([board(0.05), air(0.025), osb], { element: "pitched roof", pitch: 65 });
    expect(airOf(steep, "horizontal")).toBeCloseTo(0.664, 4);
  });

  it("an emissivity stated for the air layer counts on one face", () => {
    expect(airOf(buildUp([osb, air(0.025, { emissivity: 0.05 }), osb]), "horizontal")).toBeCloseTo(0.664, 4);
  });

  it("studs at 400 mm divide a 50 mm air layer: clear width 355 mm under 500 mm", () => {
    const studs = {
      ...framing("studs", 0.15),
      origin: {
        kind: "width and spacing",
        width: 0.045,
        spacing: 0.4,
        otherTimber: 0.0375,
        otherTimberByDefault: false,
      } as const,
    };
    const divided = airOf(buildUp([osb, air(0.05, { framing: studs }), osb]), "horizontal");
    expect(divided).toBeCloseTo(airLayerResistance(0.05, "horizontal", 0.9, 0.9, 0.355), 12);
    expect(divided).not.toBeCloseTo(airLayerResistance(0.05, "horizontal", 0.9, 0.9), 4);
  });

  it("a stated resistance stands as it is", () => {
    expect(airOf(buildUp([osb, air(0.025, { resistance: 0.09 }), osb]), "horizontal")).toBe(0.09);
  });
});
