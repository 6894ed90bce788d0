import type { Path } from "../../heat/types.ts";
import type { BuildUp, Layer, Material, TrappedWater } from "../../project/types.ts";
import { isThroughFraming, materialAlong } from "../along/material-of-slice.ts";

/** Timber at this reading is dry enough to close in [fraction of dry mass]. Source: common practice. */
export const DRY_ENOUGH_TIMBER = 0.18;

/**
 * Water over that of dry timber, from a moisture-meter reading.
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
 * Whether stated water lies in what stands in the layer's place along a way through: a reading is of timber, so that in
 * a layer that is none itself it is of the framing through it; an amount is in the layer itself.
 */
export function liesAlong(stated: TrappedWater, layer: Layer, path: Path): boolean {
  const inFraming =
    stated.amount === null && stated.reading !== null && layer.framing !== null && !isTimber(ownMaterial(layer));
  return isThroughFraming(layer, path) === inFraming;
}

/**
 * The amount of water stated for a layer.
 *
 * @param stated - amount or reading
 * @param buildUp - its build-up
 * @param path - a way through along which it lies
 * @returns water [kg/m²] of that way's own area
 * @throws RangeError when a reading is given for a material without density
 */
export function trappedAmount(stated: TrappedWater, buildUp: BuildUp, path: Path): number {
  if (stated.amount !== null) return stated.amount;
  const layer = buildUp.layers[stated.layer]!;
  const material = materialAlong(layer, path);
  if (material === null || material.density === null) {
    throw new RangeError(`a moisture reading of ${layer.name} needs the density of the timber`);
  }
  return waterFromReading(stated.reading!, material.density, layer.thickness);
}

function ownMaterial(layer: Layer): Material | null {
  return layer.type === "air" ? null : layer.material;
}

function isTimber(material: Material | null): boolean {
  return material?.kind === "wood" || material?.kind === "board";
}
