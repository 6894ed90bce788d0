import type { Front } from "./dissection.ts";
import { type Factor, factorise, frontsOf } from "./factor.ts";
import type { Net } from "./net.ts";

/** Vapour in a net with given pressures at its surfaces; one factor serves all months. */
export interface VapourNet {
  net: Net;
  /** 1 for a node at a surface, whose pressure is given. */
  surface: Uint8Array;
  /** 1 for a node inside. */
  inner: Uint8Array;
  factor: Factor;
  /** Pressure at every node for a flow of 1 kg/(m·s) into one [Pa·m·s/kg], by that node; filled as they are needed. */
  responses: Map<number, Float64Array>;
  /** Multiplications that months have taken so far. */
  work: number;
}

/** A vapour net ready to be solved. */
export function vapourNet(net: Net, surface: Uint8Array, fronts: readonly Front[] = frontsOf(net)): VapourNet {
  const inner = net.active.map((isActive, node) => (isActive === 1 && surface[node] !== 1 ? 1 : 0));
  return { net, surface, inner, factor: factorise(net, inner, fronts), responses: new Map(), work: 0 };
}

/**
 * Pressures with given ones at the surfaces, nothing condensing.
 *
 * @param vapour - the net
 * @param given - pressure at surface nodes [Pa]; elsewhere not read
 * @returns pressure of every node [Pa]
 */
export function unlimitedPressure({ net, surface, inner, factor }: VapourNet, given: Float64Array): Float64Array {
  const { columns, east, north } = net;
  const load = new Float64Array(inner.length);
  const pull = (node: number, neighbour: number, conductance: number): void => {
    if (conductance > 0 && inner[neighbour] === 1) load[neighbour]! += conductance * given[node]!;
  };
  for (let node = 0; node < load.length; node += 1) {
    if (surface[node] !== 1) continue;
    pull(node, node + 1, east[node]!);
    pull(node, node + columns, north[node]!);
    if (node > 0) pull(node, node - 1, east[node - 1]!);
    if (node >= columns) pull(node, node - columns, north[node - columns]!);
  }
  const pressure = factor.solve(load);
  for (let node = 0; node < load.length; node += 1) if (surface[node] === 1) pressure[node] = given[node]!;
  return pressure;
}

/**
 * How pressures rise when 1 kg/(m·s) enters at a node, the surfaces held.
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
