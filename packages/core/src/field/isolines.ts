import { requireNumbers } from "../require.ts";
import { requireMesh, requireOfNodes } from "./given.ts";
import type { Mesh } from "./mesh.ts";

/** A line of equal value: its points in order, x then y [m]. */
export interface Isoline {
  /** In the unit of the field [°C], [Pa] or [–]. */
  value: number;
  points: readonly (readonly [number, number])[];
}

/** A piece of a line in one cell, between two edges. Edge numbers: twice the node, plus one for the edge upwards. */
interface Piece {
  from: number;
  to: number;
}

/**
 * Lines of equal value through a field given at the corners of a mesh.
 *
 * @param mesh - its mesh
 * @param values - at every crossing of its lines [any unit]; NaN for nodes that are not shown
 * @param levels - values of the lines [the same unit]
 * @returns lines, each from end to end or closed [m]
 * Source: marching squares with linear interpolation along the edges of the cells.
 */
export function isolines(mesh: Mesh, values: Float64Array, levels: readonly number[]): Isoline[] {
  requireMesh(mesh);
  requireOfNodes(values, "values", mesh.xs.length * mesh.ys.length);
  requireNumbers(levels, "levels", "");
  return levels.flatMap((level) => {
    const crossings = new Map<number, readonly [number, number]>();
    const pieces = piecesAt(mesh, values, level, crossings);
    return joined(pieces).map((edges) => ({ value: level, points: edges.map((edge) => crossings.get(edge)!) }));
  });
}

function piecesAt(
  { xs, ys, columns, rows }: Mesh,
  values: Float64Array,
  level: number,
  crossings: Map<number, readonly [number, number]>,
): Piece[] {
  const across = columns + 1;
  const crossing = (one: number, other: number): number | null => {
    const [low, high] = [values[one]! - level, values[other]! - level];
    if (!(low < 0 !== high < 0) || Number.isNaN(low + high)) return null;
    const share = low / (low - high);
    const crossing = (lines: Float64Array, from: number, to: number): number =>
      lines[from]! + share * (lines[to]! - lines[from]!);
    const key = 2 * one + (other === one + 1 ? 0 : 1);
    const row = (node: number): number => Math.floor(node / across);
    crossings.set(key, [crossing(xs, one % across, other % across), crossing(ys, row(one), row(other))]);
    return key;
  };
  const pieces: Piece[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const node = row * across + column;
      const around = [
        crossing(node, node + 1),
        crossing(node + 1, node + across + 1),
        crossing(node + across, node + across + 1),
        crossing(node, node + across),
      ].filter((edge) => edge !== null);
      // Two crossings make one piece; four make two pieces, paired in the order of the edges.
      for (let edge = 0; edge + 1 < around.length; edge += 2)
        pieces.push({ from: around[edge]!, to: around[edge + 1]! });
    }
  }
  return pieces;
}

/** Pieces joined end to end, as lists of edges. */
function joined(pieces: readonly Piece[]): number[][] {
  const at = new Map<number, Piece[]>();
  for (const piece of pieces) {
    for (const edge of [piece.from, piece.to]) {
      const known = at.get(edge);
      if (known === undefined) at.set(edge, [piece]);
      else known.push(piece);
    }
  }
  const left = new Set(pieces);
  const follow = (line: number[]): number[] => {
    for (;;) {
      const end = line.at(-1)!;
      const next = at.get(end)!.find((piece) => left.has(piece));
      if (next === undefined) return line;
      left.delete(next);
      line.push(next.from === end ? next.to : next.from);
    }
  };
  const lines: number[][] = [];
  for (const piece of pieces) {
    if (!left.delete(piece)) continue;
    const forwards = follow([piece.from, piece.to]);
    lines.push(follow(forwards.toReversed()));
  }
  return lines;
}
