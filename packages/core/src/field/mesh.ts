import { requireMeshRule, requireScene } from "./given.ts";
import { gradedLines, type MeshRule } from "./graded-lines.ts";
import type { Scene } from "./scene.ts";

/** A scene divided into cells by lines in both directions. */
export interface Mesh {
  /** Lines in ascending order [m]. */
  xs: Float64Array;
  /** [m] */
  ys: Float64Array;
  /** Count of the cells along x. */
  columns: number;
  /** Count of the cells along y. */
  rows: number;
  /** Content of each cell, row by row: index of a stuff, NOTHING, or an air (see `airOf`). */
  cells: Int16Array;
}

/** An empty cell, which lets nothing through. */
export const NOTHING = -1;

/**
 * A mesh with lines at every edge of a scene.
 *
 * @param scene - the scene
 * @param rule - spacing of the lines between edges
 * @returns the mesh
 * Source: lines at every edge, close together beside it: ISO 10211:2017 clause 6 (from memory).
 */
export function meshOf(scene: Scene, rule: MeshRule): Mesh {
  requireScene(scene);
  requireMeshRule(rule);
  const { rectangles } = scene;
  const xs = gradedLines(
    rectangles.flatMap(({ x0, x1 }) => [x0, x1]),
    rule,
  );
  const ys = gradedLines(
    rectangles.flatMap(({ y0, y1 }) => [y0, y1]),
    rule,
  );
  return meshOn(scene, xs, ys);
}

/**
 * A mesh with lines at every edge of a scene and at most a given number of nodes, if the edges alone allow it.
 *
 * @param scene - the scene
 * @param rule - spacing of the lines between edges; made coarser step by step
 * @param mostNodes - crossings of lines
 * @returns the mesh
 */
export function meshWithin(scene: Scene, rule: MeshRule, mostNodes: number): Mesh {
  const mesh = meshOf(scene, rule);
  const isCoarsest = rule.growth > COARSEST_GROWTH;
  if (isCoarsest || mesh.xs.length * mesh.ys.length <= mostNodes) return mesh;
  const coarser = { ...rule, first: 1.5 * rule.first, growth: 1.2 * rule.growth, leastSteps: 1 };
  return meshWithin(scene, coarser, mostNodes);
}

/** Growth of steps above which a mesh is not made coarser [–]. */
const COARSEST_GROWTH = 10;

/**
 * A mesh on given lines; each cell has the content at its middle.
 *
 * @param scene - the scene
 * @param xs - lines [m], rising
 * @param ys - lines [m], rising
 * @returns the mesh
 */
export function meshOn(scene: Scene, xs: Float64Array, ys: Float64Array): Mesh {
  const columns = xs.length - 1;
  const rows = ys.length - 1;
  const cells = new Int16Array(columns * rows).fill(NOTHING);
  for (const { filling, index, x0, x1, y0, y1 } of scene.rectangles) {
    const code = filling === "stuff" ? index : codeOfAir(index);
    const [left, right] = [firstMiddleFrom(xs, x0), firstMiddleFrom(xs, x1)];
    const [bottom, top] = [firstMiddleFrom(ys, y0), firstMiddleFrom(ys, y1)];
    for (let row = bottom; row < top; row += 1) cells.fill(code, row * columns + left, row * columns + right);
  }
  return { xs, ys, columns, rows, cells };
}

/** Index of the air that a cell's code stands for [–]; −1 for stuff and empty cells. */
export function airOf(code: number): number {
  return code < NOTHING ? NOTHING - 1 - code : -1;
}

/** Code of a cell [–]; NOTHING outside the mesh. */
export function cellAt({ cells, columns, rows }: Mesh, column: number, row: number): number {
  return column >= 0 && column < columns && row >= 0 && row < rows ? cells[row * columns + column]! : NOTHING;
}

function codeOfAir(index: number): number {
  return NOTHING - 1 - index;
}

/** The first step whose middle lies at or beyond a coordinate [–]. */
function firstMiddleFrom(lines: Float64Array, at: number): number {
  let step = 0;
  while (step + 1 < lines.length && (lines[step]! + lines[step + 1]!) / 2 < at) step += 1;
  return step;
}
