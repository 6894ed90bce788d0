import { requireNumber } from "../require.ts";
import { refined } from "./disagreement.ts";
import { requireMeshRule, requireScene } from "./given.ts";
import type { MeshRule } from "./graded-lines.ts";
import { meshOf } from "./mesh.ts";
import { type HeatField, heatField } from "./plane-heat.ts";
import type { Scene } from "./scene.ts";

/** Heat flow between two airs, with upper and lower bounds. */
export interface BoundedHeat {
  corners: HeatField;
  middles: HeatField;
  /** L2D between the first and the last air [W/(m·K)]: upper bound, and below the lower bound and their mean. */
  upper: number;
  /** [W/(m·K)] */
  lower: number;
  /** [W/(m·K)] */
  conductance: number;
  /** Count of the meshes solved. */
  rounds: number;
}

/** Largest relative difference of the bounds [–]: 1 %, the change at which ISO 10211 accepts a mesh (from memory). */
export const BOUNDS_APART = 0.01;

/** The mesh is not refined beyond this many cells, or this many rounds. */
const MOST_CELLS = 60_000;
const MOST_ROUNDS = 12;

/** First mesh, for scenes about as large as a wall is thick. */
export const FIRST_MESH: MeshRule = { first: 0.006, growth: 2, greatest: 0.15, leastSteps: 2 };

/**
 * Heat flow between two airs, on meshes refined where the two nets disagree, until the bounds are close enough.
 *
 * @param scene - a scene with two airs
 * @param apart - (upper − lower)/upper at which refinement ends [–], above 0
 * @param rule - the first mesh
 * @returns both fields, the bounds and their mean
 * Source: bounds by the principles of Dirichlet and Thomson; refinement by Prager and Synge (1947).
 */
export function heatWithinBounds(scene: Scene, apart: number = BOUNDS_APART, rule: MeshRule = FIRST_MESH): BoundedHeat {
  requireScene(scene);
  requireNumber(apart, "apart", "", 1e-6, 1);
  requireMeshRule(rule);
  const last = scene.airs.length - 1;
  let mesh = meshOf(scene, rule);
  for (let rounds = 1; ; rounds += 1) {
    const corners = heatField(scene, mesh, "corners");
    const middles = heatField(scene, mesh, "middles");
    const upper = corners.conductance[0]![last]!;
    const lower = middles.conductance[0]![last]!;
    const isFine = upper - lower <= apart * upper || mesh.cells.length > MOST_CELLS || rounds === MOST_ROUNDS;
    if (isFine) return { corners, middles, upper, lower, conductance: (upper + lower) / 2, rounds };
    mesh = refined(corners, middles);
  }
}
