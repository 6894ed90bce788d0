import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figuresOfBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import type { AirMonths, BuildUp } from "../../packages/core/src/project/types.ts";
import { withVapourLayerOpened } from "../../packages/core/src/sensitivity/opened-vapour-layer.ts";
import { type NodeLine, nodeLine } from "../../packages/core/src/vapour/node-line.ts";
import {
  type KnownClimate,
  type SectionClimate,
  sectionClimate,
} from "../../packages/core/src/vapour/section-climate.ts";
import type { Slice } from "../../packages/core/src/vapour/section-slices.ts";
import { assessVapourLayer } from "../../packages/core/src/vapour-layer/assess-vapour-layer.ts";
import { emptyMonthState } from "../../packages/core/src/year/month-balance.ts";
import { runOn } from "../../packages/core/src/year/run-on.ts";
import { type MonthRule, runYear, sectionYear } from "../../packages/core/src/year/section-year.ts";
import { startingMonths, yearFromDry } from "../../packages/core/src/year/wet-months.ts";
import { expectSame } from "../expect-same.ts";
import { sections } from "../published/random-sections.ts";
import { corpus } from "./corpus.ts";

const RULES: readonly MonthRule[] = ["standard", "drying inside the month"];

/** Months that are taken from what is known already are those that would have been worked out. */
describe("months that are known need not be worked out again", () => {
  it("400 random sections: months of the dry year, months up to the first that writes off, the first year of the run on", () => {
    const seen = { driesBefore: 0, apart: 0, dryMonths: 0, runOn: 0 };
    fc.assert(
      fc.property(sections, (section) => {
        const dryYear = yearFromDry(section);
        const starts = startingMonths(dryYear.wet);
        for (const rule of RULES) {
          for (const start of starts) {
            const empty = emptyMonthState(section.sd.length);
            const known = { dryYear, sameUntilWrittenOff: null };
            expectSame(runYear(section, start, rule, empty, known), runYear(section, start, rule));
          }
        }
        const standard = sectionYear(section, dryYear, "standard");
        const inside = sectionYear(section, dryYear, "drying inside the month");
        expectSame(sectionYear(section, dryYear, "drying inside the month", standard), inside);
        const known = runOn(section, inside.startMonth, inside);
        const fresh = runOn(section, inside.startMonth);
        expectSame(known, fresh);
        if (standard.firstWrittenOff !== null && standard.firstWrittenOff !== standard.dryBy) seen.driesBefore += 1;
        if (standard.writtenOff > 0 && standard.startMonth === inside.startMonth) seen.apart += 1;
        if (starts.length > 0 && dryYear.adds.includes(0)) seen.dryMonths += 1;
        if (fresh.years > 1) seen.runOn += 1;
      }),
      { numRuns: 400, seed: 31, endOnFailure: true },
    );
    for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(10);
  });
});

/** Temperatures that are taken from the reported figures are those that would have been worked out. */
describe("temperatures that are known need not be worked out again", () => {
  it("a third of demo and cases of guidance: the vapour layer opened and taken away, unfavourable resistances", () => {
    const seen = { runs: 0, nodesFewer: 0 };
    for (const { buildUp, surroundings } of corpus().filter((_, index) => index % 3 === 0)) {
      const site = surroundings.sites.reported;
      const reported = figuresOfBuildUp(buildUp, site);
      const { tightLayer } = assessVapourLayer(reported);
      const openedBy = (factor: number): BuildUp =>
        tightLayer === null ? buildUp : withVapourLayerOpened(buildUp, tightLayer, factor);
      for (const changed of [openedBy(10), openedBy(Number.POSITIVE_INFINITY)]) {
        const alone = figuresOfBuildUp(changed, site, { vapourResistance: "unfavourable" });
        const known = figuresOfBuildUp(changed, site, { vapourResistance: "unfavourable", sameHeat: reported });
        expectSame(known, alone);
        // And the other way round, where nodes lie apart that were one.
        expectSame(figuresOfBuildUp(buildUp, site, { sameHeat: alone }), reported);
        seen.runs += 1;
        if (alone.sections[0]!.line.count < reported.sections[0]!.line.count) seen.nodesFewer += 1;
      }
    }
    expect(seen.runs).toBeGreaterThan(50);
    expect(seen.nodesFewer).toBeGreaterThan(5);
  });

  it("nodes that lie elsewhere, and a node that stands for two faces of a layer open to vapour, are worked out", () => {
    const inside = allMonths(20, 1300);
    const outside = allMonths(-3, 400);
    const slice = (sd: number, resistance: number): Slice => ({
      layer: 0,
      part: "whole",
      name: "wool",
      material: "wool",
      isAir: false,
      thickness: 0.1,
      resistance,
      sd,
    });
    const lineOf = (sd: number, largestPart: number): NodeLine =>
      nodeLine([slice(0.1, 0.5), slice(sd, 0.3), slice(2, 1)], largestPart);
    const climateOf = (line: NodeLine, known?: KnownClimate): SectionClimate =>
      sectionClimate(line, inside, outside, 0.13, 0.04, 0, known);
    const lines = [lineOf(1, 0.25), lineOf(1, 0.1), lineOf(0, 0.4), lineOf(1, 0.4)];
    for (const line of lines)
      for (const known of lines)
        expect(climateOf(line, { line: known, climate: climateOf(known) })).toEqual(climateOf(line));
  });
});

function allMonths(temperature: number, vapourPressure: number): AirMonths {
  return { temperature: Array(12).fill(temperature), vapourPressure: Array(12).fill(vapourPressure) };
}
