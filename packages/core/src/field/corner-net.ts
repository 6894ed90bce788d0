import { airOf, cellAt, type Mesh } from "./mesh.ts";
import { type Carried, emptyNet, type Net } from "./net.ts";
import type { Scene } from "./scene.ts";

/**
 * The net with a node at every crossing of mesh lines. Each cell adds λ·h⊥/(2·h∥) to its four edges; a face towards air
 * adds half of length/Rs to each of its two ends. Surfaces have no resistance to vapour.
 *
 * Its temperatures are linear on triangles and continuous, so the heat flow between two airs is never less than the
 * true one (Dirichlet's principle).
 *
 * @param scene - the scene
 * @param mesh - its mesh
 * @param carried - heat or vapour
 * @returns the net
 * Source: finite elements on right triangles; ISO 10211:2017 clause 6 requires such a net (from memory).
 */
export function cornerNet(scene: Scene, mesh: Mesh, carried: Carried): Net {
  const { xs, ys, columns, rows, cells } = mesh;
  const net = emptyNet(columns + 1, rows + 1, scene.airs.length);
  for (let row = 0; row < rows; row += 1) {
    const height = ys[row + 1]! - ys[row]!;
    for (let column = 0; column < columns; column += 1) {
      const stuff = scene.stuffs[cells[row * columns + column]!];
      if (stuff === undefined) continue;
      const width = xs[column + 1]! - xs[column]!;
      const { x, y } = carried === "heat" ? stuff.conductivity : stuff.permeability;
      const southWest = row * net.columns + column;
      const southEast = southWest + 1;
      const northWest = southWest + net.columns;
      const northEast = northWest + 1;
      const alongX = (x * height) / (2 * width);
      const alongY = (y * width) / (2 * height);
      net.east[southWest]! += alongX;
      net.east[northWest]! += alongX;
      net.north[southWest]! += alongY;
      net.north[southEast]! += alongY;
      for (const corner of [southWest, southEast, northWest, northEast]) net.active[corner] = 1;
      if (carried === "vapour") continue;
      addFace(scene, net, cellAt(mesh, column - 1, row), height, "upright", southWest, northWest);
      addFace(scene, net, cellAt(mesh, column + 1, row), height, "upright", southEast, northEast);
      addFace(scene, net, cellAt(mesh, column, row - 1), width, "level", southWest, southEast);
      addFace(scene, net, cellAt(mesh, column, row + 1), width, "level", northWest, northEast);
    }
  }
  return net;
}

/** Half of a face's conductance to the air beyond it, at either end. */
function addFace(
  scene: Scene,
  net: Net,
  beyond: number,
  length: number,
  face: "upright" | "level",
  oneEnd: number,
  otherEnd: number,
): void {
  const air = airOf(beyond);
  if (air < 0) return;
  const half = length / scene.airs[air]![face] / 2;
  net.toAir[air]![oneEnd]! += half;
  net.toAir[air]![otherEnd]! += half;
}
