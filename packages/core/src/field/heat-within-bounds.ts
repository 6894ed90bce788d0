import { requireNumber } from "../require.ts";
import { refined } from "./disagreement.ts";
import { requireMeshRule, requireScene } from "./given.ts";
import type { MeshRule } from "./graded-lines.ts";
import { meshOf } from "./mesh.ts";
import { type HeatField, heatField } from "./plane-heat.ts";
import type { Scene } from "./scene.ts";

/** Heat between two airs, known from both sides. */
export interface BoundedHeat {
  corners: HeatField;
  middles: HeatField;
  /** L2D between the first air and the last [W/(m·K)]: never less than the truth, never more, and their mean. */
  upper: number;
  /** [W/(m·K)] */
  lower: number;
  /** [W/(m·K)] */
  conductance: number;
  /** Count of the meshes solved. */
  rounds: number;
}

/** How near the bounds must come [–]: 1 %, the change by which ISO 10211 calls a mesh fine enough (from memory). */
export const BOUNDS_APART = 0.01;

/** No mesh is made finer beyond this many cells, or this many rounds. */
const MOST_CELLS = 60_000;
const MOST_ROUNDS = 12;

/** Mesh that the search begins with, for scenes as large as a wall's thickness. */
export const FIRST_MESH: MeshRule = { first: 0.006, growth: 2, greatest: 0.15, leastSteps: 2 };

/**
 * Heat between two airs, on meshes made finer where the two nets disagree, until the bounds are near enough.
 *
 * @param scene - a scene with two airs
 * @param apart - (upper − lower)/upper at which the search ends [–], above 0
 * @param rule - the first mesh
 * @returns both fields, the bounds and their mean
 * Source: bounds by the principles of Dirichlet and Thomson; where to refine by Prager and Synge (1947).
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
