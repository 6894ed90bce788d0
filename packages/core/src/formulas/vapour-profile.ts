import { requireList, requireNumber } from "../require.ts";
import { CLOSEST_NODES } from "../vapour/node-line.ts";
import { solveVapourProfile } from "../vapour/vapour-profile.ts";

/** Vapour pressure along a section, and the gain of each node. */
export interface VapourProfile {
  /** p at the nodes [Pa]. */
  pressure: number[];
  /** Gain of each node [kg/(m²·s)]: positive condenses, negative evaporates. */
  gain: number[];
}

/**
 * Vapour pressure along a section under steady conditions.
 *
 * @param sd - of the nodes from the room surface [m], rising by at least 10⁻⁶
 * @param saturation - psat at the nodes [Pa], 0.01 to 100 000
 * @param insideSurface - p at the first node [Pa], 0 to its saturation
 * @param outsideSurface - p at the last node [Pa], 0 to its saturation
 * @param wetNodes - nodes that hold water, from 0 (default none)
 * @returns pressure [Pa] and gain [kg/(m²·s)] of every node
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13788:2012 clause 6.4 (from memory) as the lower convex hull.
 * @example vapourProfile([0, 2, 2.5], [2336.95, 475.46, 401], 1168, 321).gain[1] * 1e9 // 7.47
 */
export function vapourProfile(
  sd: readonly number[],
  saturation: readonly number[],
  insideSurface: number,
  outsideSurface: number,
  wetNodes: readonly number[] = [],
): VapourProfile {
  for (const [name, list] of Object.entries({ sd, saturation, wetNodes })) requireList(list, name);
  if (sd.length < 2 || sd.length > MOST_NODES || saturation.length !== sd.length)
    throw new RangeError(`sd and saturation must be of one length, 2 to ${MOST_NODES} nodes`);
  for (const [node, value] of sd.entries())
    requireNumber(value, `sd[${node}]`, "m", node === 0 ? 0 : sd[node - 1]! + CLOSEST_NODES, 1e7);
  for (const [node, value] of saturation.entries()) requireNumber(value, `saturation[${node}]`, "Pa", 0.01, 100_000);
  requireNumber(insideSurface, "insideSurface", "Pa", 0, saturation[0]!);
  requireNumber(outsideSurface, "outsideSurface", "Pa", 0, saturation[saturation.length - 1]!);
  const isWet = new Uint8Array(sd.length);
  for (const node of wetNodes) {
    requireNumber(node, "each of wetNodes", "", 0, sd.length - 1);
    isWet[node] = 1;
  }
  const pressure = new Float64Array(sd.length);
  const gain = new Float64Array(sd.length);
  solveVapourProfile(
    Float64Array.from(sd),
    Float64Array.from(saturation),
    insideSurface,
    outsideSurface,
    isWet,
    pressure,
    gain,
  );
  return { pressure: [...pressure], gain: [...gain] };
}

const MOST_NODES = 100_000;
