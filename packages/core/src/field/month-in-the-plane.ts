import { eliminate, solveTriangles } from "./eliminate.ts";
import { responseOf, type VapourNet } from "./vapour-net.ts";

/** What drives a month. */
export interface MonthDrive {
  /** psat of every node [Pa]; infinite in the midst of air, where no water can lie. */
  limit: Float64Array;
  /** Pressure with no water anywhere and no limit to it [Pa]. */
  unlimited: Float64Array;
  seconds: number;
}

/** A month's end. */
export interface PlaneMonth {
  /** Mean vapour pressure of the month [Pa]. */
  pressure: Float64Array;
  /** Water at every node [kg/m]. */
  held: Float64Array;
  /** 1 for a node at saturation throughout. */
  wet: Uint8Array;
}

/** A pressure may pass saturation by this part of it before its node counts as wet [–]. */
const SLACK = 1e-9;

/** So many rounds take only the worst node of each run; then all are taken, which ends for certain. */
const CAREFUL_ROUNDS = 60;
const MOST_ROUNDS = 500;

/**
 * A month of vapour: the pressure p is nowhere above saturation, the water m nowhere less than none, and where there is
 * water at the month's end p is at saturation:
 *
 *   m = m0 + Δt·gain(p) ≥ 0,   p ≤ psat,   m·(psat − p) = 0
 *
 * One step is exact for a month of constant air with drying inside the month: pressures only fall then, so that a node
 * that runs dry stays dry, and the month's mean pressure obeys the same lines. The matrix is of M type: there is exactly
 * one solution, and a search that takes and releases nodes ends. The year's factor is never made again: nodes that gain
 * or lose water are sources in it.
 *
 * @param vapour - the net
 * @param drive - the month's saturation and unlimited pressures [Pa]
 * @param before - water at its beginning [kg/m]
 * @param guess - nodes that may be wet: those of the month before
 * @returns pressures and water at its end
 * Source: ISO 13788:2012 clause 6 in two dimensions, drying inside the month (this project's rule); a complementarity
 *   problem, solved by an active set.
 */
export function solvePlaneMonth(
  vapour: VapourNet,
  drive: MonthDrive,
  before: Float64Array,
  guess: Uint8Array | null,
): PlaneMonth {
  const { limit, seconds } = drive;
  const wet = vapour.inner.map((isInner, node) =>
    isInner === 1 && (before[node]! > 0 || guess?.[node] === 1) ? 1 : 0,
  );
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { pressure, gains } = withWetNodes(vapour, drive, before, wet);
    const released = [...gains].filter(([node, gain]) => wet[node] === 1 && before[node]! + seconds * gain < 0);
    const taken = overSaturated(vapour, wet, pressure, limit, round >= CAREFUL_ROUNDS);
    if (released.length === 0 && taken.length === 0) {
      const held = new Float64Array(pressure.length);
      for (const [node, gain] of gains) if (wet[node] === 1) held[node] = before[node]! + seconds * gain;
      return { pressure, held, wet };
    }
    for (const [node] of released) wet[node] = 0;
    for (const node of taken) wet[node] = 1;
  }
  throw new RangeError("a month of vapour in the plane has no solution");
}

/** Pressures with the wet nodes at saturation and all water of the others gone, and what every such node gains [kg/(m·s)]. */
function withWetNodes(
  vapour: VapourNet,
  { limit, unlimited, seconds }: MonthDrive,
  before: Float64Array,
  wet: Uint8Array,
): { pressure: Float64Array; gains: Map<number, number> } {
  const gains = new Map<number, number>();
  const pressure = unlimited.slice();
  const add = (node: number, gain: number): void => {
    const response = responseOf(vapour, node);
    for (let other = 0; other < pressure.length; other += 1) pressure[other]! -= gain * response[other]!;
    gains.set(node, gain);
  };
  for (const [node, amount] of before.entries()) if (amount > 0 && wet[node] === 0) add(node, -amount / seconds);
  const nodes = [...wet.keys()].filter((node) => wet[node] === 1);
  const over = Float64Array.from(nodes, (node) => pressure[node]! - limit[node]!);
  const found = gainsOf(vapour, nodes, over);
  for (const [index, node] of nodes.entries()) add(node, found[index]!);
  for (const node of nodes) pressure[node] = limit[node]!;
  return { pressure, gains };
}

/** What nodes must gain [kg/(m·s)] so that their pressures fall by given amounts [Pa]: dense Cholesky. */
function gainsOf(vapour: VapourNet, nodes: readonly number[], over: Float64Array): Float64Array {
  const size = nodes.length;
  const matrix = new Float64Array(size * size);
  for (const [row, node] of nodes.entries()) {
    const response = responseOf(vapour, node);
    for (let column = 0; column <= row; column += 1) matrix[row * size + column] = response[nodes[column]!]!;
  }
  eliminate(matrix, size, size);
  return solveTriangles(matrix, size, over);
}

/**
 * Nodes above saturation that are to be taken as wet. Of every run of them across the build-up only the worst, so that a
 * plane where water gathers is found at once and not by releasing a whole layer.
 */
function overSaturated(
  { net, inner }: VapourNet,
  wet: Uint8Array,
  pressure: Float64Array,
  limit: Float64Array,
  all: boolean,
): number[] {
  const taken: number[] = [];
  for (let column = 0; column < net.columns; column += 1) {
    let worst = -1;
    let most = 0;
    for (let row = 0; row <= net.rows; row += 1) {
      const node = row * net.columns + column;
      const over = inner[node] === 1 && wet[node] === 0 ? pressure[node]! / limit[node]! - 1 : 0;
      if (over > SLACK) {
        if (all) taken.push(node);
        else if (over > most) [worst, most] = [node, over];
      } else if (worst >= 0) {
        taken.push(worst);
        [worst, most] = [-1, 0];
      }
    }
  }
  return taken;
}
