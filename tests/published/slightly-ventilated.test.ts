import { evaluate } from "mathjs";
import { describe, expect, it, test } from "vitest";
import { airGapCorrection, fastenerCorrection } from "../../packages/core/src/heat/corrections.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import { heatOfBuildUp } from "../../packages/core/src/heat/slight-ventilation.ts";
import { unheatedSpaceResistance } from "../../packages/core/src/heat/space-resistance.ts";
import type { Fasteners, RoofSpace, SolidLayer } from "../../packages/core/src/project/types.ts";
import { air, buildUp, framing, resisting, solid } from "./build-up-by-hand.ts";

/** Lining 0.05, insulation 2.5 in 0.1 m, air 0.18, brick 0.132 m²·K/W: RT,h 0.13 + 2.862 + 0.04 = 3.032. */
const insulation = (more: Partial<SolidLayer> = {}) => ({ ...resisting(2.5), ...more });
const wall = (
  area: number | null,
  ventilation: "none" | "slight" | "well" = "slight",
  more: Partial<SolidLayer> = {},
) =>
  buildUp([
    resisting(0.05),
    insulation(more),
    air(0.05, { resistance: 0.18, ventilation, ventilationArea: area }),
    resisting(0.132),
  ]);

describe("worked: a slightly ventilated cavity (ISO 6946:2017 6.9.3; four figures)", () => {
  it("RT,u 3.032 and RT,v 2.810 m²·K/W", () => {
    expect(calculateHeat(wall(null, "none"), "horizontal").resistance).toBeCloseTo(3.032, 12);
    expect(calculateHeat(wall(null, "well"), "horizontal").resistance).toBeCloseTo(2.81, 12);
  });

  test.each([
    [500, 0.3298],
    [800, 0.3372],
    [1000, 0.3423],
    [1500, 0.3559],
  ])("openings of %d mm² per metre: U %d", (area, expected) => {
    expect(heatOfBuildUp(wall(area * 1e-6), "horizontal").transmittance).toBeCloseTo(expected, 4);
  });

  it("openings not told: as well ventilated", () => {
    expect(heatOfBuildUp(wall(null), "horizontal").transmittance).toBeCloseTo(1 / 2.81, 12);
  });

  it("outside a well-ventilated layer nothing counts: U takes Rsi for Rse, temperatures keep 0.04", () => {
    const heat = calculateHeat(wall(null, "well"), "horizontal");
    expect(heat.counted).toHaveLength(2);
    expect(heat.endsAt).toBe(2);
    expect(heat.surfaceResistances).toEqual({ inside: 0.13, outside: 0.13, outsideForMoisture: 0.04 });
  });

  it("with framing, total resistances are interpolated and not transmittances: Av 1000, studs 15 % of λ 0.13", () => {
    const studs = { framing: framing("studs", 0.15) };
    // Insulation 2.5, stud 0.1/0.13 = 0.769231; lower part of both: 1/(0.85/2.5 + 0.15/0.769231) = 1.869159
    // closed: surfaces and the rest 0.532: upper 1/(0.85/3.032 + 0.15/1.301231) = 2.52739, lower 2.401159, RT,u 2.464276
    // open: 0.31: upper 1/(0.85/2.81 + 0.15/1.079231) = 2.26527, lower 2.179159, RT,v 2.222216; mean 2.343246
    expect(heatOfBuildUp(wall(0.001, "slight", studs), "horizontal").resistance).toBeCloseTo(2.343246, 4);
  });
});

describe("worked: corrections on RT,h 3.032, R1 2.5 in 0.1 m (ISO 6946:2017 Annex F; four figures)", () => {
  const ties = (perArea: number, conductivity: number, recess = 0): Fasteners => ({
    perArea,
    diameter: 0.004,
    conductivity,
    recess,
  });
  const stainless = ties(2.5, 17);

  it("air gaps of level 1: 0.006799; of level 2: four times that; of level 0: none", () => {
    expect(airGapCorrection("gaps", 2.5, 3.032)).toBeCloseTo(0.006799, 6);
    expect(airGapCorrection("gaps and air behind", 2.5, 3.032)).toBeCloseTo(4 * 0.0067987, 6);
    expect(airGapCorrection("continuous", 2.5, 3.032)).toBe(0);
  });

  it("2.5 stainless ties of 4 mm a m²: 0.002905", () => {
    expect(fastenerCorrection(stainless, 0.1, 2.5, 3.032)).toBeCloseTo(0.002905, 6);
  });

  it("4 steel ties a m²: 0.01367", () => {
    expect(fastenerCorrection(ties(4, 50), 0.1, 2.5, 3.032)).toBeCloseTo(0.01367, 5);
  });

  it("recessed by 20 mm: d1 0.08 m, R1 that of 0.08 m, 2.0 (by hand)", () => {
    // 0.8·(0.08/0.1)·17·1.256637e-5·2.5/0.08·(2.0/3.032)² = 0.00427257·0.435112
    expect(fastenerCorrection(ties(2.5, 17, 0.02), 0.1, 2.5, 3.032)).toBeCloseTo(0.00427257 * 0.435112, 8);
  });

  it("falls with every millimetre of recess, with the square of what is left in the layer, to nothing", () => {
    const whole = fastenerCorrection(stainless, 0.1, 2.5, 3.032);
    let before = whole;
    for (let millimetres = 1; millimetres < 100; millimetres += 1) {
      const value = fastenerCorrection(ties(2.5, 17, millimetres / 1000), 0.1, 2.5, 3.032);
      expect(value).toBeLessThan(before);
      expect(value / whole).toBeCloseTo((1 - millimetres / 100) ** 2, 9);
      before = value;
    }
    for (const recess of [0.1, 0.2]) expect(fastenerCorrection(ties(2.5, 17, recess), 0.1, 2.5, 3.032)).toBe(0);
  });

  it("the working printed comes to the value, recessed or not", () => {
    for (const recess of [0, 0.02, 0.2]) {
      const heat = calculateHeat(wall(null, "none", { fasteners: ties(4, 50, recess) }), "horizontal");
      const { formula, value } = heat.corrections[0]!;
      const worked = formula.startsWith("0:") ? 0 : evaluate(formula.replaceAll("×", "*").replaceAll("²", "^2"));
      expect(worked, formula).toBeCloseTo(value, 5);
    }
  });

  it("level 1 and stainless ties together stay under 3 % of U 0.3298: left out, and told", () => {
    const heat = calculateHeat(wall(null, "none", { fit: "gaps", fasteners: stainless }), "horizontal");
    expect(heat.corrections.map(({ value }) => value)).toEqual([
      expect.closeTo(0.006799, 6),
      expect.closeTo(0.002905, 6),
    ]);
    expect(heat.correctionsLeftOut).toBe(true);
    expect(heat.correction).toBe(0);
    expect(heat.transmittance).toBeCloseTo(1 / 3.032, 12);
  });

  it("steel ties are over 3 %: added", () => {
    const heat = calculateHeat(wall(null, "none", { fasteners: ties(4, 50) }), "horizontal");
    expect(heat.correctionsLeftOut).toBe(false);
    expect(heat.correction).toBeCloseTo(0.01367, 5);
    expect(heat.transmittance).toBeCloseTo(1 / 3.032 + 0.01367, 5);
  });

  it("with framing RT,h is the resistance without bridging", () => {
    const bridged = calculateHeat(
      wall(null, "none", { fit: "gaps and air behind", framing: framing("studs", 0.15) }),
      "horizontal",
    );
    expect(bridged.corrections[0]!.value).toBeCloseTo(0.04 * (2.5 / 3.032) ** 2, 12);
  });
});

describe("resistance of spaces outside the layers", () => {
  test.each<[RoofSpace, number]>([
    ["tiles without underlay", 0.06],
    ["felt or boards", 0.2],
    ["felt or boards, low emissivity", 0.3],
  ])("ISO 6946:2017 Table 9 (from memory), roof void: %s %d m²·K/W", (roofSpace, resistance) => {
    const ceiling = buildUp([solid(0.0125, 0.25), resisting(4)], { element: "flat roof", roofSpace });
    // Rsi 0.10, plasterboard 0.05, wool 4, void, Rse 0.04
    expect(calculateHeat(ceiling, "upward").resistance).toBeCloseTo(4.19 + resistance, 12);
  });

  it("by hand: a store next door, Ai 24, walls 30 m² of U 0.5, 60 m³ at one change an hour", () => {
    // 24/(30·0.5 + 0.33·1·60) = 24/34.8
    const space = { area: 24, external: [{ area: 30, transmittance: 0.5 }], airChanges: 1, volume: 60 };
    expect(unheatedSpaceResistance(space)).toBeCloseTo(24 / 34.8, 12);
    const partition = buildUp([resisting(2)], { element: "partition", faces: "store", space });
    // Room-side value on both faces: 0.13 + 2 + 0.13 + 0.689655
    expect(calculateHeat(partition, "horizontal").resistance).toBeCloseTo(2.26 + 0.689655, 6);
  });

  it("infinite ventilation of the space leaves no resistance", () => {
    const space = { area: 24, external: [{ area: 30, transmittance: 0.5 }], airChanges: 1e9, volume: 60 };
    expect(unheatedSpaceResistance(space)).toBeLessThan(1e-8);
  });
});
