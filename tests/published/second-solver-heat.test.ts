import fc from "fast-check";
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import { calculateHeat } from "../../packages/core/src/heat/heat-of-build-up.ts";
import type { BuildUp, Layer } from "../../packages/core/src/project/types.ts";
import { air, buildUp, framing, sheet, solid } from "./build-up-by-hand.ts";
import { between, months, sections } from "./random-sections.ts";

/** Relative tolerance: a linear system of a few dozen unknowns keeps at least nine figures. */
const TOLERANCE = 1e-9;

/** A network of thermal resistances between two airs at 1 and 0: conductances between numbered points. */
class Network {
  private readonly links: { from: number; to: number; conductance: number }[] = [];
  private points = 2;
  readonly warmAir = 0;
  readonly coldAir = 1;

  point(): number {
    this.points += 1;
    return this.points - 1;
  }

  link(from: number, to: number, conductance: number): void {
    this.links.push({ from, to, conductance });
  }

  /** Heat that leaves the warm air, and every point's temperature, by mathjs `lusolve`. */
  solve(): { flow: number; temperature: number[] } {
    const matrix = Array.from({ length: this.points }, () => new Array<number>(this.points).fill(0));
    for (const { from, to, conductance } of this.links) {
      matrix[from]![from]! += conductance;
      matrix[to]![to]! += conductance;
      matrix[from]![to]! -= conductance;
      matrix[to]![from]! -= conductance;
    }
    for (const [air, value] of [this.warmAir, this.coldAir].entries()) {
      matrix[value] = matrix[value]!.map((_, column) => (column === air ? 1 : 0));
    }
    const given = Array.from({ length: this.points }, (_, point) => (point === this.warmAir ? 1 : 0));
    const temperature = (lusolve(matrix, given) as number[][]).map(([value]) => value!);
    const flow = this.links.reduce((sum, { from, to, conductance }) => {
      const leaving = conductance * (temperature[from]! - temperature[to]!);
      return from === this.warmAir ? sum + leaving : to === this.warmAir ? sum - leaving : sum;
    }, 0);
    return { flow, temperature };
  }
}

/** Resistance [m²·K/W] of a layer, and of the framing in it, from thickness and λ as the case wrote them. */
const plainResistance = (layer: Layer): number =>
  layer.type === "air"
    ? layer.resistance!
    : layer.type === "sheet"
      ? 0
      : layer.thickness / layer.material.conductivity!;
const framedResistance = (layer: Layer): number => layer.thickness / layer.framing!.material.conductivity!;

const RSI = 0.13;
const RSE = 0.04;

/** Upper limit: heat goes straight, every combination of framings a column of its own. */
function columnsInParallel({ layers }: BuildUp): number {
  const shares = new Map(layers.flatMap(({ framing }) => (framing === null ? [] : [[framing.name, framing.share]])));
  const names = [...shares.keys()];
  const network = new Network();
  for (let combination = 0; combination < 2 ** names.length; combination += 1) {
    const through = new Set(names.filter((_, index) => (combination >> index) % 2 === 1));
    const share = names.reduce(
      (product, name) => product * (through.has(name) ? shares.get(name)! : 1 - shares.get(name)!),
      1,
    );
    let before = network.point();
    network.link(network.warmAir, before, share / RSI);
    for (const layer of layers) {
      const resistance =
        layer.framing !== null && through.has(layer.framing.name) ? framedResistance(layer) : plainResistance(layer);
      if (resistance === 0) continue;
      const after = network.point();
      network.link(before, after, share / resistance);
      before = after;
    }
    network.link(before, network.coldAir, share / RSE);
  }
  return 1 / network.solve().flow;
}

/** Lower limit: every face of a layer at one temperature. */
function layersInSeries({ layers }: BuildUp): number {
  const network = new Network();
  let before = network.point();
  network.link(network.warmAir, before, 1 / RSI);
  for (const layer of layers) {
    if (plainResistance(layer) === 0) continue;
    const after = network.point();
    const share = layer.framing?.share ?? 0;
    network.link(before, after, (1 - share) / plainResistance(layer));
    if (share > 0) network.link(before, after, share / framedResistance(layer));
    before = after;
  }
  network.link(before, network.coldAir, 1 / RSE);
  return 1 / network.solve().flow;
}

const walls: fc.Arbitrary<BuildUp> = fc
  .record({ studs: between(0.01, 0.6), battens: between(0.01, 0.6), mortar: between(0.01, 0.2) })
  .chain(({ studs, battens, mortar }) => {
    const framings = [framing("studs", studs), framing("battens", battens), framing("mortar", mortar, 0.88)];
    const framed = fc.option(fc.constantFrom(...framings), { freq: 2 });
    const layer = fc.oneof(
      {
        weight: 5,
        arbitrary: fc
          .tuple(between(0.005, 0.3), between(0.02, 2), framed)
          .map(([d, lambda, framing]) => solid(d, lambda, { framing })),
      },
      {
        weight: 1,
        arbitrary: fc
          .tuple(between(0.01, 0.1), between(0.05, 0.9), framed)
          .map(([d, resistance, framing]) => air(d, { resistance, framing })),
      },
      { weight: 1, arbitrary: between(0.05, 100).map((sd) => sheet(sd)) },
    );
    return fc.array(layer, { minLength: 1, maxLength: 8 }).map((layers) => buildUp(layers));
  });

describe("second solver: resistance networks of random build-ups by mathjs lusolve", () => {
  it("300 build-ups with up to three framings: both limits, mean and U", () => {
    fc.assert(
      fc.property(walls, (wall) => {
        const heat = calculateHeat(wall, "horizontal");
        const upper = columnsInParallel(wall);
        const lower = layersInSeries(wall);
        expect(Math.abs(heat.upperLimit / upper - 1)).toBeLessThan(TOLERANCE);
        expect(Math.abs(heat.lowerLimit / lower - 1)).toBeLessThan(TOLERANCE);
        expect(Math.abs(heat.transmittance / (2 / (upper + lower)) - 1)).toBeLessThan(TOLERANCE);
      }),
      { numRuns: 300, seed: 6946 },
    );
  });
});

describe("second solver: temperatures of a section by mathjs lusolve", () => {
  it("300 random sections, every node within 10⁻⁹ K of a degree's difference", () => {
    fc.assert(
      fc.property(sections, months, (section, month) => {
        const { line, inside, outside, climate } = section;
        const network = new Network();
        const points = [network.point()];
        network.link(network.warmAir, points[0]!, 1 / RSI);
        for (let node = 1; node < line.count; node += 1) {
          const resistance = line.resistanceTo[node]! - line.resistanceTo[node - 1]!;
          // A sheet has no resistance: both its faces are one point in temperature.
          points.push(resistance > 0 ? network.point() : points[node - 1]!);
          if (resistance > 0) network.link(points[node - 1]!, points[node]!, 1 / resistance);
        }
        network.link(points[line.count - 1]!, network.coldAir, 1 / RSE);
        const { temperature } = network.solve();
        const difference = inside.temperature[month]! - outside.temperature[month]!;
        points.forEach((point, node) => {
          const second = outside.temperature[month]! + temperature[point]! * difference;
          expect(Math.abs(climate.temperature[month]![node]! - second)).toBeLessThan(
            1e-9 * Math.max(1, Math.abs(difference)),
          );
        });
      }),
      { numRuns: 300, seed: 13788 },
    );
  });
});
