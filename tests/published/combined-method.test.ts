import { describe, expect, it, test } from "vitest";
import { LARGEST_LIMITS_RATIO } from "../../packages/core/src/heat/combined-resistance.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import { combinedTemperatureFactor, pathTemperatureFactor } from "../../packages/core/src/heat/temperature-factor.ts";
import type { HeatCalculation } from "../../packages/core/src/heat/types.ts";
import { air, buildUp, framing, resisting, solid } from "./build-up-by-hand.ts";

/** Timber-framed wall of Approved Document L1. */
const timberFramedWall = calculateHeat(
  buildUp([
    solid(0.0125, 0.25),
    solid(0.14, 0.038, { framing: framing("studs", 0.15) }),
    solid(0.01, 0.13),
    air(0.05, { resistance: 0.09 }),
    solid(0.102, 0.77),
  ]),
  "horizontal",
);

/** Cavity wall with a lightweight inner leaf and insulated dry-lining, of the same appendix. */
const dryLinedWall = calculateHeat(
  buildUp([
    solid(0.0125, 0.25),
    solid(0.089, 0.038, { framing: framing("battens", 0.12) }),
    solid(0.1, 0.11, { framing: framing("mortar", 0.067, 0.88) }),
    air(0.05, { resistance: 0.18 }),
    solid(0.102, 0.77),
  ]),
  "horizontal",
);

const rounded = (heat: HeatCalculation) => ({
  upper: Number(heat.upperLimit.toFixed(3)),
  lower: Number(heat.lowerLimit.toFixed(3)),
  transmittance: Number(heat.transmittance.toFixed(3)),
});

describe("Approved Document L1, 2002 edition, Appendix B (from memory), rounded to three decimals", () => {
  it("timber-framed wall: upper 3.376, lower 3.222 m²·K/W, U 0.303, printed as 0.30 W/(m²·K)", () => {
    expect(rounded(timberFramedWall)).toEqual({ upper: 3.376, lower: 3.222, transmittance: 0.303 });
  });

  it("dry-lined cavity wall: upper 3.385, lower 2.966 m²·K/W, U 0.315, printed as 0.31 to 0.32; four paths", () => {
    expect(rounded(dryLinedWall)).toEqual({ upper: 3.385, lower: 2.966, transmittance: 0.315 });
    expect(dryLinedWall.paths).toHaveLength(4);
  });
});

describe("worked: bridged build-ups (four figures)", () => {
  const layers = [
    resisting(0.1),
    resisting(2, bridged("studs", 0.15, 0.8)),
    resisting(1, bridged("battens", 0.1, 0.2)),
  ];

  it("four paths: upper 2.895, lower 2.617, U 0.3628, possible error 5.05 %", () => {
    const heat = calculateHeat(buildUp(layers), "horizontal");
    expect(heat.upperLimit).toBeCloseTo(2.895, 3);
    expect(heat.lowerLimit).toBeCloseTo(2.617, 3);
    expect(heat.transmittance).toBeCloseTo(0.3628, 4);
    expect(heat.possibleError).toBeCloseTo(0.0505, 4);
  });

  it("one bridged layer in a roof: R 0.05; R 3 with 0.9 in 10 %", () => {
    // upper 1/(0.9/3.19 + 0.1/1.09) = 1/(0.282132 + 0.091743); lower 0.14 + 0.05 + 1/(0.9/3 + 0.1/0.9) = 0.19 + 2.432432
    const heat = calculateHeat(
      buildUp([resisting(0.05), resisting(3, bridged("joists", 0.1, 0.9))], { element: "flat roof" }),
      "upward",
    );
    expect(heat.upperLimit).toBeCloseTo(2.6747, 4);
    expect(heat.lowerLimit).toBeCloseTo(2.6224, 4);
    expect(heat.transmittance).toBeCloseTo(2 / (2.6747 + 2.6224), 4);
  });

  it("the same timber through two layers makes two paths: R 2 with 0.5, R 0.18 with 0.15, 12 %", () => {
    // upper 1/(0.88/2.35 + 0.12/0.82) = 1/(0.374468 + 0.146341)
    // lower 0.17 + 1/(0.88/2 + 0.12/0.5) + 1/(0.88/0.18 + 0.12/0.15) = 0.17 + 1.470588 + 0.175781
    const heat = calculateHeat(
      buildUp([resisting(2, bridged("studs", 0.12, 0.5)), resisting(0.18, bridged("studs", 0.12, 0.15))]),
      "horizontal",
    );
    expect(heat.paths.map(({ share }) => share)).toEqual([0.88, 0.12]);
    expect(heat.upperLimit).toBeCloseTo(1.9201, 4);
    expect(heat.lowerLimit).toBeCloseTo(1.8164, 4);
  });

  it("timber of another name crosses it, four paths: the upper limit is higher, the lower the same", () => {
    // upper 1/(0.7744/2.35 + 0.1056/0.85 + 0.1056/2.32 + 0.0144/0.82) = 1/(0.329532 + 0.124235 + 0.045517 + 0.017561)
    const heat = calculateHeat(
      buildUp([resisting(2, bridged("studs", 0.12, 0.5)), resisting(0.18, bridged("battens", 0.12, 0.15))]),
      "horizontal",
    );
    expect(heat.upperLimit).toBeCloseTo(1.9348, 4);
    expect(heat.lowerLimit).toBeCloseTo(1.8164, 4);
    expect(heat.framingShare).toBeCloseTo(1 - 0.88 * 0.88, 12);
  });

  it("limits far apart pass the method's own bound of 1.5: R 4 with 0.05 in 5 %", () => {
    // upper 1/(0.95/4.17 + 0.05/0.22) = 2.1974; lower 0.17 + 1/(0.95/4 + 0.05/0.05) = 0.9781
    const heat = calculateHeat(buildUp([resisting(4, bridged("ties", 0.05, 0.05))]), "horizontal");
    expect(heat.limitsRatio).toBeCloseTo(2.1974 / 0.9781, 3);
    expect(heat.limitsRatio).toBeGreaterThan(LARGEST_LIMITS_RATIO);
    expect(timberFramedWall.limitsRatio).toBeLessThan(LARGEST_LIMITS_RATIO);
  });

  /** Framing whose resistance in the 0.1 m of `resisting` is the one given [m²·K/W]. */
  function bridged(name: string, share: number, resistance: number) {
    return framing(name, share, 0.1 / resistance);
  }
});

describe("worked: temperature factor of the timber-framed wall (four figures)", () => {
  const { counted, paths } = timberFramedWall;

  it("combined 0.9271", () => expect(combinedTemperatureFactor(counted, paths, 0.04)).toBeCloseTo(0.9271, 4));
  it("between studs 0.9422", () => expect(pathTemperatureFactor(counted, paths[0]!, 0.04)).toBeCloseTo(0.9422, 4));
  it("through the stud 0.8543", () => expect(pathTemperatureFactor(counted, paths[1]!, 0.04)).toBeCloseTo(0.8543, 4));
});

describe("limits of framing", () => {
  const wall = (share: number) =>
    calculateHeat(
      buildUp([solid(0.0125, 0.25), solid(0.14, 0.038, { framing: framing("studs", share) })]),
      "horizontal",
    );

  it("no timber: both limits are the wall without it", () => {
    const heat = wall(0);
    const plain = 0.13 + 0.0125 / 0.25 + 0.14 / 0.038 + 0.04;
    expect(heat.upperLimit).toBeCloseTo(plain, 12);
    expect(heat.lowerLimit).toBeCloseTo(plain, 12);
    expect(heat.transmittance).toBeCloseTo(heat.clearTransmittance, 12);
    expect(heat.paths).toHaveLength(1);
  });

  it("nothing but timber: both limits are solid timber, one path", () => {
    const heat = wall(1);
    const solidTimber = 0.13 + 0.0125 / 0.25 + 0.14 / 0.13 + 0.04;
    expect(heat.upperLimit).toBeCloseTo(solidTimber, 12);
    expect(heat.lowerLimit).toBeCloseTo(solidTimber, 12);
    expect(heat.paths).toEqual([{ through: ["studs"], share: 1 }]);
  });

  test.each([0.01, 0.1, 0.5, 0.9])("%d of timber: the lower limit is under the upper, the mean between", (share) => {
    const heat = wall(share);
    expect(heat.lowerLimit).toBeLessThan(heat.resistance);
    expect(heat.resistance).toBeLessThan(heat.upperLimit);
  });
});
