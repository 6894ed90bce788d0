import { describe, expect, it } from "vitest";
import { holeResistance, sdWithOpenings, slitResistance } from "../../packages/core/src/vapour/gap-resistance.ts";

/** K(k) by Simpson's rule over the angle, apart from the means that the code takes. */
function completeIntegral(modulus: number): number {
  const steps = 20_000;
  const width = Math.PI / 2 / steps;
  let sum = 0;
  for (let step = 0; step <= steps; step += 1) {
    const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
    sum += weight / Math.sqrt(1 - (modulus * Math.sin(step * width)) ** 2);
  }
  return (sum * width) / 3;
}

/** Half of one slit's surroundings by Gauss-Seidel: a strip H deep and half a spacing wide, the slit in one corner. */
function slitByRelaxation(depth: number, width: number, spacing: number): number {
  const cell = width / 8;
  const columns = Math.round(spacing / 2 / cell);
  const rows = Math.round(depth / cell);
  const open = 4;
  const field = Array.from({ length: rows }, (_, row) => new Float64Array(columns).fill((row + 0.5) / rows));
  for (let round = 0; round < 4000; round += 1) {
    for (let row = 0; row < rows; row += 1) {
      for (let column = 0; column < columns; column += 1) {
        let sum = 0;
        let weight = 0;
        const take = (value: number, by: number): void => {
          sum += value * by;
          weight += by;
        };
        if (row > 0) take(field[row - 1]![column]!, 1);
        else if (column < open) take(0, 2);
        if (row < rows - 1) take(field[row + 1]![column]!, 1);
        else take(1, 2);
        if (column > 0) take(field[row]![column - 1]!, 1);
        if (column < columns - 1) take(field[row]![column + 1]!, 1);
        field[row]![column]! += 1.9 * (sum / weight - field[row]![column]!);
      }
    }
  }
  const flow = field[rows - 1]!.reduce((total, value) => total + 2 * (1 - value), 0);
  return 1 / (2 * flow);
}

describe("vapour that converges on a slit: conformal mapping of a strip (worked)", () => {
  it.each([
    [0.1, 0.001, 1.984],
    [0.1, 0.01, 1.251],
    [0.0125, 0.001, 1.322],
  ])("H %f m, w %f m: (1/π)·ln(16H/(πw)) = %f", (depth, width, expected) => {
    expect(Math.log((16 * depth) / (Math.PI * width)) / Math.PI).toBeCloseTo(expected, 3);
    expect(slitResistance(1, depth, width, 10)).toBeCloseTo(expected, 3);
    expect(slitResistance(7, depth, width, 10)).toBeCloseTo(7 * slitResistance(1, depth, width, 10), 12);
  });

  it("K′/(2K) with the integrals worked out by Simpson's rule", () => {
    for (const width of [0.02, 0.05, 0.1]) {
      const modulus = Math.tanh((Math.PI * width) / 0.4);
      const expected = completeIntegral(Math.sqrt(1 - modulus ** 2)) / (2 * completeIntegral(modulus));
      expect(slitResistance(1, 0.1, width, 10)).toBeCloseTo(expected, 9);
    }
  });

  it("a field worked out by relaxation gives the same, to 4 %", () => {
    for (const [depth, width, spacing] of [
      [0.04, 0.008, 0.4],
      [0.1, 0.016, 0.16],
    ] as const) {
      expect(slitResistance(1, depth, width, spacing) / slitByRelaxation(depth, width, spacing)).toBeGreaterThan(0.96);
      expect(slitResistance(1, depth, width, spacing) / slitByRelaxation(depth, width, spacing)).toBeLessThan(1.04);
    }
  });

  it("a slit much wider than the material is thick passes vapour straight: H/w", () => {
    for (const width of [2, 50, 1000]) expect(slitResistance(1, 0.01, width, 1e4) * width).toBeCloseTo(0.01, 3);
  });
});

describe("vapour that converges on a round hole", () => {
  it("1/(4a) − ln 2/(2πH): a hole of 10 mm over 100 mm of wool, worked 50 − 1.103", () => {
    expect(holeResistance(1, 0.1, 0.005)).toBeCloseTo(48.897, 3);
  });

  it("falls as the hole grows, without a step where it is as wide as the material is thick", () => {
    const radii = [0.001, 0.01, 0.05, 0.0999, 0.1, 0.1001, 0.3];
    const values = radii.map((radius) => holeResistance(1, 0.1, radius));
    for (const [at, value] of values.slice(1).entries()) expect(value).toBeLessThan(values[at]!);
    expect(values[3]! / values[5]!).toBeLessThan(1.01);
  });
});

describe("a sheet with laps left open or holes", () => {
  const wool = { factor: 1, depth: 0.1 };
  const laps = (share: number, spacing: number) => ({
    share,
    laps: { width: share * spacing, spacing },
    around: [wool, wool],
  });

  it("0.1 % missing of 50 m as slits of 1 mm between 100 mm of wool is an sd of about 3.5 m, not the 8.3 m of its share", () => {
    // Two sides of 1.984 for each metre, one metre of slit a square metre: 3.968 m with the wool's own 0.2 m;
    // beside it 50.2 m: 1/(0.999/50.2 + 1/3.968) − 0.2 = 3.478 m.
    expect(sdWithOpenings(50, 0, laps(0.001, 1))).toBeCloseTo(3.478, 3);
  });

  it("more and narrower laps of the same share let more through; a share alone has no form", () => {
    const sds = [2, 1, 0.5, 0.2].map((spacing) => sdWithOpenings(50, 0, laps(0.001, spacing))!);
    for (const [at, sd] of sds.slice(1).entries()) expect(sd).toBeLessThan(sds[at]!);
    expect(sdWithOpenings(50, 0, { share: 0.001, laps: null, around: [wool, wool] })).toBeNull();
  });

  it("never tighter than the whole sheet, never negative, whatever the openings", () => {
    for (const whole of [0.01, 0.2, 5, 50, 1500]) {
      for (const share of [1e-6, 1e-3, 0.1, 0.9]) {
        for (const gaps of [
          laps(share, 1),
          { share, laps: null, holes: { diameter: 0.005, perArea: 4 }, around: [wool, wool] },
        ]) {
          const sd = sdWithOpenings(whole, 0, gaps)!;
          expect(sd).toBeGreaterThan(0);
          expect(sd).toBeLessThanOrEqual(whole);
        }
      }
    }
  });

  it("an opening right through a thick board has its own length to pass", () => {
    expect(sdWithOpenings(1500, 0.1, laps(0.001, 1))!).toBeGreaterThan(20 * sdWithOpenings(1500, 0, laps(0.001, 1))!);
  });
});
