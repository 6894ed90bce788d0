import { describe, expect, it, test } from "vitest";
import { VAPOUR_PERMEABILITY_OF_AIR } from "../../packages/core/src/constants.ts";
import { sdFromPerms, sdFromVapourResistance } from "../../packages/core/src/quantities/convert.ts";
import { coreSd, layerSd, sdWithGaps } from "../../packages/core/src/vapour/layer-sd.ts";
import { air, material, sheet, solid } from "./build-up-by-hand.ts";

describe("vapour units (unit definitions; δ0 of ISO 13788:2012, from memory)", () => {
  it("still air lets 2·10⁻¹⁰ kg/(m·s·Pa) through", () => expect(VAPOUR_PERMEABILITY_OF_AIR).toBe(2e-10));
  it("1 MN·s/g is an sd of 0.2 m", () => expect(sdFromVapourResistance(1)).toBeCloseTo(0.2, 12));
  it("250 MN·s/g is an sd of 50 m", () => expect(sdFromVapourResistance(250)).toBeCloseTo(50, 10));
  it("1 US perm, 5.72·10⁻¹¹ kg/(m²·s·Pa), is an sd of 3.497 m", () => expect(sdFromPerms(1)).toBeCloseTo(3.497, 3));
  it("one grain an hour, square foot and inch of mercury is that perm (worked from the definition)", () => {
    // grain 64.79891e-6 kg, foot² 0.09290304 m², inch of mercury 3386.389 Pa at 0 °C
    const perm = 64.79891e-6 / (3600 * 0.09290304 * 3386.389);
    expect(sdFromPerms(1) / (VAPOUR_PERMEABILITY_OF_AIR / perm)).toBeCloseTo(1, 3);
  });
});

describe("worked: gaps in a sheet of sd 50 m, air of 0.01 m in them (four figures)", () => {
  test.each([
    [1e-4, 33.34, 2],
    [1e-3, 8.335, 3],
    [1e-2, 0.9806, 4],
  ])("a share of %d leaves %d m", (share, expected, decimals) => {
    expect(sdWithGaps(50, share)).toBeCloseTo(expected, decimals);
    expect(coreSd(sheet(50, { gaps: { share, laps: null } }), "dry")).toBeCloseTo(expected, decimals);
  });

  it("no gap leaves the sheet, nothing but gap leaves the air", () => {
    expect(sdWithGaps(50, 0)).toBe(50);
    expect(sdWithGaps(50, 1)).toBeCloseTo(0.01, 12);
  });

  it.each([
    [0, 0.1],
    [Number.NaN, 0.1],
    [50, -0.1],
    [50, 1.1],
    [50, Number.NaN],
  ])("refuses sd %d with a share of %d", (sd, share) => {
    expect(() => sdWithGaps(sd, share)).toThrow(RangeError);
  });
});

describe("sd of layers (ISO 13788:2012, from memory)", () => {
  it("is μ·d, dry or wet: 11 mm of μ 50 and 30 is 0.55 and 0.33 m", () => {
    const board = solid(0.011, 0.13, { material: material(0.13, 50, { vapourResistanceFactorWet: 30 }) });
    expect(layerSd(board, "dry")).toBeCloseTo(0.55, 12);
    expect(layerSd(board, "wet")).toBeCloseTo(0.33, 12);
  });

  it("an air layer has 0.01 m whatever its thickness", () => {
    expect(layerSd(air(0.005), "dry")).toBe(0.01);
    expect(layerSd(air(0.3), "wet")).toBe(0.01);
  });

  it("facings add to the board between them", () => {
    const faced = solid(0.05, 0.022, { material: material(0.022, 60), facingInner: 1500, facingOuter: 20 });
    expect(layerSd(faced, "dry")).toBeCloseTo(1523, 9);
  });
});
