import type { Slice } from "./section-slices.ts";

/** Layers but air are cut so that no part has more than this [m²·K/W]. Source: ISO 13788:2012 clause 6.3 (from memory). */
export const LARGEST_PART_RESISTANCE = 0.25;

/** Nodes closer than this in sd are one node [m] (this project's rule). */
export const CLOSEST_NODES = 1e-6;

/** The nodes of a section from the room surface (node 0) to the outer surface, as parallel lists. */
export interface NodeLine {
  /** Number of nodes. */
  count: number;
  /** sd from the room surface [m]. */
  sd: Float64Array;
  /** Resistance from the room surface to the near and far member of the node's group [m²·K/W]; equal for a single node. */
  resistanceFrom: Float64Array;
  resistanceTo: Float64Array;
  /** Depth from the room surface [m]. */
  depth: Float64Array;
  /** Index of the layer that ends or is cut at the node; −1 at the room surface. */
  layer: Int32Array;
  /** Total resistance between the surfaces [m²·K/W]. */
  totalResistance: number;
}

/**
 * Cuts the slices of a section into parts and lays out its nodes.
 *
 * @param slices - slices from the room outwards
 * @param largestPart - greatest resistance of a part [m²·K/W]
 * @returns the nodes; nodes closer than 10⁻⁶ m in sd are one
 * Source: ISO 13788:2012 clause 6.3 (from memory): parts of at most 0.25 m²·K/W; air layers are never cut.
 */
export function nodeLine(slices: readonly Slice[], largestPart: number = LARGEST_PART_RESISTANCE): NodeLine {
  const nodes: { sd: number; from: number; to: number; depth: number; layer: number }[] = [
    { sd: 0, from: 0, to: 0, depth: 0, layer: -1 },
  ];
  let sd = 0;
  let resistance = 0;
  let depth = 0;
  for (const slice of slices) {
    const parts = slice.isAir ? 1 : Math.max(1, Math.ceil(slice.resistance / largestPart - ROUNDING));
    for (let part = 1; part <= parts; part += 1) {
      const share = part / parts;
      const at = { sd: sd + share * slice.sd, resistance: resistance + share * slice.resistance };
      const last = nodes[nodes.length - 1]!;
      const node = {
        sd: at.sd,
        from: at.resistance,
        to: at.resistance,
        depth: depth + share * slice.thickness,
        layer: slice.layer,
      };
      if (at.sd - last.sd < CLOSEST_NODES) {
        last.to = at.resistance;
        last.depth = node.depth;
        if (last.layer >= 0) last.layer = slice.layer;
      } else {
        nodes.push(node);
      }
    }
    sd += slice.sd;
    resistance += slice.resistance;
    depth += slice.thickness;
  }
  return {
    count: nodes.length,
    sd: Float64Array.from(nodes, (node) => node.sd),
    resistanceFrom: Float64Array.from(nodes, (node) => node.from),
    resistanceTo: Float64Array.from(nodes, (node) => node.to),
    depth: Float64Array.from(nodes, (node) => node.depth),
    layer: Int32Array.from(nodes, (node) => node.layer),
    totalResistance: resistance,
  };
}

/** Keeps a layer of exactly n parts from being cut once more by the last digit of a division. */
const ROUNDING = 1e-9;
