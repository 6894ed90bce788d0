import { airOf, cellAt, type Mesh } from "./mesh.ts";
import { emptyNet, type Net } from "./net.ts";
import type { Scene } from "./scene.ts";

/**
 * The heat net with a node in the middle of every cell: half cells in series, 1/(h/2λ + h′/2λ′); towards air, the
 * half cell and Rs in series.
 *
 * Its flows have no sources within a cell, so the heat flow between two airs is never more than the true one (Thomson's
 * principle).
 *
 * @param scene - the scene
 * @param mesh - its mesh
 * @returns the net [W/(m·K)]
 * Source: ISO 10211:2017 clause 6 (from memory): equivalent conductances between the middles of cells.
 */
export function middleNet(scene: Scene, mesh: Mesh): Net {
  const { columns, rows, cells } = mesh;
  const net = emptyNet(columns, rows, scene.airs.length);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const node = row * columns + column;
      if (cells[node]! < 0) continue;
      net.active[node] = 1;
      if (cellAt(mesh, column + 1, row) >= 0) net.east[node] = conductanceX(scene, mesh, column + 1, row);
      if (cellAt(mesh, column, row + 1) >= 0) net.north[node] = conductanceY(scene, mesh, column, row + 1);
      addToAir(net, node, cellAt(mesh, column - 1, row), conductanceX(scene, mesh, column, row));
      addToAir(net, node, cellAt(mesh, column + 1, row), conductanceX(scene, mesh, column + 1, row));
      addToAir(net, node, cellAt(mesh, column, row - 1), conductanceY(scene, mesh, column, row));
      addToAir(net, node, cellAt(mesh, column, row + 1), conductanceY(scene, mesh, column, row + 1));
    }
  }
  return net;
}

/**
 * Conductance across the upright face between a cell and the one to its left.
 *
 * @param scene - the scene
 * @param mesh - its mesh
 * @param line - number of the line that the face lies on
 * @param row - row of the face
 * @returns [W/(m·K)]; 0 where either side lets nothing through
 * Source: resistances in series.
 */
export function conductanceX(scene: Scene, mesh: Mesh, line: number, row: number): number {
  const length = mesh.ys[row + 1]! - mesh.ys[row]!;
  const half = (column: number): number => {
    const code = cellAt(mesh, column, row);
    if (airOf(code) >= 0) return scene.airs[airOf(code)]!.upright;
    if (code < 0) return Number.POSITIVE_INFINITY;
    return (mesh.xs[column + 1]! - mesh.xs[column]!) / (2 * scene.stuffs[code]!.conductivity.x);
  };
  return length / (half(line - 1) + half(line));
}

/**
 * Conductance across the level face between a cell and the one below it.
 *
 * @param scene - the scene
 * @param mesh - its mesh
 * @param column - column of the face
 * @param line - number of the line that the face lies on
 * @returns [W/(m·K)]; 0 where either side lets nothing through
 * Source: resistances in series.
 */
export function conductanceY(scene: Scene, mesh: Mesh, column: number, line: number): number {
  const length = mesh.xs[column + 1]! - mesh.xs[column]!;
  const half = (row: number): number => {
    const code = cellAt(mesh, column, row);
    if (airOf(code) >= 0) return scene.airs[airOf(code)]!.level;
    if (code < 0) return Number.POSITIVE_INFINITY;
    return (mesh.ys[row + 1]! - mesh.ys[row]!) / (2 * scene.stuffs[code]!.conductivity.y);
  };
  return length / (half(line - 1) + half(line));
}

function addToAir(net: Net, node: number, beyond: number, conductance: number): void {
  const air = airOf(beyond);
  if (air >= 0) net.toAir[air]![node]! += conductance;
}
