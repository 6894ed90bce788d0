import fc from "fast-check";
import { lusolve, type Matrix, matrix, sparse } from "mathjs";
import { solveQP } from "quadprog";
import { describe, expect, it } from "vitest";
import { saturationPressure } from "../../packages/core/src/air/saturation-pressure.ts";
import { cornerNet } from "../../packages/core/src/field/corner-net.ts";
import type { MeshRule } from "../../packages/core/src/field/graded-lines.ts";
import { meshOf } from "../../packages/core/src/field/mesh.ts";
import { solvePlaneMonth } from "../../packages/core/src/field/month-in-the-plane.ts";
import type { Net } from "../../packages/core/src/field/net.ts";
import { heatField, temperaturesOf } from "../../packages/core/src/field/plane-heat.ts";
import { repeatingCell } from "../../packages/core/src/field/repeating-cell.ts";
import { unlimitedPressure, vapourNet } from "../../packages/core/src/field/vapour-net.ts";
import { cells } from "./random-cells.ts";
import { between } from "./random-sections.ts";

/** Few nodes, so that a dense second solver is quick: what is compared is the solution of the same equations. */
const COARSE: MeshRule = { first: 0.02, growth: 2, greatest: 0.15, leastSteps: 1 };

/** Equations of a net written out again, with nodes that are held taking no part: matrix and the order of its unknowns. */
function equationsOf(net: Net, isFree: (node: number) => boolean): { rows: number[][]; nodes: number[] } {
  const nodes = [...net.active.keys()].filter((node) => net.active[node] === 1 && isFree(node));
  const place = new Map(nodes.map((node, index) => [node, index]));
  const rows = nodes.map(() => new Array<number>(nodes.length).fill(0));
  const link = (one: number, other: number, conductance: number): void => {
    for (const [from, to] of [
      [place.get(one), place.get(other)],
      [place.get(other), place.get(one)],
    ]) {
      if (from === undefined) continue;
      rows[from]![from]! += conductance;
      if (to !== undefined) rows[from]![to]! -= conductance;
    }
  };
  for (const node of net.active.keys()) {
    if (net.east[node]! > 0) link(node, node + 1, net.east[node]!);
    if (net.north[node]! > 0) link(node, node + net.columns, net.north[node]!);
    for (const toAir of net.toAir) if (place.has(node)) rows[place.get(node)!]![place.get(node)!]! += toAir[node]!;
  }
  return { rows, nodes };
}

describe("second solver: heat of random framed cells by mathjs lusolve, sparse", () => {
  it("60 cells on both nets, every node within 10⁻⁹ of a degree's difference", () => {
    fc.assert(
      fc.property(cells, fc.constantFrom("corners" as const, "middles" as const), (question, places) => {
        const { scene } = repeatingCell(question);
        const field = heatField(scene, meshOf(scene, COARSE), places);
        const { rows, nodes } = equationsOf(field.net, () => true);
        const load = matrix(nodes.map((node) => [field.net.toAir[0]![node]!]));
        const second = (lusolve(sparse(rows) as unknown as Matrix, load) as Matrix).toArray() as number[][];
        for (const [index, node] of nodes.entries())
          expect(Math.abs(field.shares[0]![node]! - second[index]![0]!)).toBeLessThan(1e-9);
      }),
      { numRuns: 60, seed: 10211 },
    );
  });
});

describe("second solver: a month of vapour of random cells as a quadratic programme by quadprog", () => {
  /** Months from dry: least ½pᵀAp − bᵀp under p ≤ psat has the conditions of a month without water before. */
  it("50 cells in frost, pressures within 0.01 Pa, condensation in some of them", () => {
    let wetCells = 0;
    fc.assert(
      fc.property(cells, between(-15, 5), between(0.4, 0.8), (question, outdoors, humidity) => {
        const { scene } = repeatingCell({ ...question, sheets: true });
        const field = heatField(scene, meshOf(scene, COARSE));
        const temperature = temperaturesOf(field, [20, outdoors]);
        const limit = temperature.map(saturationPressure);
        const given = limit.map((most, node) => {
          const air = field.net.toAir.findIndex((toAir) => toAir[node]! > 0);
          return air < 0
            ? 0
            : Math.min(most, air === 0 ? humidity * saturationPressure(20) : 0.8 * saturationPressure(outdoors));
        });
        const surface = field.net.active.map((_, node) => (field.net.toAir.some((toAir) => toAir[node]! > 0) ? 1 : 0));
        const vapour = vapourNet(cornerNet(scene, field.mesh, "vapour"), surface);
        const drive = { limit, unlimited: unlimitedPressure(vapour, given), seconds: 1 };
        const month = solvePlaneMonth(vapour, drive, new Float64Array(limit.length), null);
        const second = byQuadraticProgramme(vapour.net, surface, given, limit);
        for (const [node, pressure] of second) expect(Math.abs(month.pressure[node]! - pressure)).toBeLessThan(0.01);
        if (month.held.some((amount) => amount > 0)) wetCells += 1;
      }),
      { numRuns: 50, seed: 13788 },
    );
    expect(wetCells).toBeGreaterThan(10);
  });
});

/** Pressures of the inner nodes [Pa] by `quadprog` (lists from 1), scaled by the diagonal so that sheets do no harm. */
function byQuadraticProgramme(
  net: Net,
  surface: Uint8Array,
  given: Float64Array,
  limit: Float64Array,
): Map<number, number> {
  const { rows, nodes } = equationsOf(net, (node) => surface[node] !== 1);
  const scale = rows.map((row, index) => 1 / Math.sqrt(row[index]!));
  const load = nodes.map((node) => {
    let sum = 0;
    const pull = (other: number, conductance: number): void => {
      if (conductance > 0 && surface[other] === 1) sum += conductance * given[other]!;
    };
    pull(node + 1, net.east[node]!);
    pull(node + net.columns, net.north[node]!);
    if (node > 0) pull(node - 1, net.east[node - 1]!);
    if (node >= net.columns) pull(node - net.columns, net.north[node - net.columns]!);
    return sum;
  });
  const from1 = (values: readonly number[]): number[] => [0, ...values];
  const quadratic = [[0], ...rows.map((row, i) => from1(row.map((value, j) => value * scale[i]! * scale[j]!)))];
  const unscaled = 1e-6;
  const linear = from1(load.map((value, i) => value * scale[i]! * unscaled));
  const constraints = [[0], ...nodes.map((_, i) => from1(nodes.map((__, j) => (i === j ? -1 : 0))))];
  const bounds = from1(nodes.map((node, i) => (-limit[node]! / scale[i]!) * unscaled));
  const { solution, message } = solveQP(quadratic, linear, constraints, bounds, 0);
  if (message !== "") throw new Error(message);
  return new Map(nodes.map((node, i) => [node, (solution[i + 1]! * scale[i]!) / unscaled]));
}
