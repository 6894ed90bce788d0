import { type Factor, factorise } from "./factor.ts";
import { flowFrom, type Net } from "./net.ts";

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
}

/** A vapour net ready to be solved. */
export function vapourNet(net: Net, surface: Uint8Array): VapourNet {
  const inner = net.active.map((isActive, node) => (isActive === 1 && surface[node] !== 1 ? 1 : 0));
  return { net, surface, inner, factor: factorise(net, inner), responses: new Map() };
}

/**
 * Pressures with given ones at the surfaces, nothing condensing.
 *
 * @param vapour - the net
 * @param given - pressure at surface nodes [Pa]; elsewhere not read
 * @returns pressure of every node [Pa]
 */
export function unlimitedPressure({ net, surface, inner, factor }: VapourNet, given: Float64Array): Float64Array {
  const held = given.map((pressure, node) => (surface[node] === 1 ? pressure : 0));
  const load = held.map((_, node) => (inner[node] === 1 ? -flowFrom(net, held, node) : 0));
  const pressure = factor.solve(load);
  for (const [node, isSurface] of surface.entries()) if (isSurface === 1) pressure[node] = given[node]!;
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
