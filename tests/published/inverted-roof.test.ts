import { describe, expect, it } from "vitest";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import { insulationOverSkin, rainCorrection } from "../../packages/core/src/heat/inverted-roof.ts";
import type { BuildUp, Layer } from "../../packages/core/src/project/types.ts";
import { air, buildUp, material, solid } from "./build-up-by-hand.ts";

/** ΔUr = p·f·x·(R1/RT)², f·x 0.04 for butt joints under open ballast. Source: ISO 6946:2017 Annex F (from memory). */
describe("rain below the insulation of an inverted roof", () => {
  const concrete = solid(0.2, 1.65);
  const skin = solid(0.005, 0.23, { material: { ...material(0.23, 50_000), group: "roofing", kind: "plastic" } });
  const foam = solid(0.12, 0.033);
  const stones = solid(0.05, 2);
  /** 2 mm a day, in m/s. */
  const RAIN = 0.002 / 86_400;
  const roof = (layers: Layer[], more: Partial<BuildUp> = {}): BuildUp =>
    buildUp(layers, { element: "flat roof", pitch: 2, rainOfHeatingSeason: RAIN, ...more });

  it("worked: R1 3.636 of 3.944, 2 mm a day: 2 × 0.04 × 0.9220² = 0.0680", () => {
    expect(rainCorrection(2, 3.636, 3.944)).toBeCloseTo(0.068, 4);
    const { corrections, correction, transmittance, resistance } = calculateHeat(
      roof([concrete, skin, foam, stones]),
      "upward",
    );
    // 0.10 + 0.1212 + 0.0217 + 3.6364 + 0.025 + 0.04 = 3.9443
    expect(corrections).toHaveLength(1);
    expect(correction).toBeCloseTo(0.08 * (3.63636 / 3.9443) ** 2, 5);
    expect(transmittance).toBeCloseTo(1 / resistance + correction, 12);
  });

  it("without rain given nothing is added, and no other roof takes it", () => {
    const inverted = [concrete, skin, foam, stones];
    expect(insulationOverSkin(roof(inverted))).toEqual([2]);
    expect(calculateHeat(roof(inverted, { rainOfHeatingSeason: null }), "upward").corrections).toEqual([]);
    for (const other of [
      roof([concrete, foam, skin]),
      roof([concrete, skin, foam, skin]),
      roof(inverted, { element: "wall" }),
      roof(inverted, { element: "pitched roof", pitch: 70 }),
      roof([concrete, foam, air(0.05, { ventilation: "well" }), solid(0.015, 1)]),
    ]) {
      expect(insulationOverSkin(other)).toEqual([]);
      expect(calculateHeat(other, "upward").corrections).toEqual([]);
    }
  });
});
