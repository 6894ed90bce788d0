import { calculateBuildUp, saturationPressure } from "@warmside/core";
import {
  condensationYear,
  correctedTransmittance,
  limitsOfResistance,
  slabOnGround,
  suspendedFloor,
  vapourProfile,
} from "@warmside/core/formulas";
import { describe, expect, it } from "vitest";
import { buildUp, solid } from "./build-up-by-hand.ts";

describe("formulas by their names", () => {
  it("the limits of one bridged layer: worked by hand from ISO 6946:2017 clause 6.7.2", () => {
    const { upperLimit, lowerLimit, resistance, possibleError } = limitsOfResistance(
      [{ resistance: 0.05 }, { resistance: 4, framingResistance: 140 / 130 }],
      0.15,
      0.17,
    );
    const upper = 1 / (0.85 / (0.17 + 0.05 + 4) + 0.15 / (0.17 + 0.05 + 140 / 130));
    const lower = 0.17 + 0.05 + 1 / (0.85 / 4 + 0.15 / (140 / 130));
    expect(upperLimit).toBeCloseTo(upper, 12);
    expect(lowerLimit).toBeCloseTo(lower, 12);
    expect(resistance).toBeCloseTo((upper + lower) / 2, 12);
    expect(possibleError).toBeCloseTo((upper - lower) / (upper + lower), 12);
  });

  it("corrections under 3 % of U are left out (ISO 6946:2017 clause 7, from memory)", () => {
    expect(correctedTransmittance(0.3, [0.0089])).toBe(0.3);
    expect(correctedTransmittance(0.3, [0.005, 0.0045])).toBeCloseTo(0.3095, 12);
  });

  it("a slab and a suspended floor, worked by hand from ISO 13370:2017 equations 3 and 8", () => {
    const ground = {
      area: 100,
      perimeter: 40,
      wallThickness: 0.3,
      soil: "clay or silt",
      edgeInsulation: null,
      membrane: true,
    } as const;
    const dt = 0.3 + 1.5 * (0.17 + 0.5 + 0.04);
    expect(slabOnGround(ground, 0.5)).toBeCloseTo(
      ((2 * 1.5) / (Math.PI * 5 + dt)) * Math.log((Math.PI * 5) / dt + 1),
      12,
    );
    const space = {
      area: 40, perimeter: 26, wallThickness: 0.3, soil: "unknown", height: 0.3, wallTransmittance: 1.5, openings: 0.0015,
      windSpeed: 4, shelter: "average", groundInsulation: 0,
    } as const; // biome-ignore format: one table
    const B = 40 / 13;
    const dg = 0.3 + 2 * 0.21;
    const ug = ((2 * 2) / (Math.PI * B + dg)) * Math.log((Math.PI * B) / dg + 1);
    const ux = (2 * 0.3 * 1.5) / B + (1450 * 0.0015 * 4 * 0.05) / B;
    expect(suspendedFloor(space, 3)).toBeCloseTo(1 / (0.34 + 3 + 1 / (ug + ux)), 12);
  });

  it("one plane: 20.01 g/m² in 31 days (worked by hand: two straight lines to saturation)", () => {
    const { gain, pressure } = vapourProfile([0, 2, 2.5], [saturationPressure(20), 475.46, 401], 1168, 321);
    expect(pressure[1]).toBeCloseTo(475.46, 6);
    expect(gain[1]! * 31 * 86_400 * 1000).toBeCloseTo(20.01, 2);
  });

  it("a year from two arrays is the year of the same layers as a build-up", () => {
    const inside = { temperature: Array<number>(12).fill(20), vapourPressure: Array<number>(12).fill(1285) };
    const temperature = [-5, -3, 1, 6, 11, 15, 17, 16, 12, 7, 2, -3];
    const outside = { temperature, vapourPressure: temperature.map((each) => 0.8 * saturationPressure(each)) };
    const layers = [solid(0.1, 0.04), solid(0.02, 0.13)].map((layer, index) => ({
      ...layer,
      material: { ...layer.material, vapourResistanceFactorDry: index === 0 ? 1 : 50, vapourResistanceFactorWet: 1 },
    }));
    const figures = calculateBuildUp(buildUp(layers), { outdoor: outside, rooms: new Map([["indoor", inside]]) });
    const resistances = figures.governing.slices.map(({ resistance }) => resistance);
    const sds = figures.governing.slices.map(({ sd }) => sd);
    const year = condensationYear(resistances, sds, inside, outside);
    expect(year.verdict).toBe(figures.governing.year.verdict);
    expect(year.peak).toBeGreaterThan(0.01);
    expect(year.peak).toBeCloseTo(figures.governing.year.peak, 12);
    expect(Math.max(...year.held)).toBeCloseTo(year.peak, 12);
  });
});
