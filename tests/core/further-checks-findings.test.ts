import { describe, expect, test } from "vitest";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import { mouldWeight } from "../../packages/core/src/findings/mould-at-interface.ts";
import { weightOf } from "../../packages/core/src/findings/wood-moisture.ts";
import type { BuildUp, HumidityRule, TrappedWater } from "../../packages/core/src/project/types.ts";
import type { BuildUpResult, Finding, FindingCode } from "../../packages/core/src/result/types.ts";
import { air, buildUp } from "../published/build-up-by-hand.ts";
import { heatedRoom, layerOf, shippedClimate, siteOf, studs } from "./build-ups.ts";
import { assessText } from "./corpus.ts";

const lining = layerOf("gypsum plasterboard", 12.5);
const vapourLayer = layerOf("polyethylene sheet 0.15 mm");
const wool = layerOf("mineral wool slab", 140, { framing: studs });
const sheathing = layerOf("oriented strand board", 11);
const cladding = [layerOf("breather membrane"), air(0.025, { ventilation: "well" }), layerOf("softwood timber", 20)];
const ordinary = buildUp([lining, vapourLayer, wool, sheathing, ...cladding]);
const withoutSheet = buildUp([lining, wool, sheathing, ...cladding]);
const classThree: HumidityRule = { kind: "class", class: 3 };

function assess(built: BuildUp, climate = "oslo", humidity = classThree): BuildUpResult {
  const room = heatedRoom(humidity);
  const site = siteOf(shippedClimate(climate), room);
  return assessBuildUp(built, {
    sites: { reported: site, mean: site, colder: site, warmer: site, wetter: site, heatedDaily: site },
    rooms: new Map([["indoor", room]]),
    humidityMargin: 1,
  });
}

const findingsOf = <Code extends FindingCode>(result: BuildUpResult, code: Code): Finding<Code>[] =>
  result.findings.filter(isFinding(code));
const oneOf = <Code extends FindingCode>(result: BuildUpResult, code: Code): Finding<Code> => {
  const found = findingsOf(result, code);
  expect(found).toHaveLength(1);
  return found[0]!;
};
const isReason = (result: BuildUpResult, code: string): boolean =>
  result.judgement.reasons.some((id) => id.endsWith(`/${code}`));

describe("wood over 20 %", () => {
  test("is a note where the air outdoors alone does it, and no reason of the judgement", () => {
    const result = assess(ordinary, "de-bilt");
    expect(oneOf(result, "wood-moisture")).toMatchObject({ severity: "note", figures: { months: [] } });
    expect(oneOf(result, "wood-moisture").message).toContain("no more than outdoor air alone would cause");
    expect(isReason(result, "wood-moisture")).toBe(false);
  });

  test("is told with its figure, and at fibre saturation for months is a reason to change the build-up", () => {
    const result = assess(withoutSheet);
    const finding = oneOf(result, "wood-moisture");
    expect(finding.severity).toBe("fault");
    expect(finding.figures.monthsSaturated.length).toBeGreaterThan(2);
    expect(finding.message).toMatch(
      /oriented strand board \(between the framing\) is at fibre saturation, where wood decays, in (?:\d+ months \(.*\)|every month): \d\d(\.\d)? %/,
    );
    expect(isReason(result, "wood-moisture")).toBe(true);
  });

  test.each([
    [2, 0, "none"],
    [2, 2, "none"],
    [3, 0, "condition"],
    [12, 2, "condition"],
    [3, 3, "change by number"],
  ] as const)("%i months over 20 %%, %i of them at fibre saturation: %s", (over, saturated, effect) => {
    expect(weightOf(over, saturated).effect).toBe(effect);
  });

  test("names a board once that is wet both through and beside the framing", () => {
    const roof = assessText(`
project: Alder Row glazing room
climate: dresden
indoor: { heating: 21 °C, humidity: { production: 4 kg/day, volume: 120 m3, air changes: 0.5 /h } }
build-ups:
  - name: Rafter roof
    element: pitched roof
    pitch: 35 °
    clear sky: true
    framings:
      rafters: { material: softwood timber, width: 63 mm, spacing: 600 mm }
    layers:
      - { material: oriented strand board, thickness: 15 mm }
      - { material: mineral wool slab, thickness: 160 mm, framing: rafters }
      - { material: wood fibre insulation board, thickness: 22 mm }
      - { air: 40 mm, ventilation: well, open: both ends }
      - { material: clay roof tile, thickness: 15 mm }
`);
    const board = "wood fibre insulation board";
    expect(roof.wood.filter(({ name }) => name.includes(board)).length).toBeGreaterThan(1);
    const { message } = oneOf(roof, "wood-moisture");
    expect(message.split(board)).toHaveLength(2);
  });

  test("is not spoken of where no wood is wet", () => {
    expect(
      findingsOf(assess(buildUp([lining, sheathing, layerOf("expanded polystyrene", 150)])), "wood-moisture"),
    ).toEqual([]);
  });
});

describe("mould at an interface", () => {
  test.each([
    [1, 0, "none"],
    [2, 0, "condition"],
    [6, 2, "condition"],
    [3, 3, "change by number"],
  ] as const)("%i months over the limit, %i of them at 95 %% on board: %s", (months, nearlyWet, effect) => {
    expect(mouldWeight(months, nearlyWet).effect).toBe(effect);
  });

  test("is a fault where board stands nearly wet for three months, with place, food, worst month and limit", () => {
    const finding = oneOf(assess(withoutSheet), "mould-at-interface");
    expect(finding.severity).toBe("fault");
    expect(finding.message).toContain(
      "on oriented strand board between mineral wool slab and oriented strand board (between the framing)",
    );
    expect(finding.figures.relativeHumidity).toBeGreaterThan(finding.figures.limit);
  });

  test("is silent on the ordinary wall", () => {
    expect(findingsOf(assess(ordinary), "mould-at-interface")).toEqual([]);
  });
});

describe("trapped water", () => {
  const water = (layer: number): TrappedWater => ({ layer, amount: 2, reading: null, startMonth: 9 });

  test("that cannot leave is a caution and names the change that would let it go fastest", () => {
    const shut = buildUp([lining, vapourLayer, wool, { ...vapourLayer, name: "outer sheet" }, ...cladding.slice(1)], {
      trappedWater: [water(2)],
    });
    const result = assess(shut);
    const finding = oneOf(result, "trapped-water");
    expect(finding).toMatchObject({ severity: "caution", figures: { daysToDry: null, amount: 2 } });
    expect(finding.message).toMatch(
      /2000 g\/m² of water in mineral wool slab .* not gone within 10 years.*gone after \d+ days with a breather membrane/,
    );
    expect(isReason(result, "trapped-water")).toBe(true);
  });

  test("a little of it that cannot leave is a caution too", () => {
    const shut = buildUp([lining, vapourLayer, wool, { ...vapourLayer, name: "outer sheet" }, ...cladding.slice(1)], {
      trappedWater: [{ ...water(2), amount: 0.3 }],
    });
    const finding = oneOf(assess(shut), "trapped-water");
    expect(finding).toMatchObject({ severity: "caution", figures: { daysToDry: null } });
    expect(finding.figures.isCounted && finding.figures.mostHeldElsewhere).toBeLessThan(0.5);
  });

  test("that leaves within a season is a note", () => {
    const open = buildUp(
      [lining, layerOf("cellulose blown", 140), layerOf("fibreboard 250", 18), ...cladding.slice(1)],
      {
        trappedWater: [{ ...water(1), amount: 0.3 }],
      },
    );
    expect(oneOf(assess(open, "rome"), "trapped-water")).toMatchObject({ severity: "note", advice: null });
  });

  test("outside the layers that count is said to be left out", () => {
    expect(oneOf(assess({ ...ordinary, trappedWater: [water(6)] }), "trapped-water").message).toContain(
      "is not calculated",
    );
  });
});

describe("gaps, leaks, seasons, humidity", () => {
  test("a whole vapour layer gets a note on a thousandth missing", () => {
    const finding = oneOf(assess(ordinary), "gaps-in-vapour-layer");
    expect(finding).toMatchObject({ severity: "note", figures: { share: 0.001, layer: 1 } });
    expect(finding.message).toContain("0.1 %");
  });

  test("stated gaps are a caution", () => {
    const torn = { ...vapourLayer, gaps: { share: 0.01, laps: null } };
    expect(oneOf(assess(buildUp([lining, torn, wool, sheathing, ...cladding])), "gaps-in-vapour-layer")).toMatchObject({
      severity: "caution",
      figures: { share: 0.01 },
    });
  });

  test("a stated gap for air is a condition, in cubic metres of air and grams of water", () => {
    const result = assess({ ...ordinary, leak: { length: 1, width: 0.001, pressure: 2 } });
    const finding = oneOf(result, "air-leakage");
    expect(finding.message).toMatch(
      /gap lets \d{1,3}(\u202f\d{3})* m³ of room air through each square metre .* up to \d{1,3}(\u202f\d{3})* g\/m² of water/,
    );
    expect(finding.message).toContain("Diffusion leaves none");
    expect(isReason(result, "air-leakage")).toBe(true);
  });

  test("the two-season check stands beside the verdict and is no part of the judgement", () => {
    const asked = assess({ ...withoutSheet, twoSeasonCheck: true });
    const plain = assess(withoutSheet);
    expect(oneOf(asked, "two-season-check")).toMatchObject({ severity: "caution", figures: { passes: false } });
    expect(isReason(asked, "two-season-check")).toBe(false);
    expect(asked.judgement).toEqual(plain.judgement);
    expect(asked.moisture).toEqual(plain.moisture);
  });

  test("resistance by humidity is told with its rounds and tolerance, and leaves the verdict alone", () => {
    const asked = assess({ ...withoutSheet, variableResistance: true });
    expect(oneOf(asked, "variable-resistance").message).toMatch(
      /With the dry values, which count: .* settled in at most \d+ rounds a month \(tolerance 1e-8\)/,
    );
    expect(asked.moisture).toEqual(assess(withoutSheet).moisture);
  });

  test("nothing is said of checks that nothing asks for", () => {
    const codes = assess(ordinary).findings.map(({ code }) => code);
    for (const code of ["trapped-water", "air-leakage", "two-season-check", "variable-resistance"])
      expect(codes).not.toContain(code);
  });
});
