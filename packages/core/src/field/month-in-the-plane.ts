import { flowFrom } from "./net.ts";
import { solveSymmetric } from "./solve-symmetric.ts";
import { pressureAround, responseOf, type VapourNet } from "./vapour-net.ts";

/** The boundary conditions of a month. */
export interface MonthDrive {
  /** psat of every node [Pa]; infinite inside air, where no water can lie. */
  limit: Float64Array;
  /** Pressure without water and without the limit of saturation [Pa]. */
  unlimited: Float64Array;
  seconds: number;
}

/** The result of a month. */
export interface PlaneMonth {
  /** Mean vapour pressure of the month [Pa]. */
  pressure: Float64Array;
  /** Water at every node [kg/m]. */
  held: Float64Array;
  /** 1 for a node at saturation throughout. */
  wet: Uint8Array;
}

/** Relative amount by which pressure may exceed saturation before the node counts as wet [–]. */
const SLACK = 1e-9;

/** Error of a node's gain, a small difference of the flows through it, relative to those flows [–]. */
const ROUNDING = 1e-12;

/** Most multiplications for the months of one scene; the demo's wall takes 1.3·10⁵ (this project's rule). */
export const MOST_WORK = 1e8;

/** Thrown if so much of a scene is wet that its months would take too long. */
export class PlaneTooWet extends RangeError {}

/** Rounds in which only the worst node of each run becomes wet; after them all do, which is certain to end. */
const CAREFUL_ROUNDS = 60;
const MOST_ROUNDS = 500;

/**
 * A month of vapour: the pressure p is nowhere above saturation, the water m nowhere below 0, and where there is water
 * at the month's end, p is at saturation:
 *
 *   m = m0 + Δt·gain(p) ≥ 0,   p ≤ psat,   m·(psat − p) = 0
 *
 * One step is exact for a month of constant air with drying within the month: pressures only fall then, so a node that
 * runs dry stays dry, and the month's mean pressure satisfies the same equations. The matrix is an M-matrix: there is
 * exactly one solution, and a search that wets and releases nodes ends. A few wet nodes are sources in the year's own
 * factorisation; where that takes more work than a new factorisation, one is made for them.
 *
 * @param vapour - the net
 * @param drive - the month's saturation and unlimited pressures [Pa]
 * @param before - water at its beginning [kg/m]
 * @param guess - nodes that may be wet: those of the month before
 * @returns pressures and water at its end
 * @throws PlaneTooWet when all months of the scene together take too much work
 * Source: ISO 13788:2012 clause 6 in two dimensions, with drying within the month (this project's rule); a
 *   complementarity problem, solved by an active set.
 */
export function solvePlaneMonth(
  vapour: VapourNet,
  drive: MonthDrive,
  before: Float64Array,
  guess: Uint8Array | null,
): PlaneMonth {
  const { limit, seconds } = drive;
  const nodes = limit.length;
  const wet = new Uint8Array(nodes);
  for (let node = 0; node < nodes; node += 1)
    if (vapour.inner[node] === 1 && (before[node]! > 0 || guess?.[node] === 1)) wet[node] = 1;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { pressure, wetNodes, gains } = withWetNodes(vapour, drive, before, wet);
    const held = (index: number): number => before[wetNodes[index]!]! + seconds * gains[index]!;
    const isGone = (node: number, index: number): boolean =>
      held(index) < -ROUNDING * seconds * vapour.diagonal[node]! * limit[node]!;
    const released = wetNodes.filter(isGone);
    const taken = overSaturated(vapour, wet, pressure, limit, round >= CAREFUL_ROUNDS);
    if (released.length === 0 && taken.length === 0) {
      const water = new Float64Array(nodes);
      for (const [index, node] of wetNodes.entries()) water[node] = Math.max(0, held(index));
      return { pressure, held: water, wet };
    }
    for (const node of released) wet[node] = 0;
    for (const node of taken) wet[node] = 1;
  }
  throw new RangeError("a month of vapour in the plane has no solution");
}

/** A trial for a month: the wet nodes at saturation, and all water of the other nodes gone. */
export interface PlaneTry {
  pressure: Float64Array;
  wetNodes: number[];
  /** Gain of every wet node [kg/(m·s)]. */
  gains: Float64Array;
}

function withWetNodes(vapour: VapourNet, drive: MonthDrive, before: Float64Array, wet: Uint8Array): PlaneTry {
  const wetNodes: number[] = [];
  for (let node = 0; node < wet.length; node += 1) if (wet[node] === 1) wetNodes.push(node);
  const asSources = workAsSources(vapour, wetNodes.length);
  countWork(vapour, Math.min(asSources, vapour.factorWork));
  const way = asSources < vapour.factorWork ? byResponses : byOwnFactor;
  return way(vapour, drive, before, wetNodes, wet);
}

/** Multiplications of a dense Cholesky factorisation of the wet nodes, and of their responses at every node. */
function workAsSources({ inner }: VapourNet, wetNodes: number): number {
  return wetNodes ** 3 / 6 + wetNodes * inner.length;
}

function countWork(vapour: VapourNet, work: number): void {
  vapour.work += work;
  if (vapour.work > MOST_WORK)
    throw new PlaneTooWet("too much of the cross-section is wet to be worked out in the plane");
}

/**
 * Solves with the wet nodes as sources in the year's factorisation.
 *
 * @param vapour - the net
 * @param drive - the month's boundary conditions
 * @param before - water at its beginning [kg/m]
 * @param wetNodes - the wet nodes, in ascending order
 * @param wet - the same, 1 for a wet node
 * @returns pressures, and gains of the wet nodes
 */
export function byResponses(
  vapour: VapourNet,
  { limit, unlimited, seconds }: MonthDrive,
  before: Float64Array,
  wetNodes: number[],
  wet: Uint8Array,
): PlaneTry {
  const pressure = unlimited.slice();
  for (let node = 0; node < wet.length; node += 1)
    if (wet[node] === 0 && before[node]! > 0) takeOut(pressure, responseOf(vapour, node), -before[node]! / seconds);
  const over = Float64Array.from(wetNodes, (node) => pressure[node]! - limit[node]!);
  const gains = gainsOf(vapour, wetNodes, over);
  for (const [index, node] of wetNodes.entries()) takeOut(pressure, responseOf(vapour, node), gains[index]!);
  for (const node of wetNodes) pressure[node] = limit[node]!;
  return { pressure, wetNodes, gains };
}

/** The same with the wet nodes held at saturation, in their own factorisation. */
export function byOwnFactor(
  vapour: VapourNet,
  { limit, unlimited, seconds }: MonthDrive,
  before: Float64Array,
  wetNodes: number[],
  wet: Uint8Array,
): PlaneTry {
  const given = unlimited.slice();
  for (const node of wetNodes) given[node] = limit[node]!;
  const load = before.map((amount, node) => (wet[node] === 0 ? amount / seconds : 0));
  const pressure = pressureAround(vapour, wet, given, load);
  const gains = Float64Array.from(wetNodes, (node) => -flowFrom(vapour.net, pressure, node));
  return { pressure, wetNodes, gains };
}

/** Lowers pressures by the effect of a node's gain [kg/(m·s)]. */
function takeOut(pressure: Float64Array, response: Float64Array, gain: number): void {
  for (let node = 0; node < pressure.length; node += 1) pressure[node]! -= gain * response[node]!;
}

/** Gains of nodes [kg/(m·s)] that lower their pressures by given amounts [Pa]: dense Cholesky. */
function gainsOf(vapour: VapourNet, nodes: readonly number[], over: Float64Array): Float64Array {
  const size = nodes.length;
  const matrix = new Float64Array(size * size);
  for (const [row, node] of nodes.entries()) {
    const response = responseOf(vapour, node);
    for (let column = 0; column <= row; column += 1) matrix[row * size + column] = response[nodes[column]!]!;
  }
  return solveSymmetric(matrix, size, over);
}

/**
 * Nodes above saturation that become wet. Of every run of them across the build-up only the worst is taken, so that a
 * condensation plane is found directly, without releasing a whole layer afterwards.
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
      if (inner[node] === 1 && wet[node] === 0 && pressure[node]! > (1 + SLACK) * limit[node]!) {
        const over = pressure[node]! / limit[node]!;
        if (all) taken.push(node);
        else if (over > most) {
          worst = node;
          most = over;
        }
      } else if (worst >= 0) {
        taken.push(worst);
        worst = -1;
        most = 0;
      }
    }
  }
  return taken;
}
