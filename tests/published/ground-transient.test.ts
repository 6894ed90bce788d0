import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { resistanceOfGround, slabTransmittance } from "../../packages/core/src/heat/ground-floor.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import { temperatureFactor } from "../../packages/core/src/heat/temperature-factor.ts";
import type { Ground } from "../../packages/core/src/project/types.ts";
import { yearlyMean } from "../../packages/core/src/surroundings/far-side-months.ts";
import { buildUp, resisting } from "./build-up-by-hand.ts";
import { yearOfFloor } from "./ground-in-two-dimensions.ts";

/** 100 m² of slab with 40 m of edge on clay, a screed of 65 mm on 100 mm of concrete, a room held at 20 °C. */
const SLAB: Ground = {
  area: 100,
  perimeter: 40,
  wallThickness: 0.3,
  soil: "clay or silt",
  edgeInsulation: null,
  membrane: true,
};
const FLOOR = 0.065 / 1.4 + 0.1 / 1.15;
/** Rsi for surface humidity [m²·K/W]. Source: ISO 13788:2012 Table 2 (from memory). */
const HUMID = 0.25;
/** Rsi of a floor, for heat [m²·K/W]. Source: ISO 6946:2017 Table 7 (from memory). */
const FOR_HEAT = 0.17;

const OUTSIDE = readFileSync(new URL("../../climate/heathrow.csv", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => /^[A-Z]/.test(line))
  .map((line) => Number(line.split(",")[1]));
const AIR = { inside: OUTSIDE.map((outdoors) => Math.max(20, outdoors)), outside: OUTSIDE };

/** λ and ρ·c of clay: ISO 13370:2017 Table 7 (from memory). A strip 5 m wide has the slab's B of 5 m. */
const strip = (surfaceInside: number, wall: number): Parameters<typeof yearOfFloor>[0] => ({
  halfWidth: 2.5,
  wall,
  surfaceInside,
  floor: FLOOR,
  surfaceOutside: 0.04,
  conductivity: 1.5,
  heatCapacity: 3e6,
});

/** The solution as the surface's humidity asks for it, worked out once for each wall. */
const YEARS = new Map<number, ReturnType<typeof yearOfFloor>>();
function humidYear(wall: number): ReturnType<typeof yearOfFloor> {
  const year = YEARS.get(wall) ?? yearOfFloor(strip(HUMID, wall), AIR);
  YEARS.set(wall, year);
  return year;
}

describe("a slab on the ground against Fourier's equation in two dimensions, over a year that repeats itself", () => {
  const heat = calculateHeat(
    buildUp([resisting(FLOOR)], { element: "floor", faces: "ground", ground: SLAB }),
    "downward",
  );
  const modelFactor = temperatureFactor(FLOOR, heat.surfaceResistances.outsideForMoisture);
  const groundMean = yearlyMean(OUTSIDE);

  it("the climate is read whole", () => expect(OUTSIDE).toHaveLength(12));

  it("the slab's transmittance is the solution's, to 5 % (ISO 13370 is a fit to such solutions)", () => {
    const { meanFlow } = yearOfFloor(strip(FOR_HEAT, 0.3), AIR);
    const { transmittance } = slabTransmittance(SLAB, FLOOR);
    expect(meanFlow / (yearlyMean(AIR.inside) - groundMean) / transmittance).toBeGreaterThan(0.95);
    expect(meanFlow / (yearlyMean(AIR.inside) - groundMean) / transmittance).toBeLessThan(1.05);
  });

  it("layers and ground together have the slab's own transmittance, and the factor is 0.86 or 0.87, not 0.37", () => {
    const { transmittance } = slabTransmittance(SLAB, FLOOR);
    expect(heat.groundResistance).toBe(resistanceOfGround(transmittance, FLOOR));
    expect(1 / (FOR_HEAT + FLOOR + heat.groundResistance!)).toBeCloseTo(transmittance, 12);
    expect(modelFactor).toBeGreaterThan(0.855);
    expect(modelFactor).toBeLessThan(0.875);
  });

  it("the surface lies where the solution has it in the year's mean, to 0.15 K, and in no month is it further off than 0.5 K", () => {
    const { surface } = humidYear(0.3);
    const model = AIR.inside.map((inside) => groundMean + modelFactor * (inside - groundMean));
    expect(Math.abs(yearlyMean(model) - yearlyMean(surface))).toBeLessThan(0.15);
    for (const [month, value] of surface.entries()) expect(Math.abs(value - model[month]!)).toBeLessThan(0.5);
  });

  it("in August the surface is at 19.0 to 19.4 °C, edge to middle; at the edge in February at 15.9 °C, told as a junction", () => {
    const { surface, edge } = humidYear(0.3);
    expect(edge[7]!).toBeGreaterThan(18.95);
    expect(surface[7]!).toBeLessThan(19.4);
    expect(edge[1]!).toBeCloseTo(15.9, 1);
  });

  it.each([
    // The same scene worked out once as a mean and eight harmonics of the year, in numpy and SciPy's sparse LU, cells of
    // 2 mm at the edge: no stepping in time at all. Edge and mean of the floor in February [°C], flow over difference.
    { wall: 0.3, edge: 15.86, floor: 18.55, transmittance: 0.538 },
    { wall: 0.1, edge: 14.82, floor: 18.38, transmittance: 0.585 },
    { wall: 0.02, edge: 13.87, floor: 18.27, transmittance: 0.614 },
  ])("a wall of $wall m: as harmonics have it, without steps in time", ({ wall, ...expected }) => {
    const { surface, edge, meanFlow } = humidYear(wall);
    expect(Math.abs(edge[1]! - expected.edge)).toBeLessThan(0.07);
    expect(Math.abs(surface[1]! - expected.floor)).toBeLessThan(0.05);
    expect(meanFlow / (yearlyMean(AIR.inside) - groundMean)).toBeCloseTo(expected.transmittance, 2);
  });

  it("two metres of soil, as ISO 13788 is remembered to ask for, come to the same factor within 0.02", () => {
    expect(Math.abs(temperatureFactor(FLOOR + 2 / 1.5, 0) - modelFactor)).toBeLessThan(0.02);
  });
});
