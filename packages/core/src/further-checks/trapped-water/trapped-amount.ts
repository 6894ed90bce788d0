import type { Path } from "../../heat/types.ts";
import { readTimber } from "../../project/read-timber.ts";
import type { BuildUp, Layer, TrappedWater } from "../../project/types.ts";
import { isThroughFraming } from "../section-nodes/material-of-slice.ts";

/** Highest reading of timber dry enough to enclose [fraction of dry mass]. Source: common practice. */
export const DRY_ENOUGH_TIMBER = 0.18;

/**
 * Construction moisture above that of dry timber, from a moisture-meter reading.
 *
 * @param reading - fraction of dry mass [–], 0 to 3
 * @param density - dry density ρ [kg/m³], above 0
 * @param thickness - d of the timber along the section [m], above 0
 * @returns (reading − 0.18)·ρ·d [kg/m²], 0 for a reading of dry timber
 * @throws RangeError when an input is out of range or not a number
 * Source: this project's rule; 18 % is common practice.
 * @example waterFromReading(0.28, 500, 0.09) // 4.5
 */
export function waterFromReading(reading: number, density: number, thickness: number): number {
  if (!(reading >= 0 && reading <= WETTEST_READING))
    throw new RangeError(`a reading must lie between 0 and ${WETTEST_READING}, was ${reading}`);
  if (!(density > 0)) throw new RangeError(`density must be over 0 kg/m³, was ${density}`);
  if (!(thickness > 0)) throw new RangeError(`thickness must be over 0 m, was ${thickness}`);
  const over = Math.max(0, reading - DRY_ENOUGH_TIMBER);
  return over * density * thickness;
}

/** Wettest green timber [fraction of dry mass] (common practice, rounded up). */
const WETTEST_READING = 3;

/**
 * Whether stated water lies on a heat-flow path. A reading belongs to the timber that the meter reads: the layer's own,
 * or the framing through it. An amount belongs to the layer itself.
 */
export function liesAlong(stated: TrappedWater, layer: Layer, path: Path): boolean {
  const inFraming = stated.reading !== null && readTimber(layer)?.part === "framing";
  return isThroughFraming(layer, path) === inFraming;
}

/**
 * The amount of water stated for a layer.
 *
 * @param stated - amount or reading
 * @param buildUp - its build-up
 * @returns water per area of the part that holds it [kg/m²]
 * @throws RangeError when a reading is given for a layer without timber of known density
 */
export function trappedAmount(stated: TrappedWater, buildUp: BuildUp): number {
  if (stated.amount !== null) return stated.amount;
  const layer = buildUp.layers[stated.layer]!;
  const timber = readTimber(layer);
  if (timber === null) throw new RangeError(`a moisture reading of ${layer.name} needs the density of the timber`);
  return waterFromReading(stated.reading!, timber.density, layer.thickness);
}
