import { hyperbolicCosine, hyperbolicTangent } from "../arithmetic/hyperbolic.ts";
import type { LayerGaps, StuffBeside } from "../project/types.ts";

/**
 * Vapour converges on an opening in a sheet from the material on either side. The openings' share of the area does not
 * give the resistance: most of it lies in the material that the vapour crosses to reach the opening.
 */

/**
 * Vapour resistance of the material on one side of a long slit, per metre of slit.
 *
 * @param factor - μ of the material beside the sheet [–], ≥ 1
 * @param depth - H, its thickness [m], above 0
 * @param width - w of the slit [m], above 0
 * @param spacing - from slit to slit [m], over the width; further from the sheet than spacing/π, vapour flows evenly
 * @returns μ·K′/(2K) with the elliptic modulus tanh(πw/4H) [–], which is (μ/π)·ln(16H/(πw)) for a narrow slit; divided by
 *   the length of slit per square metre it is an sd [m]
 * Source: METHOD.md, Gaps in the vapour layer (conformal mapping of a strip with a slit in one face; worked).
 * @example slitResistance(1, 0.1, 0.001, 1) // 1.984
 */
export function slitResistance(factor: number, depth: number, width: number, spacing: number): number {
  const reach = Math.min(depth, spacing / Math.PI);
  const beyond = depth - reach;
  const angle = (Math.PI * width) / (4 * reach);
  const isWide = angle > WIDE;
  const converging = isWide
    ? reach / width
    : meanOf(1, 1 / hyperbolicCosine(angle)) / (2 * meanOf(1, hyperbolicTangent(angle)));
  return factor * (converging + beyond / spacing);
}

/**
 * Vapour resistance of the material on one side of a round hole.
 *
 * @param factor - μ of the material beside the sheet [–], ≥ 1
 * @param depth - H, its thickness [m], above 0
 * @param radius - a of the hole [m], above 0
 * @returns μ·(1/(4a) − ln 2/(2πH)) [1/m], or, for a radius over H, that value at a = H times
 *   H²/a²; divided by the number of holes per square metre it is an sd [m]
 * Source: METHOD.md, Gaps in the vapour layer (spreading from a disc into a slab).
 * @example holeResistance(1, 0.1, 0.005) // 48.9
 */
export function holeResistance(factor: number, depth: number, radius: number): number {
  const spread = (narrow: number): number => 1 / (4 * narrow) - Math.LN2 / (2 * Math.PI * depth);
  return radius <= depth ? factor * spread(radius) : factor * spread(depth) * ((depth * depth) / (radius * radius));
}

/**
 * sd of a sheet with open laps or with holes, from the material beside it.
 *
 * @param whole - sd of the sheet without openings [m], above 0
 * @param thickness - of the layer that the openings go through [m]; 0 for a sheet
 * @param gaps - laps or holes, and the material on either side
 * @returns sd [m]; null where only the share of openings is known
 */
export function sdWithOpenings(whole: number, thickness: number, gaps: LayerGaps): number | null {
  const { share, around } = gaps;
  if (around === undefined || around === null || !(share > 0 && share < 1)) return null;
  const through = resistanceThrough(gaps, thickness, around);
  if (through === null) return null;
  const beside = around.reduce((sum, { factor, depth }) => sum + factor * depth, 0);
  const conductance = (1 - share) / (whole + beside) + 1 / Math.max(through, beside);
  return Math.min(whole, Math.max(LEAST_SD, 1 / conductance - beside));
}

/** Angle from which a slit is so wide for the depth that convergence is negligible [–]: its edges count under 1 %. */
const WIDE = 50;

/** Least sd with openings [m]: two nodes must differ in sd (this project's rule). */
const LEAST_SD = 1e-5;

/** sd of the path through the openings, with the material beside the sheet [m]. */
function resistanceThrough(gaps: LayerGaps, thickness: number, around: readonly StuffBeside[]): number | null {
  const { share, laps, holes } = gaps;
  const sum = (of: (beside: StuffBeside) => number): number => around.reduce((total, beside) => total + of(beside), 0);
  if (laps !== null) {
    const width = share * laps.spacing;
    const eachMetre =
      sum(({ factor, depth }) => slitResistance(factor, depth, width, laps.spacing)) + thickness / width;
    return eachMetre * laps.spacing;
  }
  if (holes === undefined || holes === null) return null;
  const area = share / holes.perArea;
  const eachHole =
    sum(({ factor, depth }) => holeResistance(factor, depth, Math.sqrt(area / Math.PI))) + thickness / area;
  return eachHole / holes.perArea;
}

/** Arithmetic-geometric mean, which gives K(k) = π/(2·agm(1, k′)). Source: definition. */
function meanOf(one: number, other: number): number {
  let arithmetic = one;
  let geometric = other;
  while (Math.abs(arithmetic - geometric) > 1e-14 * arithmetic) {
    const between = (arithmetic + geometric) / 2;
    geometric = Math.sqrt(arithmetic * geometric);
    arithmetic = between;
  }
  return arithmetic;
}
