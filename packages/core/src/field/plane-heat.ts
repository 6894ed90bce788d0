import { requireNumbers, requireOneOf } from "../require.ts";
import { cornerNet } from "./corner-net.ts";
import type { Front } from "./dissection.ts";
import { factorise, frontsOf } from "./factor.ts";
import { requireField, requireMesh, requireScene } from "./given.ts";
import type { Mesh } from "./mesh.ts";
import { middleNet } from "./middle-net.ts";
import type { Net } from "./net.ts";
import type { Scene } from "./scene.ts";

/** Heat in a scene: one solution for all months. */
export interface HeatField {
  scene: Scene;
  mesh: Mesh;
  net: Net;
  /** The order in which the net's nodes are eliminated. */
  fronts: readonly Front[];
  /** Temperature of every node [–] with one air at 1 and the others at 0: θ = Σ share·θair. */
  shares: readonly Float64Array[];
  /** Heat from the first air of a pair to the second for 1 K between them [W/(m·K)]: `conductance[from][to]`. */
  conductance: readonly (readonly number[])[];
}

/** Places of the nodes of a heat net: at the crossings of the lines, or in the middle of the cells. */
export type NodePlaces = "corners" | "middles";

/**
 * Steady heat in a scene: Σ g·(θ − θneighbour) + Σ g·(θ − θair) = 0 at every node.
 *
 * @param scene - the scene
 * @param mesh - its mesh
 * @param places - which net: "corners" gives an upper bound of the heat flow, "middles" a lower bound
 * @returns shares of the airs and the conductances between them
 * Source: ISO 10211:2017 clauses 6 and 7 (from memory).
 */
export function heatField(scene: Scene, mesh: Mesh, places: NodePlaces = "corners"): HeatField {
  requireScene(scene);
  requireMesh(mesh);
  requireOneOf(places, "places", ["corners", "middles"]);
  const net = places === "corners" ? cornerNet(scene, mesh, "heat") : middleNet(scene, mesh);
  const fronts = frontsOf(net);
  const factor = factorise(net, net.active, fronts);
  // The shares add up to 1, so the last follows from the others.
  const shares = net.toAir.slice(0, -1).map((load) => factor.solve(load));
  shares.push(remainingShare(net, shares));
  const conductance = net.toAir.map((toAir, from) =>
    shares.map((share, to) => (from === to ? 0 : sumOfProducts(toAir, share))),
  );
  return { scene, mesh, net, fronts, shares, conductance };
}

function remainingShare({ active }: Net, shares: readonly Float64Array[]): Float64Array {
  return Float64Array.from(active, (isActive, node) =>
    shares.reduce((rest, share) => rest - share[node]!, isActive === 1 ? 1 : 0),
  );
}

function sumOfProducts(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < one.length; index += 1) sum += one[index]! * other[index]!;
  return sum;
}

/**
 * Temperatures of a field's nodes.
 *
 * @param field - heat of the scene
 * @param airs - temperature of each air [°C]
 * @returns θ of every node [°C]; 0 at nodes without stuff
 * Source: superposition; ISO 10211:2017 clause 9 (from memory).
 */
export function temperaturesOf(field: HeatField, airs: readonly number[]): Float64Array {
  requireField(field);
  const { shares, net } = field;
  requireNumbers(airs, "airs", "°C", shares.length);
  const temperatures = new Float64Array(net.active.length);
  for (const [air, share] of shares.entries()) {
    const temperature = airs[air]!;
    for (let node = 0; node < share.length; node += 1) temperatures[node]! += share[node]! * temperature;
  }
  return temperatures;
}

/**
 * Lowest temperature factor at the surfaces of the first air, with its place.
 *
 * @param field - heat between two airs, on the net of corners, with the Rsi of ISO 13788 [m²·K/W]
 * @param inside - index of the air whose surfaces are considered [–]
 * @param from - surfaces to the left of this place are left out [m]: a window's frame, which is judged only for
 *   condensation
 * @returns fRsi [–], 0 to 1, and its place [m]
 * Source: ISO 10211:2017 clause 9 with ISO 13788:2012 clause 5.3 (from memory).
 */
export function lowestSurfaceFactor(
  field: HeatField,
  inside = 0,
  from: number = Number.NEGATIVE_INFINITY,
): { factor: number; x: number; y: number } {
  requireField(field);
  const { net, mesh, shares } = field;
  if (!Number.isInteger(inside) || shares[inside] === undefined)
    throw new RangeError(`inside must be the index of an air, from 0 to ${shares.length - 1}`);
  if (typeof from !== "number" || Number.isNaN(from)) throw new TypeError("from must be a number in m");
  let lowest = { factor: 1, x: Number.NaN, y: Number.NaN };
  for (const [node, conductance] of net.toAir[inside]!.entries()) {
    const factor = shares[inside]![node]!;
    const x = mesh.xs[node % net.columns]!;
    if (!(conductance > 0) || factor >= lowest.factor || x < from) continue;
    lowest = { factor, x, y: mesh.ys[Math.floor(node / net.columns)]! };
  }
  return lowest;
}
