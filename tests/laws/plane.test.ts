import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { calculateBuildUp } from "../../packages/core/src/calculate-build-up.ts";
import {
  DAYS_IN_MONTH,
  MONTHS_PER_YEAR,
  SECONDS_PER_DAY,
  VAPOUR_PERMEABILITY_OF_AIR,
} from "../../packages/core/src/constants.ts";
import { cornerNet } from "../../packages/core/src/field/corner-net.ts";
import { factorise } from "../../packages/core/src/field/factor.ts";
import { halvedWhere } from "../../packages/core/src/field/graded-lines.ts";
import { heatWithinBounds } from "../../packages/core/src/field/heat-within-bounds.ts";
import { meshOf, meshOn } from "../../packages/core/src/field/mesh.ts";
import { byOwnFactor, byResponses, solvePlaneMonth } from "../../packages/core/src/field/month-in-the-plane.ts";
import { emptyNet, flowFrom } from "../../packages/core/src/field/net.ts";
import { heatField } from "../../packages/core/src/field/plane-heat.ts";
import { planeYear } from "../../packages/core/src/field/plane-vapour.ts";
import { drawnFraming, repeatingCell } from "../../packages/core/src/field/repeating-cell.ts";
import { worstStrip } from "../../packages/core/src/field/strips.ts";
import { unlimitedPressure, vapourNet } from "../../packages/core/src/field/vapour-net.ts";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { hold } from "../hold.ts";
import { caseFiles, readCase } from "../practice/cases.ts";
import { air, buildUp, material, solid } from "../published/build-up-by-hand.ts";
import { cells, studs } from "../published/random-cells.ts";
import { between, outdoors, rooms } from "../published/random-sections.ts";

const MESH = { first: 0.004, growth: 1.8, greatest: 0.1, leastSteps: 2 };
const halfAll = (lines: Float64Array): Float64Array => halvedWhere(lines, new Uint8Array(lines.length - 1).fill(1));

describe("heat in the plane", () => {
  it("40 random cells: a finer mesh lies between the bounds of a coarser one, and its bounds nearer to each other", () => {
    fc.assert(
      fc.property(cells, (question) => {
        const { scene } = repeatingCell(question);
        const coarse = meshOf(scene, MESH);
        const fine = meshOn(scene, halfAll(coarse.xs), halfAll(coarse.ys));
        const bounds = (mesh: typeof coarse): [number, number] => [
          heatField(scene, mesh, "middles").conductance[0]![1]!,
          heatField(scene, mesh, "corners").conductance[0]![1]!,
        ];
        const [lower, upper] = bounds(coarse);
        const [finerLower, finerUpper] = bounds(fine);
        const digits = 1e-12 * upper;
        expect(finerLower).toBeGreaterThanOrEqual(lower - digits);
        expect(finerUpper).toBeLessThanOrEqual(upper + digits);
        expect(finerLower).toBeLessThanOrEqual(finerUpper + digits);
      }),
      { numRuns: 40, seed: 20 },
    );
  });

  it("40 random cells: between the two limits of ISO 6946's combined method", () => {
    fc.assert(
      fc.property(cells, ({ counted, framing, surfaces, sheets }) => {
        // Clause 6.7.2: heat straight on gives the least, every layer face at one temperature the greatest transmittance.
        const layers = counted.map(({ layer }) => layer);
        const heat = calculateHeat(buildUp(layers), "horizontal");
        const cell = repeatingCell({ counted, framing, surfaces, sheets });
        const { lower, upper } = heatWithinBounds(cell.scene, 0.005);
        expect(upper / cell.width).toBeGreaterThanOrEqual((1 - 1e-9) / heat.upperLimit);
        expect(lower / cell.width).toBeLessThanOrEqual((1 + 1e-9) / heat.lowerLimit);
      }),
      { numRuns: 40, seed: 6946 },
    );
  });

  it("one dimension: framing of the layer's own λ leaves the sum of resistances, on both nets", () => {
    fc.assert(
      fc.property(between(0.02, 1), between(0.02, 0.3), between(0.1, 2), (conductivity, thickness, other) => {
        const timber = studs(0.045, 0.6, conductivity);
        const layers = [solid(thickness, conductivity, { framing: timber }), solid(0.02, other)];
        const heat = calculateHeat(buildUp(layers), "horizontal");
        const surfaces = { inside: 0.13, outside: 0.04 };
        const cell = repeatingCell({ counted: heat.counted, framing: timber, surfaces, sheets: false });
        const { lower, upper } = heatWithinBounds(cell.scene);
        for (const heatFlow of [lower, upper])
          expect(Math.abs(heatFlow / cell.width / heat.clearTransmittance - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 30, seed: 1 },
    );
  });
});

/** Every section of the practice cases, whether condensation forms in it or not. */
const sections = caseFiles().flatMap((file) => {
  const project = readCase(file);
  const { reported } = surroundingsOf(project).sites;
  return project.buildUps.flatMap((one) =>
    calculateBuildUp(one, reported).sections.map((section) => ({
      title: `${file}: ${one.name}, ${section.name}`,
      section,
    })),
  );
});
const wetSections = sections.filter(({ section }) => section.withinMonth.startMonth !== null);

describe("a line of nodes in the plane is a straight section with drying inside the month", () => {
  it("there are wet sections enough in the practice cases", () => expect(wetSections.length).toBeGreaterThan(35));

  test.each(wetSections)("$title: the water of every node and month within 10⁻¹¹ kg/m²", ({ section }) => {
    const { line, climate, withinMonth } = section;
    const net = emptyNet(1, line.count, 0);
    net.active.fill(1);
    for (let node = 0; node + 1 < line.count; node += 1)
      net.north[node] = VAPOUR_PERMEABILITY_OF_AIR / (line.sd[node + 1]! - line.sd[node]!);
    const surface = new Uint8Array(line.count);
    surface[0] = surface[line.count - 1] = 1;
    const vapour = vapourNet(net, surface);
    let held: Float64Array = new Float64Array(line.count);
    let worst = 0;
    for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
      const month = (withinMonth.startMonth! + step) % MONTHS_PER_YEAR;
      const given = new Float64Array(line.count);
      given[0] = climate.insideSurface[month]!;
      given[line.count - 1] = climate.outsideSurface[month]!;
      const drive = {
        limit: climate.saturation[month]!,
        unlimited: unlimitedPressure(vapour, given),
        seconds: DAYS_IN_MONTH[month]! * SECONDS_PER_DAY,
      };
      held = solvePlaneMonth(vapour, drive, held, null).held;
      for (let node = 0; node < line.count; node += 1)
        worst = Math.max(worst, Math.abs(held[node]! - withinMonth.held[month]![node]!));
    }
    expect(worst).toBeLessThanOrEqual(1e-11);
  });
});

/** Foil-faced boards between studs: what the year in the plane was made for. */
const foilWall = () => {
  const timber = studs(0.045, 0.6);
  return [
    solid(0.0125, 0.21, { material: material(0.21, 10) }),
    air(0.005, { resistance: 0.18, framing: timber }),
    solid(0.09, 0.022, { framing: timber, material: material(0.022, 60), facingInner: 1500, facingOuter: 1500 }),
    solid(0.011, 0.13, { material: material(0.13, 50) }),
  ];
};

describe("a year of vapour in the plane", () => {
  const layers = foilWall();
  const framing = layers[1]!.framing!;
  const { counted } = calculateHeat(buildUp(layers), "horizontal");
  expect(drawnFraming(counted)).toBe(framing);
  const cell = repeatingCell({
    counted,
    framing,
    surfaces: { inside: 0.13, outside: 0.04 },
    sheets: true,
    jointOf: () => ({ gap: 0.002, tape: null }),
  });
  const field = heatField(cell.scene, meshOf(cell.scene, { first: 0.005, growth: 2, greatest: 0.1, leastSteps: 2 }));
  const vapour = cornerNet(cell.scene, field.mesh, "vapour");

  const { xs, ys } = field.mesh;
  const within = (value: number, from: number, to: number): boolean => value > from + 1e-9 && value < to - 1e-9;
  /** The air on the room side of the foil, and that between it and the stud. */
  const isInGap = (node: number): boolean => {
    const [along, depth] = [xs[node % xs.length]!, ys[Math.floor(node / xs.length)]!];
    return within(depth, 0.0125, 0.0175) || within(along, 0.0225, 0.0245);
  };

  it("30 random climates: no pressure above saturation, no negative water, and water only at saturation; water in is water kept, to 10⁻¹²", () => {
    let wetYears = 0;
    fc.assert(
      fc.property(rooms, outdoors, (inside, outside) => {
        const year = planeYear(field, [inside, outside]);
        if (year.startMonth === null) return;
        wetYears += 1;
        let before: Float64Array = new Float64Array(vapour.active.length);
        for (let step = 0; step < MONTHS_PER_YEAR; step += 1) {
          const month = (year.startMonth + step) % MONTHS_PER_YEAR;
          const seconds = DAYS_IN_MONTH[month]! * SECONDS_PER_DAY;
          const [pressure, saturation, held] = [year.pressure[month]!, year.saturation[month]!, year.held[month]!];
          let entered = 0;
          let kept = 0;
          let moved = 0;
          for (const node of vapour.active.keys()) {
            const humidity: number = pressure[node]! / saturation[node]!;
            // Water lies on a surface, not in the air of a gap; a node is wet from a billionth above saturation.
            const isLawful =
              held[node]! === 0
                ? humidity < 1 + 1e-8 || isInGap(node)
                : held[node]! > 0 && Math.abs(humidity - 1) < 1e-12;
            hold(isLawful, () => `node ${node} of month ${month}: ${held[node]} kg/m at ${humidity} of saturation`);
            const isSurface = field.net.toAir.some((toAir) => toAir[node]! > 0);
            const flow = flowFrom(vapour, pressure, node) * seconds;
            if (isSurface) [entered, moved] = [entered + flow, moved + Math.abs(flow)];
            kept += held[node]! - before[node]!;
          }
          expect(Math.abs(entered - kept)).toBeLessThanOrEqual(1e-12 * Math.max(1, moved));
          before = held;
        }
      }),
      { numRuns: 30, seed: 20 },
    );
    expect(wetYears).toBeGreaterThan(20);
  });

  it("40 random sets of wet nodes: as sources in the year's factor and held in a factor of their own they are the same", () => {
    const surface = field.net.active.map((_, node) => (field.net.toAir.some((toAir) => toAir[node]! > 0) ? 1 : 0));
    const net = vapourNet(vapour, surface);
    const given = Float64Array.from(surface, (_, node) => (node < surface.length / 2 ? 1300 : 500));
    const unlimited = unlimitedPressure(net, given);
    const size = surface.length;
    const perNode = { minLength: size, maxLength: size };
    const shares = fc.array(between(0, 1), perNode);
    fc.assert(
      fc.property(shares, shares, between(0.02, 0.9), (lots, amounts, share) => {
        const wet = net.inner.map((isInner, node) => (isInner === 1 && lots[node]! < share ? 1 : 0));
        const limit = unlimited.map((pressure, node) => pressure * (0.7 + 0.4 * amounts[node]!));
        const before = Float64Array.from(amounts, (amount, node) =>
          net.inner[node] === 1 && lots[node]! > 0.5 ? 0.01 * amount : 0,
        );
        const drive = { limit, unlimited, seconds: 30 * SECONDS_PER_DAY };
        const wetNodes = [...wet.keys()].filter((node) => wet[node] === 1);
        const one = byResponses(net, drive, before, wetNodes, wet);
        const other = byOwnFactor(net, drive, before, wetNodes, wet);
        const apart = (a: Float64Array, b: Float64Array): number =>
          a.reduce((most, value, index) => Math.max(most, Math.abs(value - b[index]!)), 0);
        const greatest = (values: Float64Array): number =>
          values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
        expect(apart(one.pressure, other.pressure)).toBeLessThanOrEqual(1e-9 * greatest(one.pressure));
        expect(apart(one.gains, other.gains)).toBeLessThanOrEqual(1e-9 * greatest(one.gains));
      }),
      { numRuns: 40, seed: 20 },
    );
  });

  it.each([1, 1e6, 1e12, 1e20, 1e40])(
    "a lattice that conducts %s times better than its one way to the air keeps its digits",
    (contrast) => {
      // What enters at the far corner leaves by the way to the air: its fall there is known, and that inside is next to nothing.
      const [columns, rows] = [7, 5];
      const net = emptyNet(columns, rows, 1);
      net.active.fill(1);
      for (let node = 0; node < columns * rows; node += 1) {
        if (node % columns < columns - 1) net.east[node] = contrast;
        if (node < columns * (rows - 1)) net.north[node] = contrast;
      }
      net.toAir[0]![0] = 1;
      const load = new Float64Array(columns * rows);
      load[columns * rows - 1] = 1;
      const potential = factorise(net).solve(load);
      expect(potential[0]).toBeCloseTo(1, 12);
      // 1 W/m through a lattice of so many nodes falls by less than a node's row of conductances.
      for (const at of potential) expect(Math.abs(at - 1)).toBeLessThanOrEqual((columns + rows) / contrast + 1e-12);
    },
  );

  it("tight foil between studs is wettest beside the stud, in a strip wetter than the mean", () => {
    const winter = { temperature: new Array<number>(12).fill(20), vapourPressure: new Array<number>(12).fill(1300) };
    const outside = {
      temperature: [-2, -1, 3, 8, 13, 16, 18, 17, 14, 9, 4, 0],
      vapourPressure: [450, 460, 550, 750, 1000, 1300, 1450, 1450, 1200, 900, 650, 500],
    };
    const year = planeYear(field, [winter, outside]);
    const strip = worstStrip(field, year.held[year.peakMonth!]!);
    expect(strip.amount).toBeGreaterThan((2 * year.peak) / cell.width);
    expect(strip.middle).toBeGreaterThan(cell.framingEdge);
    expect(strip.middle).toBeLessThan(0.1);
    expect(year.verdict).toBe("dries out");
  });
});
