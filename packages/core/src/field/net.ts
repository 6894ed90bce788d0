/**
 * Conductances between the nodes of a lattice, and from them to the surrounding airs, per metre of length:
 * [W/(m·K)] for heat, [kg/(m·s·Pa)] for vapour.
 */
export interface Net {
  columns: number;
  rows: number;
  /** From a node to the next one in its row. */
  east: Float64Array;
  /** From a node to the one above it. */
  north: Float64Array;
  /** From a node to each air. */
  toAir: Float64Array[];
  /** 1 for a node next to stuff. */
  active: Uint8Array;
}

/** The quantity that a net carries. */
export type Carried = "heat" | "vapour";

/** A net without conductances. */
export function emptyNet(columns: number, rows: number, airs: number): Net {
  const nodes = columns * rows;
  return {
    columns,
    rows,
    east: new Float64Array(nodes),
    north: new Float64Array(nodes),
    toAir: Array.from({ length: airs }, () => new Float64Array(nodes)),
    active: new Uint8Array(nodes),
  };
}

/** Sum of the conductances at every node: the diagonal of the net's matrix [W/(m·K)] or [kg/(m·s·Pa)]. */
export function diagonalOf({ columns, east, north, toAir }: Net): Float64Array {
  const diagonal = new Float64Array(east.length);
  for (let node = 0; node < diagonal.length; node += 1) {
    if (east[node]! > 0) {
      diagonal[node]! += east[node]!;
      diagonal[node + 1]! += east[node]!;
    }
    if (north[node]! > 0) {
      diagonal[node]! += north[node]!;
      diagonal[node + columns]! += north[node]!;
    }
    for (const conductances of toAir) diagonal[node]! += conductances[node]!;
  }
  return diagonal;
}

/**
 * Flow out of a node into its neighbours.
 *
 * @param net - the net
 * @param potential - of every node: temperature [°C] or vapour pressure [Pa]
 * @param node - index of the node
 * @returns [W/m] or [kg/(m·s)]
 */
export function flowFrom({ columns, east, north }: Net, potential: Float64Array, node: number): number {
  const own = potential[node]!;
  let flow = 0;
  if (east[node]! > 0) flow += east[node]! * (own - potential[node + 1]!);
  if (north[node]! > 0) flow += north[node]! * (own - potential[node + columns]!);
  if (node > 0 && east[node - 1]! > 0) flow += east[node - 1]! * (own - potential[node - 1]!);
  if (node >= columns && north[node - columns]! > 0)
    flow += north[node - columns]! * (own - potential[node - columns]!);
  return flow;
}
