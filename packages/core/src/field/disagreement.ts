import { halvedWhere } from "./graded-lines.ts";
import { airOf, cellAt, type Mesh, meshOn } from "./mesh.ts";
import { conductanceX, conductanceY } from "./middle-net.ts";
import type { HeatField } from "./plane-heat.ts";

/** Share of the disagreement covered by the columns and rows halved in one round [–]: found by trial. */
const REFINED_PART = 0.7;

/** Avoids a division of zero by zero. */
const TINY = Number.MIN_VALUE;

/**
 * A finer mesh: halves the columns and rows with most of the disagreement between the two nets. In a cell this is
 * Σ λ⁻¹·|q + λ·∇θ|²·area, with the flows q of the net of middles and the gradients ∇θ of the net of corners.
 *
 * @param corners - heat on the net of corners
 * @param middles - heat on the net of middles, same mesh
 * @returns the mesh
 * Source: Prager and Synge (1947): the sum equals the difference between the two bounds.
 */
export function refined(corners: HeatField, middles: HeatField): Mesh {
  const { scene, mesh } = corners;
  const { columnShare, rowShare } = disagreements(corners, middles);
  const strips = [
    ...Array.from(columnShare, (share, index) => ({ share, index, isColumn: true })),
    ...Array.from(rowShare, (share, index) => ({ share, index, isColumn: false })),
  ].sort((one, other) => other.share - one.share);
  const whole = strips.reduce((sum, { share }) => sum + share, 0);
  const columns = new Uint8Array(mesh.columns);
  const rows = new Uint8Array(mesh.rows);
  let covered = 0;
  for (const { share, index, isColumn } of strips) {
    if (covered > REFINED_PART * whole) break;
    (isColumn ? columns : rows)[index] = 1;
    covered += share;
  }
  return meshOn(scene, halvedWhere(mesh.xs, columns), halvedWhere(mesh.ys, rows));
}

/** Disagreement summed over every column and every row. */
function disagreements(corners: HeatField, middles: HeatField): { columnShare: Float64Array; rowShare: Float64Array } {
  const { scene, mesh, net } = corners;
  const temperature = corners.shares[0]!;
  const columnShare = new Float64Array(mesh.columns);
  const rowShare = new Float64Array(mesh.rows);
  for (let row = 0; row < mesh.rows; row += 1) {
    const height = mesh.ys[row + 1]! - mesh.ys[row]!;
    for (let column = 0; column < mesh.columns; column += 1) {
      const stuff = scene.stuffs[mesh.cells[row * mesh.columns + column]!];
      if (stuff === undefined) continue;
      const width = mesh.xs[column + 1]! - mesh.xs[column]!;
      const { x, y } = stuff.conductivity;
      const corner = row * net.columns + column;
      const [southWest, southEast] = [temperature[corner]!, temperature[corner + 1]!];
      const [northWest, northEast] = [temperature[corner + net.columns]!, temperature[corner + net.columns + 1]!];
      const alongX = apart(
        [flowX(middles, column, row) / height, flowX(middles, column + 1, row) / height],
        [(x * (southWest - southEast)) / width, (x * (northWest - northEast)) / width],
      );
      const alongY = apart(
        [flowY(middles, column, row) / width, flowY(middles, column, row + 1) / width],
        [(y * (southWest - northWest)) / height, (y * (southEast - northEast)) / height],
      );
      const area = width * height;
      const weightX = (alongX.square / x) * area;
      const weightY = (alongY.square / y) * area;
      columnShare[column]! += weightX * alongX.alongWay + weightY * (1 - alongY.alongWay);
      rowShare[row]! += weightX * (1 - alongX.alongWay) + weightY * alongY.alongWay;
    }
  }
  return { columnShare, rowShare };
}

/**
 * Sum of the squared differences between the flows through two opposite faces and the gradients along two opposite
 * edges; and the share due to change along the flow (which needs lines across it) rather than beside it.
 */
function apart(flows: [number, number], slopes: [number, number]): { square: number; alongWay: number } {
  let square = 0;
  for (const flow of flows) for (const slope of slopes) square += (flow - slope) ** 2;
  const along = (flows[1] - flows[0]) ** 2;
  const beside = (slopes[1] - slopes[0]) ** 2;
  return { square, alongWay: (along + TINY) / (along + beside + 2 * TINY) };
}

/** Heat through an upright face towards +x [W/(m·K)], first air at 1. */
function flowX({ scene, mesh, shares }: HeatField, line: number, row: number): number {
  const fall = potential(mesh, shares[0]!, line - 1, row) - potential(mesh, shares[0]!, line, row);
  return fall === 0 ? 0 : fall * conductanceX(scene, mesh, line, row);
}

/** Heat through a level face towards +y [W/(m·K)], first air at 1. */
function flowY({ scene, mesh, shares }: HeatField, column: number, line: number): number {
  const fall = potential(mesh, shares[0]!, column, line - 1) - potential(mesh, shares[0]!, column, line);
  return fall === 0 ? 0 : fall * conductanceY(scene, mesh, column, line);
}

/** Temperature of a cell or of the air in its place [–]; any value will do for an empty cell, without heat flow. */
function potential(mesh: Mesh, share: Float64Array, column: number, row: number): number {
  const code = cellAt(mesh, column, row);
  if (code >= 0) return share[row * mesh.columns + column]!;
  return airOf(code) === 0 ? 1 : 0;
}
