import { wholeZeros, zeros } from "./number-lists.ts";
import type { Slice } from "./section-slices.ts";

/** Largest R of a part; air is not divided [m²·K/W]. Source: ISO 13788:2012 clause 6.3 (from memory). */
export const LARGEST_PART_RESISTANCE = 0.25;

/** Nodes closer than this in sd are one node [m] (this project's rule). */
export const CLOSEST_NODES = 1e-6;

/** The nodes of a section from the room surface (node 0) to the outer surface, as parallel lists. */
export interface NodeLine {
  /** Number of nodes. */
  count: number;
  /** sd from the room surface [m]. */
  sd: Float64Array;
  /** Resistance from the room surface to the first and last member of the node's group [m²·K/W]; equal for one node. */
  resistanceFrom: Float64Array;
  resistanceTo: Float64Array;
  /** Depth from the room surface [m]. */
  depth: Float64Array;
  /** Index of the layer that ends or is divided at the node; −1 at the room surface. */
  layer: Int32Array;
  /** Total resistance between the surfaces [m²·K/W]. */
  totalResistance: number;
}

/**
 * Divides the slices of a section into parts and sets out its nodes.
 *
 * @param slices - slices from the room outwards
 * @param largestPart - greatest resistance of a part [m²·K/W]
 * @returns the nodes; nodes closer than 10⁻⁶ m in sd are one
 * Source: ISO 13788:2012 clause 6.3 (from memory): parts of at most 0.25 m²·K/W; air layers are never divided.
 */
export function nodeLine(slices: readonly Slice[], largestPart: number = LARGEST_PART_RESISTANCE): NodeLine {
  const most = 1 + slices.reduce((sum, slice) => sum + partsOf(slice, largestPart), 0);
  const line: NodeLine = {
    count: 1,
    sd: zeros(most),
    resistanceFrom: zeros(most),
    resistanceTo: zeros(most),
    depth: zeros(most),
    layer: wholeZeros(most),
    totalResistance: 0,
  };
  line.layer[0] = -1;
  let sd = 0;
  let depth = 0;
  for (const slice of slices) {
    const parts = partsOf(slice, largestPart);
    for (let part = 1; part <= parts; part += 1) {
      const share = part / parts;
      const resistance = line.totalResistance + share * slice.resistance;
      placeNode(line, sd + share * slice.sd, resistance, depth + share * slice.thickness, slice.layer);
    }
    sd += slice.sd;
    line.totalResistance += slice.resistance;
    depth += slice.thickness;
  }
  return line.count === most ? line : shortened(line);
}

/** Number of parts of a slice; air is never divided. */
function partsOf(slice: Slice, largestPart: number): number {
  return slice.isAir ? 1 : Math.max(1, Math.ceil(slice.resistance / largestPart - ROUNDING));
}

/** Adds a node, or extends the last one to a group where the new one is too close to it in sd. */
function placeNode(line: NodeLine, sd: number, resistance: number, depth: number, layer: number): void {
  const last = line.count - 1;
  if (sd - line.sd[last]! < CLOSEST_NODES) {
    line.resistanceTo[last] = resistance;
    line.depth[last] = depth;
    if (line.layer[last]! >= 0) line.layer[last] = layer;
    return;
  }
  const node = last + 1;
  line.count = node + 1;
  line.sd[node] = sd;
  line.resistanceFrom[node] = resistance;
  line.resistanceTo[node] = resistance;
  line.depth[node] = depth;
  line.layer[node] = layer;
}

function shortened(line: NodeLine): NodeLine {
  const { count } = line;
  return {
    count,
    sd: line.sd.subarray(0, count),
    resistanceFrom: line.resistanceFrom.subarray(0, count),
    resistanceTo: line.resistanceTo.subarray(0, count),
    depth: line.depth.subarray(0, count),
    layer: line.layer.subarray(0, count),
    totalResistance: line.totalResistance,
  };
}

/** Keeps a rounding error from dividing a layer of exactly n parts into n + 1. */
const ROUNDING = 1e-9;
