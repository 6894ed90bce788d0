import { describe, expect, it, test } from "vitest";
import { evenly } from "../../packages/core/src/field/cell-stuffs.ts";
import { heatWithinBounds } from "../../packages/core/src/field/heat-within-bounds.ts";
import { type Mesh, meshOn } from "../../packages/core/src/field/mesh.ts";
import { heatField, temperaturesOf } from "../../packages/core/src/field/plane-heat.ts";
import {
  emptyScene,
  fill,
  type Scene,
  type Stuff,
  type SurroundingAir,
  surround,
} from "../../packages/core/src/field/scene.ts";
import { howMany } from "../how-many.ts";

/** A stuff by its λ [W/(m·K)] alone. */
const stuff = (conductivity: number): Stuff => ({
  name: `${conductivity} W/(m K)`,
  material: null,
  isAir: false,
  conductivity: evenly(conductivity),
  permeability: evenly(1),
});

/** Air with one surface resistance [m²·K/W] on all faces. */
const air = (name: string, resistance: number): SurroundingAir => ({ name, upright: resistance, level: resistance });

/** Stands for a face that is held at a temperature [m²·K/W]. */
const HELD = 1e-9;

/** A value at a place, linear between the four corners around it. */
function valueAt({ xs, ys }: Mesh, values: Float64Array, x: number, y: number): number {
  const step = (lines: Float64Array, place: number): number =>
    Math.min(
      lines.length - 2,
      Math.max(
        0,
        lines.findLastIndex((line) => line <= place + 1e-12),
      ),
    );
  const [column, row] = [step(xs, x), step(ys, y)];
  const east = (x - xs[column]!) / (xs[column + 1]! - xs[column]!);
  const north = (y - ys[row]!) / (ys[row + 1]! - ys[row]!);
  const at = (right: number, up: number): number => values[(row + up) * xs.length + column + right]!;
  const lower = (1 - east) * at(0, 0) + east * at(1, 0);
  const upper = (1 - east) * at(0, 1) + east * at(1, 1);
  return (1 - north) * lower + north * upper;
}

/**
 * Case 1 of ISO 10211:2007 Annex A: half of a square column, one face held at 20 °C, the others at 0 °C; the 28 printed
 * temperatures (from memory), which equal the series to the printed figure. Tolerance of the standard: 0.1 K.
 */
describe("ISO 10211:2007 Annex A, case 1", () => {
  const PRINTED = [
    [9.7, 13.4, 14.7, 15.1],
    [5.3, 8.6, 10.3, 10.8],
    [3.2, 5.6, 7.0, 7.5],
    [2.0, 3.6, 4.7, 5.0],
    [1.3, 2.3, 3.0, 3.2],
    [0.7, 1.4, 1.8, 1.9],
    [0.3, 0.6, 0.8, 0.9],
  ];
  /** Separation of variables for a unit square with one hot face. */
  const series = (x: number, y: number): number => {
    let sum = 0;
    for (let m = 1; m < 400; m += 2) {
      const fall = (Math.exp(-m * Math.PI * y) - Math.exp(-m * Math.PI * (2 - y))) / (1 - Math.exp(-2 * m * Math.PI));
      sum += (80 / (m * Math.PI)) * Math.sin(m * Math.PI * x) * fall;
    }
    return sum;
  };
  const column = (): Scene => {
    const scene = emptyScene();
    fill(scene, stuff(1), { x0: 0, x1: 0.5, y0: 0, y1: 1 });
    const [hot, cold] = [air("hot", HELD), air("cold", HELD)];
    surround(scene, hot, { x0: 0, x1: 0.5, y0: -0.1, y1: 0 });
    surround(scene, cold, { x0: -0.1, x1: 0, y0: 0, y1: 1 });
    surround(scene, cold, { x0: 0, x1: 0.5, y0: 1, y1: 1.1 });
    return scene;
  };
  /** Greatest distance of the 28 temperatures from a table [K], with so many steps a side. */
  const worst = (steps: number, expected: (row: number, column: number) => number): number => {
    const scene = column();
    const even = (from: number, count: number): number[] =>
      Array.from({ length: count + 1 }, (_, k) => from + k / steps);
    const mesh = meshOn(
      scene,
      Float64Array.of(-0.1, ...even(0, steps / 2)),
      Float64Array.of(-0.1, ...even(0, steps), 1.1),
    );
    const temperature = temperaturesOf(heatField(scene, mesh), [20, 0]);
    return Math.max(
      ...PRINTED.flatMap((line, row) =>
        line.map((_, place) =>
          Math.abs(valueAt(mesh, temperature, (place + 1) / 8, (row + 1) / 8) - expected(row, place)),
        ),
      ),
    );
  };

  it("the printed figures are the series, rounded", () => {
    const rounded = PRINTED.map((line, row) =>
      line.map((_, place) => Number(series((place + 1) / 8, (row + 1) / 8).toFixed(1))),
    );
    expect(rounded).toEqual(PRINTED);
  });

  // Each halving of the steps takes the error down by about four: a net of second order.
  test.each([
    [16, 0.06],
    [32, 0.015],
    [64, 0.004],
  ])("%d steps a side: within %d K of the series", (steps, tolerance) => {
    expect(worst(steps, (row, place) => series((place + 1) / 8, (row + 1) / 8))).toBeLessThan(tolerance);
  });

  it("all 28 temperatures within the standard's 0.1 K of the printed ones", () => {
    expect(worst(32, (row, place) => PRINTED[row]![place]!)).toBeLessThan(0.1);
  });
});

/**
 * Case 2 of ISO 10211:2007 Annex A: aluminium web through insulation, nine temperatures and the heat. Geometry from memory
 * and consistent with all ten figures; half a section by symmetry. Tolerance of the standard: 0.1 K and 0.1 W/m.
 */
describe("ISO 10211:2007 Annex A, case 2", () => {
  const mm = (x0: number, x1: number, y0: number, y1: number) => ({
    x0: x0 / 1000,
    x1: x1 / 1000,
    y0: y0 / 1000,
    y1: y1 / 1000,
  });
  const scene = emptyScene();
  const [concrete, wood, insulation, aluminium] = [stuff(1.15), stuff(0.12), stuff(0.029), stuff(230)];
  fill(scene, insulation, mm(0, 500, 0, 47.5));
  fill(scene, concrete, mm(0, 500, 0, 6));
  fill(scene, wood, mm(0, 15, 6, 11));
  fill(scene, aluminium, mm(0, 15, 11, 12.5));
  fill(scene, aluminium, mm(0, 1.5, 11, 47.5));
  fill(scene, aluminium, mm(0, 500, 46, 47.5));
  surround(scene, air("outside", 0.06), mm(0, 500, -10, 0));
  surround(scene, air("inside", 0.11), mm(0, 500, 47.5, 57.5));
  const POINTS: [string, number, number, number][] = [
    ["A", 0, 0, 7.1],
    ["B", 500, 0, 0.8],
    ["C", 0, 6, 7.9],
    ["D", 15, 6, 6.3],
    ["E", 500, 6, 0.8],
    ["F", 0, 11, 16.4],
    ["G", 15, 11, 16.3],
    ["H", 0, 47.5, 16.8],
    ["I", 500, 47.5, 18.3],
  ];
  const heat = heatWithinBounds(scene, 0.002);
  const temperature = temperaturesOf(heat.corners, [0, 20]);

  test.each(POINTS)("temperature at %s (%d, %d mm): %d °C", (_, x, y, printed) => {
    const value = valueAt(heat.corners.mesh, temperature, x / 1000, y / 1000);
    expect(Math.abs(value - printed)).toBeLessThan(0.1);
  });

  it("9.5 W/m, between the two bounds within 0.1 W/m", () => {
    expect(20 * heat.lower).toBeGreaterThan(9.4);
    expect(20 * heat.upper).toBeLessThan(9.6);
    expect(heat.lower).toBeLessThan(heat.upper);
  });
});

/** Shape factor of the corner of two walls as thick as they are joined: 1 − 2·ln2/π beside the walls' own (conformal mapping). */
describe("outer corner with both faces held", () => {
  const LENGTH = 6;
  const scene = emptyScene();
  fill(scene, stuff(1), { x0: 0, x1: LENGTH, y0: 0, y1: 1 });
  fill(scene, stuff(1), { x0: 0, x1: 1, y0: 1, y1: LENGTH });
  const [outside, inside] = [air("outside", HELD), air("inside", HELD)];
  surround(scene, outside, { x0: -0.1, x1: LENGTH, y0: -0.1, y1: 0 });
  surround(scene, outside, { x0: -0.1, x1: 0, y0: 0, y1: LENGTH });
  surround(scene, inside, { x0: 1, x1: LENGTH, y0: 1, y1: LENGTH });
  const exact = 1 - (2 * Math.LN2) / Math.PI + 2 * (LENGTH - 1);
  const mesh = { first: 0.05, growth: 1.5, greatest: 0.5, leastSteps: 2 };

  test.each([0.01, 0.002, 0.0005])("0.55873 lies between the bounds when these are %d apart", (apart) => {
    const { lower, upper } = heatWithinBounds(scene, apart, mesh);
    expect(exact - 2 * (LENGTH - 1)).toBeCloseTo(0.55873, 5);
    expect(lower).toBeLessThan(exact);
    expect(upper).toBeGreaterThan(exact);
    expect((upper - lower) / upper).toBeLessThanOrEqual(apart);
  });

  it("the mean of the bounds is within 0.0005 of it", () => {
    expect(Math.abs(heatWithinBounds(scene, 0.0005, mesh).conductance - exact)).toBeLessThan(0.0005);
  });
});

/**
 * A thin straight fin: k·t·m·tanh(m·L), m = √(2h/kt) (any textbook of heat transfer). The plane is a little thicker than the
 * closed form's line: 10⁻³ is the fin's own h·t/2k.
 */
describe("thin fin", () => {
  it("1.25637 W/(m·K) per kelvin", () => {
    const [length, thickness, conductivity, film] = [0.1, 0.002, 50, 10];
    const scene = emptyScene();
    fill(scene, stuff(conductivity), { x0: 0, x1: length, y0: 0, y1: thickness / 2 });
    surround(scene, air("base", HELD), { x0: -0.01, x1: 0, y0: 0, y1: thickness / 2 });
    surround(scene, air("air", 1 / film), { x0: 0, x1: length, y0: thickness / 2, y1: thickness });
    const m = Math.sqrt((2 * film) / (conductivity * thickness));
    const closed = conductivity * thickness * m * Math.tanh(m * length);
    const { lower, upper } = heatWithinBounds(scene, 0.0005, {
      first: 5e-4,
      growth: 1.5,
      greatest: 0.01,
      leastSteps: 2,
    });
    expect(closed).toBeCloseTo(1.25637, 5);
    expect(Math.abs(2 * lower - closed)).toBeLessThan(1e-3);
    expect(Math.abs(2 * upper - closed)).toBeLessThan(1e-3);
  });
});

/**
 * What a slit and a round hole in a tight sheet between two layers let through, as resistances in metres of sd:
 * (1/π)·Σ μ·ln(16H/(π·w)) per metre of slit and Σ μ·(1/(4a) − ln2/(2πH)) per hole, narrow against the layers (conformal
 * mapping; the field of a disc between parallel planes). Heat stands for vapour: λ = 1/μ.
 */
describe("closed forms of openings in a sheet", () => {
  const SHEET = 1e-6;
  const TIGHT = 1e-14;
  /** A round scene: each column's stuff counts by its full turn, 2π times its middle radius. */
  const opening = (layers: [number, number][], half: number, reach: number, first: number, round: boolean): number => {
    const [[oneFactor, oneDepth], [otherFactor, otherDepth]] = layers as [[number, number], [number, number]];
    const scene = emptyScene();
    const radii = [0, half];
    for (let step = first; radii.at(-1)! + step < reach; step = Math.min(step * 1.25, reach / 20))
      radii.push(radii.at(-1)! + step);
    radii.push(reach);
    const inner = Array.from({ length: 20 }, (_, k) => (half * k) / 20).slice(1);
    const lines = [...radii, ...inner].sort((one, other) => one - other);
    for (const [k, x0] of lines.slice(0, -1).entries()) {
      const x1 = lines[k + 1]!;
      const turn = round ? Math.PI * (x0 + x1) : 1;
      const column = (conductivity: number, y0: number, y1: number): void =>
        fill(scene, stuff(turn * conductivity), { x0, x1, y0, y1 });
      column(1 / oneFactor, 0, oneDepth);
      column(x1 <= half * (1 + 1e-9) ? 1e4 : TIGHT, oneDepth, oneDepth + SHEET);
      column(1 / otherFactor, oneDepth + SHEET, oneDepth + SHEET + otherDepth);
    }
    const depth = oneDepth + SHEET + otherDepth;
    surround(scene, air("one", HELD), { x0: 0, x1: reach, y0: -0.01, y1: 0 });
    surround(scene, air("other", HELD), { x0: 0, x1: reach, y0: depth, y1: depth + 0.01 });
    const { conductance } = heatWithinBounds(scene, 1, {
      first: half / 20,
      growth: 1.3,
      greatest: 0.02,
      leastSteps: 1,
    });
    return conductance;
  };

  test.each(
    [
      {
        layers: [
          [1, 0.05],
          [1, 0.14],
        ],
        width: 0.002,
      },
      {
        layers: [
          [10, 0.0125],
          [1, 0.14],
        ],
        width: 0.001,
      },
      {
        layers: [
          [1, 0.1],
          [1, 0.1],
        ],
        width: 0.001,
      },
    ].slice(0, howMany(1, 3)) as { layers: [number, number][]; width: number }[],
  )("a slit of $width m between $layers: within 1 %", ({ layers, width }) => {
    const closed =
      layers.reduce((sum, [factor, depth]) => sum + factor * Math.log((16 * depth) / (Math.PI * width)), 0) / Math.PI;
    const resistance = 1 / (2 * opening(layers, width / 2, 0.6, width / 40, false));
    expect(Math.abs(closed / resistance - 1)).toBeLessThan(0.01);
  });

  test.each(
    [
      {
        layers: [
          [10, 0.0125],
          [1, 0.14],
        ],
        radius: 0.001,
      },
      {
        layers: [
          [1, 0.1],
          [1, 0.1],
        ],
        radius: 0.002,
      },
    ].slice(0, howMany(1, 2)) as { layers: [number, number][]; radius: number }[],
  )("a round hole of $radius m between $layers: within 2 %", ({ layers, radius }) => {
    const closed = layers.reduce(
      (sum, [factor, depth]) => sum + factor * (1 / (4 * radius) - Math.LN2 / (2 * Math.PI * depth)),
      0,
    );
    const resistance = 1 / opening(layers, radius, 0.5, radius / 20, true);
    expect(Math.abs(closed / resistance - 1)).toBeLessThan(0.02);
  });
});
