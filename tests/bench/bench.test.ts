import { describe, expect, it } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { temperaturesOf, WALLS } from "./over-floor.ts";
import { FINE_PART, ourYear, wetSection } from "./over-quadprog.ts";
import { sixLayerWall, surroundings } from "./six-layer-wall.ts";
import { isMet } from "./table.ts";
import { yearByQuadprog } from "./year-by-quadprog.ts";

const site = surroundings().sites.reported;

describe("what the benchmark measures is what it says", () => {
  for (const [verdict, sd] of Object.entries(WALLS)) {
    it(`the wall with a sheet of sd ${sd} m has six layers, two sections, and: ${verdict}`, () => {
      const calculation = calculateBuildUp(sixLayerWall(sd), site);
      expect(calculation.buildUp.layers).toHaveLength(6);
      expect(calculation.sections.map(({ name }) => name)).toEqual(["between framing", "through studs"]);
      expect(calculation.governing.year.verdict).toBe(verdict);
    });
  }

  it("the floor is one saturation pressure a node and month, the very ones of the calculation", () => {
    const wall = sixLayerWall(WALLS.dry);
    const { sections } = calculateBuildUp(wall, site);
    const temperatures = temperaturesOf(wall);
    expect(temperatures.length).toBe(12 * sections.reduce((sum, { line }) => sum + line.count, 0));
    const saturation = sections.flatMap(({ climate }) => climate.saturation.flatMap((nodes) => [...nodes]));
    expect([...temperatures].map(saturationPressure)).toEqual(saturation);
  });

  it.each([
    [22, undefined],
    [90, FINE_PART],
  ])("quadprog's year of %i nodes and ours are the same to a tenth of a milligram a m²", (nodes, largestPart) => {
    const section = wetSection(largestPart);
    expect(section.sd).toHaveLength(nodes);
    const ours = ourYear(section);
    const theirs = yearByQuadprog(section);
    expect(theirs.startMonth).toBe(ours.startMonth);
    expect(theirs.peak).toBeGreaterThan(0.01);
    expect(Math.abs(theirs.peak - ours.peak)).toBeLessThan(1e-7);
    expect(Math.abs(theirs.carriedOver - ours.carriedOver)).toBeLessThan(1e-7);
  });

  it("a year begun from the standard's months is the one worked out from its start", () => {
    for (const sd of [0.05, 0.1, 0.5, 1, 2, 3, 5]) {
      for (const { line, climate, dryYear, withinMonth } of calculateBuildUp(sixLayerWall(sd), site).sections) {
        const fromItsStart = sectionYear({ sd: line.sd, climate }, dryYear, "drying inside the month");
        expect(withinMonth).toEqual(fromItsStart);
      }
    }
  });

  it("a goal is met on the right side of it", () => {
    expect(isMet({ value: 4, goal: { atMost: 4 } })).toBe(true);
    expect(isMet({ value: 4.01, goal: { atMost: 4 } })).toBe(false);
    expect(isMet({ value: 299, goal: { atLeast: 300 } })).toBe(false);
    expect(isMet({ value: 1, goal: null })).toBeNull();
  });
});
