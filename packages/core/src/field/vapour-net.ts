import type { Front } from "./dissection.ts";
import { type Factor, factorise, frontsOf, workOfFactor } from "./factor.ts";
import { diagonalOf, type Net } from "./net.ts";

/** Vapour in a net with given pressures at its surfaces; one factorisation serves all months. */
export interface VapourNet {
  net: Net;
  /** 1 for a node at a surface, whose pressure is given. */
  surface: Uint8Array;
  /** 1 for a node inside. */
  inner: Uint8Array;
  factor: Factor;
  /** Sum of the conductances at every node [kg/(m·s·Pa)]. */
  diagonal: Float64Array;
  /** The order in which nodes are eliminated. */
  fronts: readonly Front[];
  /** Upper bound of the multiplications of a factorisation. */
  factorWork: number;
  /** Pressure at every node for a flow of 1 kg/(m·s) into one [Pa·m·s/kg], by that node; filled on demand. */
  responses: Map<number, Float64Array>;
  /** Multiplications used by the months so far. */
  work: number;
}

/** A vapour net ready to be solved. */
export function vapourNet(net: Net, surface: Uint8Array, fronts: readonly Front[] = frontsOf(net)): VapourNet {
  const inner = net.active.map((isActive, node) => (isActive === 1 && surface[node] !== 1 ? 1 : 0));
  const factor = factorise(net, inner, fronts);
  const diagonal = diagonalOf(net);
  const factorWork = workOfFactor(fronts);
  return { net, surface, inner, factor, diagonal, fronts, factorWork, responses: new Map(), work: 0 };
}

/**
 * Pressures for given surface pressures, without condensation.
 *
 * @param vapour - the net
 * @param given - pressure at surface nodes [Pa]; elsewhere not read
 * @returns pressure of every node [Pa]
 */
export function unlimitedPressure({ net, surface, inner, factor }: VapourNet, given: Float64Array): Float64Array {
  return heldPressure(net, surface, inner, factor, given, new Float64Array(inner.length));
}

/**
 * Pressures for given surface and wet-node pressures, with a factorisation made for these wet nodes only.
 *
 * @param vapour - the net
 * @param wet - 1 for a wet node
 * @param given - pressure at surface nodes and wet nodes [Pa]; elsewhere not read
 * @param load - flow into every other node [kg/(m·s)]; changed in place
 * @returns pressure of every node [Pa]
 */
export function pressureAround(
  { net, surface, inner, fronts }: VapourNet,
  wet: Uint8Array,
  given: Float64Array,
  load: Float64Array,
): Float64Array {
  const free = inner.map((isInner, node) => (isInner === 1 && wet[node] === 0 ? 1 : 0));
  const held = surface.map((isSurface, node) => (isSurface === 1 || wet[node] === 1 ? 1 : 0));
  return heldPressure(net, held, free, factorise(net, free, fronts), given, load);
}

/** Pressures of free nodes beside held ones [Pa]; the load is changed in place. */
function heldPressure(
  { columns, east, north }: Net,
  held: Uint8Array,
  free: Uint8Array,
  factor: Factor,
  given: Float64Array,
  load: Float64Array,
): Float64Array {
  const pull = (node: number, neighbour: number, conductance: number): void => {
    if (conductance > 0 && free[neighbour] === 1) load[neighbour]! += conductance * given[node]!;
  };
  for (let node = 0; node < load.length; node += 1) {
    if (held[node] !== 1) continue;
    pull(node, node + 1, east[node]!);
    pull(node, node + columns, north[node]!);
    if (node > 0) pull(node, node - 1, east[node - 1]!);
    if (node >= columns) pull(node, node - columns, north[node - columns]!);
  }
  const pressure = factor.solve(load);
  for (let node = 0; node < load.length; node += 1) if (held[node] === 1) pressure[node] = given[node]!;
  return pressure;
}

/**
 * Rise of pressures when 1 kg/(m·s) enters at a node, with surface pressures held.
 *
 * @param vapour - the net; the response is kept in it
 * @param node - index of an inner node
 * @returns pressure of every node [Pa per kg/(m·s)]
 */
export function responseOf({ responses, factor, inner }: VapourNet, node: number): Float64Array {
  let response = responses.get(node);
  if (response === undefined) {
    const load = new Float64Array(inner.length);
    load[node] = 1;
    response = factor.solve(load);
    responses.set(node, response);
  }
  return response;
}
