import { describe, expect, it, test } from "vitest";
import { channelCell } from "../../packages/core/src/field/channel-cell.ts";
import { heatWithinBounds } from "../../packages/core/src/field/heat-within-bounds.ts";
import type { JunctionCell, JunctionSurfaces } from "../../packages/core/src/field/junctions/junction-cell.ts";
import { junctionHeat } from "../../packages/core/src/field/junctions/junction-heat.ts";
import { floorEdge, roofEdge } from "../../packages/core/src/field/junctions/level-edge.ts";
import { outerCorner } from "../../packages/core/src/field/junctions/outer-corner.ts";
import { type Side, sideOf } from "../../packages/core/src/field/junctions/side.ts";
import { frameAsSide, windowSide } from "../../packages/core/src/field/junctions/window-side.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { Framing } from "../../packages/core/src/project/types.ts";
import { buildUp, solid } from "./build-up-by-hand.ts";
import { studs } from "./random-cells.ts";

/** Channels at 600 mm [m]. */
const channels = (sheet: number, flange: number, conductivity = 50, vapourFactor = 1e6): Framing => ({
  ...studs(sheet, 0.6, conductivity, vapourFactor),
  origin: { kind: "channel", channel: { sheet, flange, lip: 0.012 }, spacing: 0.6 },
});

describe("light steel channels in wool", () => {
  const BOTH = { inside: 0.13, outside: 0.13 };
  const wall = (framing: Framing, depth: number, outside: number) => {
    const layers = [solid(0.0125, 0.21), solid(depth, 0.035, { framing }), solid(0.012, 0.23)];
    if (outside > 0) layers.push(solid(outside, 0.022));
    return calculateHeat(buildUp(layers), "horizontal").counted;
  };
  const transmittance = (depth: number, sheet: number, flange: number, outside = 0): number => {
    const framing = channels(sheet, flange);
    const cell = channelCell({ counted: wall(framing, depth, outside), framing, surfaces: BOTH, sheets: false });
    return heatWithinBounds(cell.scene).conductance / cell.width;
  };

  /**
   * The two limits of ISO 6946 weighted for light steel frames, BRE Digest 465 (2002), from memory: R = p·Rmax + (1 − p)·Rmin,
   * p = 0.8·Rmin/Rmax + 0.44 − 0.1·flange/40 mm − 0.2·600 mm/spacing − 0.04·depth/100 mm. It is told to be right to some 8 %.
   */
  const byDigest = (depth: number, sheet: number, flange: number, outside = 0): number => {
    const share = sheet / 0.6;
    const around = 0.26 + 0.0125 / 0.21 + 0.012 / 0.23 + outside / 0.022;
    const greatest = 1 / ((1 - share) / (around + depth / 0.035) + share / (around + depth / 50));
    const least = around + depth / ((1 - share) * 0.035 + share * 50);
    const weight = 0.8 * (least / greatest) + 0.44 - 0.1 * (flange / 0.04) - 0.2 - 0.04 * (depth / 0.1);
    return 1 / (weight * greatest + (1 - weight) * least);
  };

  test.each([
    [0.1, 0.0012, 0.05, 0],
    [0.07, 0.0006, 0.04, 0],
    [0.14, 0.0016, 0.05, 0],
    [0.1, 0.0012, 0.05, 0.03],
    [0.1, 0.0012, 0.05, 0.06],
  ])("%d m deep, sheet %d m, flange %d m, %d m of foam outside: U within 8 % of the digest's", (...measures) => {
    expect(Math.abs(transmittance(...measures) / byDigest(...measures) - 1)).toBeLessThan(0.08);
  });

  it("more steel, more heat: thicker sheet and wider flange", () => {
    expect(transmittance(0.1, 0.002, 0.05)).toBeGreaterThan(transmittance(0.1, 0.0012, 0.05));
    expect(transmittance(0.1, 0.0012, 0.07)).toBeGreaterThan(transmittance(0.1, 0.0012, 0.05));
  });

  it("a channel of what is around it is not there", () => {
    const wool = channels(0.0012, 0.05, 0.035, 1);
    const { counted, clearTransmittance, surfaceResistances } = calculateHeat(
      buildUp([solid(0.0125, 0.21), solid(0.1, 0.035, { framing: wool })]),
      "horizontal",
    );
    const surfaces = { inside: surfaceResistances.inside, outside: surfaceResistances.outside };
    const cell = channelCell({ counted, framing: wool, surfaces, sheets: false });
    const { lower, upper } = heatWithinBounds(cell.scene);
    expect(lower / cell.width).toBeCloseTo(clearTransmittance, 9);
    expect(upper / cell.width).toBeCloseTo(clearTransmittance, 9);
  });
});

/** A wall of one stuff, 1 m thick, its faces held. */
const EVEN: Side = {
  ...sideOf(calculateHeat(buildUp([solid(1, 1)]), "horizontal")),
  inside: 1e-9,
  outside: 1e-9,
  outsideForMoisture: 1e-9,
};

describe("junctions of one stuff with held faces: the corner's shape factor", () => {
  /** 1 − 2·ln2/π beside the inner lengths (conformal mapping); by outer dimensions each side is 1 m longer. */
  const exact = 1 - (2 * Math.LN2) / Math.PI - 2;
  const drawings: [string, (surfaces: JunctionSurfaces) => JunctionCell][] = [
    ["outer corner", (surfaces) => outerCorner(EVEN, EVEN, 3, surfaces)],
    ["floor edge", (surfaces) => floorEdge(EVEN, EVEN, { rim: 0.045, plates: 1 }, surfaces)],
    ["roof edge", (surfaces) => roofEdge(EVEN, EVEN, { rim: 0.045, plates: 2 }, surfaces)],
  ];

  test.each(drawings)("%s: ψ by outer dimensions −1.441 W/(m·K)", (_, draw) => {
    const { linearTransmittance, lower, upper } = junctionHeat(draw, EVEN, EVEN);
    expect(exact).toBeCloseTo(-1.44127, 5);
    expect(Math.abs(linearTransmittance - exact)).toBeLessThan((upper - lower) / 2);
    expect(upper / lower).toBeLessThan(1.01 / 0.99);
  });
});

describe("window side", () => {
  it("a frame like the wall, as deep as it and flush, is more of the wall", () => {
    const heat = calculateHeat(buildUp([solid(0.2, 0.1)]), "horizontal");
    const wall = sideOf(heat);
    const frame = { width: 0.07, depth: 0.2, conductivity: 0.1, setBack: 0 };
    const beside = frameAsSide(wall, frame);
    const { linearTransmittance, temperatureFactor } = junctionHeat(
      (surfaces) => windowSide(wall, 0, frame, surfaces),
      wall,
      beside,
    );
    expect(linearTransmittance).toBeCloseTo(0, 9);
    expect(temperatureFactor).toBeCloseTo(1 - 0.25 / (0.25 + 2 + 0.04), 9);
  });
});

describe("timber at junctions", () => {
  const timber = studs(0.045, 0.6);
  const layers = [solid(0.0125, 0.21), solid(0.14, 0.035, { framing: timber }), solid(0.011, 0.13)];
  const side = sideOf(calculateHeat(buildUp(layers), "horizontal"));

  it("more of it, more heat and a colder surface", () => {
    const corner = ([2, 3, "solid"] as const).map((posts) =>
      junctionHeat((surfaces) => outerCorner(side, side, posts, surfaces), side, side),
    );
    const [two, three, full] = corner.map(({ temperatureFactor }) => temperatureFactor);
    expect(two! - three!).toBeGreaterThan(0.02);
    expect(three! - full!).toBeGreaterThan(0.02);
    const rims = [0.045, 0.09].map((rim) =>
      junctionHeat((surfaces) => floorEdge(side, side, { rim, plates: 1 }, surfaces), side, side),
    );
    expect(rims[1]!.linearTransmittance).toBeGreaterThan(rims[0]!.linearTransmittance);
    expect(rims[1]!.temperatureFactor).toBeLessThan(rims[0]!.temperatureFactor);
  });

  it("the coldest place of a corner is the corner", () => {
    const { place, cell } = junctionHeat((surfaces) => outerCorner(side, side, 3, surfaces), side, side);
    expect([place.x, place.y]).toEqual([expect.closeTo(cell.corner.x, 9), expect.closeTo(cell.corner.y, 9)]);
  });
});
