import { describe, expect, test } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import { MONTH_NAMES } from "../../packages/core/src/constants.ts";
import type { LayerGaps, SolidLayer } from "../../packages/core/src/project/types.ts";
import { sdWithGaps } from "../../packages/core/src/vapour/layer-sd.ts";
import { checked, heatedRoom, layerOf, shippedClimate, siteOf, studs } from "../core/build-ups.ts";
import { buildUp, sheet } from "./build-up-by-hand.ts";

const room = heatedRoom({ kind: "class", class: 3 });
const site = siteOf(shippedClimate("oslo"), room);
const wall = (...inner: SolidLayer[]) =>
  buildUp([
    layerOf("gypsum plasterboard", 12.5),
    ...inner,
    layerOf("mineral wool slab", 140, { framing: studs }),
    layerOf("oriented strand board", 11),
    sheet(5),
  ]);
const vapourLayer = (share: number | null, laps: LayerGaps["laps"] = null): SolidLayer =>
  layerOf("polyethylene sheet 0.15 mm", 0, { gaps: share === null ? null : { share, laps } });
const peakOf = (...inner: SolidLayer[]): number => calculateBuildUp(wall(...inner), site).governing.year.peak;

describe("worked: sd 50 m with gaps of sd 0.01 m, conductances in parallel (four figures)", () => {
  test.each([
    [1e-4, 33.34],
    [1e-3, 8.335],
    [1e-2, 0.9806],
  ])("an area share of %d leaves an sd of %d m", (share, sd) => {
    expect(sdWithGaps(50, share) / sd).toBeCloseTo(1, 3);
  });
});

describe("limiting cases", () => {
  test("a share of 0 is the whole layer", () => {
    expect(peakOf(vapourLayer(0))).toBe(peakOf(vapourLayer(null)));
  });

  test("a share of 1 is an opening of sd 0.01 m, and that is no layer to within its own 0.01 m of 0.3 m", () => {
    expect(peakOf(vapourLayer(1))).toBeCloseTo(peakOf(sheet(0.01)), 12);
    expect(peakOf(vapourLayer(1)) / peakOf()).toBeGreaterThan(0.95);
    expect(peakOf(vapourLayer(1))).toBeLessThan(peakOf());
  });

  test("a gap goes through a faced board's facings too: two foils of 1500 m with a thousandth missing are 10 m", () => {
    const board = layerOf("mineral wool slab", 50, {
      facingInner: 1500,
      facingOuter: 1500,
      gaps: { share: 0.001, laps: null },
    });
    const { slices } = calculateBuildUp(buildUp([board]), site).governing;
    expect(slices.reduce((sum, { sd }) => sum + sd, 0)).toBeCloseTo(sdWithGaps(3000 + 0.05, 0.001), 9);
  });
});

describe("what the check says", () => {
  test("nothing stated: a thousandth missing is worked out beside the whole layer, which rules", () => {
    const { checks, calculation } = checked(wall(vapourLayer(null)), site, room);
    const [usual, framed, ...more] = checks.gaps;
    expect(more).toEqual([]);
    expect(usual).toMatchObject({ layer: 1, share: 0.001, sdWhole: 50 });
    expect(usual!.sdEffective).toBeCloseTo(8.335, 3);
    expect(usual!.peak.amount).toBe(peakOf(vapourLayer(0.001)));
    expect(usual!.peak.amount).toBeGreaterThan(calculation.governing.year.peak);
    expect(usual!.message).toContain("counts as unbroken");
    expect(framed).toMatchObject({
      layer: 1,
      share: 0.15,
      sdEffective: 0,
      name: "polyethylene sheet 0.15 mm, through studs",
    });
  });

  test("the framed part without it is the way through the studs of the same wall without the sheet", () => {
    const framed = checked(wall(vapourLayer(null)), site, room).checks.gaps[1]!;
    const through = calculateBuildUp(wall(), site).sections.find(({ name }) => name === "through studs")!;
    expect(framed.peak.amount).toBeCloseTo(through.year.peak, 12);
    expect(framed.verdict).toBe(through.year.verdict);
  });

  test("a sheet that is cut round the studs stops there, and was worked out so", () => {
    const cut = layerOf("polyethylene sheet 0.15 mm", 0, { framing: studs });
    const { checks, calculation } = checked(wall(cut), site, room);
    const through = calculation.sections.find(({ name }) => name === "through studs")!;
    const framed = checks.gaps.find(({ name }) => name.endsWith("through studs"))!;
    expect(framed.peak.amount).toBe(through.year.peak);
    expect(framed.message).toContain("stops at the framing");
  });

  test("stated gaps rule, and the whole layer stands beside them; laps are told with width and spacing", () => {
    const laps = { width: 0.002, spacing: 1.25 };
    const { checks, calculation } = checked(wall(vapourLayer(laps.width / laps.spacing, laps)), site, room);
    const stated = checks.gaps[0]!;
    expect(stated).toMatchObject({ share: 0.0016, sdWhole: 50, verdict: calculation.governing.year.verdict });
    expect(stated.sdEffective).toBeCloseTo(sdWithGaps(50, 0.0016), 12);
    expect(stated.peak.amount).toBe(calculation.governing.year.peak);
    expect(stated.message).toContain("laps of 2 mm every 1.25 m");
    const whole = calculateBuildUp(wall(vapourLayer(null)), site).governing.year;
    expect(whole.peak).toBeLessThan(0.5 * stated.peak.amount);
    const month = MONTH_NAMES[whole.peakMonth!];
    expect(stated.message).toContain(
      `Without gaps: ${whole.verdict}, at most ${(whole.peak * 1000).toFixed(1)} g/m² at the end of ${month}.`,
    );
    expect(checks.gaps.filter(({ name }) => name === stated.name)).toHaveLength(1);
  });
});
