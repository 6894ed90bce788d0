import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculateBuildUp, type SectionCalculation } from "../../packages/core/src/calculate-build-up.ts";
import type { BuildUp, Layer } from "../../packages/core/src/project/types.ts";
import { nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import { sectionClimate } from "../../packages/core/src/vapour/section-climate.ts";
import { sectionYear } from "../../packages/core/src/year/section-year.ts";
import { yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { hold } from "../hold.ts";
import { plainSlices } from "../published/plain-section.ts";
import { between, sections } from "../published/random-sections.ts";
import { situations } from "./random-build-ups.ts";

/** Water to within a tenth of a milligram a m²: mirrored sums are added in another order. */
const sameWater = (one: number, other: number): void => {
  hold(Math.abs(one - other) < 1e-7 + 1e-9 * Math.abs(one), () => `${one} and, mirrored, ${other}`);
};

function expectMirrored(
  own: Pick<SectionCalculation, "year" | "withinMonth">,
  mirrored: Pick<SectionCalculation, "year" | "withinMonth">,
): void {
  for (const kind of ["year", "withinMonth"] as const) {
    expect(mirrored[kind].verdict).toBe(own[kind].verdict);
    expect(mirrored[kind].startMonth).toBe(own[kind].startMonth);
    sameWater(mirrored[kind].writtenOff, own[kind].writtenOff);
    own[kind].held.forEach((held, month) => {
      const other = mirrored[kind].held[month]!;
      expect(other.length).toBe(held.length);
      for (const [node, amount] of held.entries()) sameWater(amount, other[held.length - 1 - node]!);
    });
  }
}

describe("law: section, airs and surface resistances mirrored: water mirrored", () => {
  it("300 random sections", () => {
    fc.assert(
      fc.property(sections, between(0.04, 0.25), between(0.04, 0.25), ({ layers, inside, outside }, rsi, rse) => {
        const yearsOf = (mirrored: boolean) => {
          const line = nodeLine(plainSlices(mirrored ? layers.toReversed() : layers));
          const climate = mirrored
            ? sectionClimate(line, outside, inside, rse, rsi, 0)
            : sectionClimate(line, inside, outside, rsi, rse, 0);
          const driven = { sd: line.sd, climate };
          const dryYear = yearFromDry(driven);
          return {
            year: sectionYear(driven, dryYear, "standard"),
            withinMonth: sectionYear(driven, dryYear, "drying inside the month"),
          };
        };
        expectMirrored(yearsOf(false), yearsOf(true));
      }),
      { numRuns: 300, seed: 2, endOnFailure: true },
    );
  });
});

describe("law: a partition written from the other room gives the same U and the same water, mirrored", () => {
  const closed = (layer: Layer): Layer =>
    layer.type === "air" ? { ...layer, ventilation: "none", emissivity: null } : layer;
  const turned = (layer: Layer): Layer =>
    layer.type === "air"
      ? layer
      : {
          ...layer,
          emissivityInner: layer.emissivityOuter,
          emissivityOuter: layer.emissivityInner,
          facingInner: layer.facingOuter,
          facingOuter: layer.facingInner,
        };

  it("300 random build-ups, framing, sheets, facings and gaps among their layers", () => {
    fc.assert(
      fc.property(situations, ({ buildUp, site }) => {
        const partition: BuildUp = {
          ...buildUp,
          element: "partition",
          faces: "damp room",
          layers: buildUp.layers.map(closed),
          ground: null,
          void: null,
          roofSpace: null,
          pitch: null,
          clearSky: false,
        };
        const fromOtherRoom: BuildUp = {
          ...partition,
          room: "damp room",
          faces: "indoor",
          layers: partition.layers.map(turned).toReversed(),
        };
        const own = calculateBuildUp(partition, site);
        const mirrored = calculateBuildUp(fromOtherRoom, site);
        expect(mirrored.heat.transmittance).toBeCloseTo(own.heat.transmittance, 9);
        expect(mirrored.sections.length).toBe(own.sections.length);
        const way = ({ path }: SectionCalculation): string => [...path.through].sort().join();
        for (const section of own.sections) {
          const other = mirrored.sections.find((each) => way(each) === way(section))!;
          expect(other.path.share).toBeCloseTo(section.path.share, 12);
          expectMirrored(section, other);
        }
      }),
      { numRuns: 300, seed: 3, endOnFailure: true },
    );
  });
});
