import type { Layer, LayerGaps, Material, SolidLayer } from "../project/types.ts";
import { sdWithOpenings } from "./gap-resistance.ts";

/** sd of an air layer of any thickness [m]. Source: ISO 13788:2012 clause 6.2 (from memory). */
export const SD_OF_AIR_LAYER = 0.01;

/**
 * sd of the air in a gap of a sheet [m]: still air about as thick as a sheet (this project's rule, METHOD.md, Gaps in
 * the vapour layer).
 */
export const SD_OF_GAP = 0.01;

/** Which of a material's two μ values: dry for the main calculation, wet for the unfavourable one. */
export type VapourValue = "dry" | "wet";

/**
 * Equivalent air layer thickness of a whole layer, with facings and gaps.
 *
 * @param layer - the layer
 * @param value - dry or wet μ
 * @returns sd [m]
 * Source: ISO 13788:2012 clause 6.1, sd = μ·d; gaps: conductances in parallel.
 */
export function layerSd(layer: Layer, value: VapourValue): number {
  if (layer.type === "air") return SD_OF_AIR_LAYER;
  return wholeSd(layer, value) * shareLeftByGaps(layer, value);
}

/**
 * Equivalent air layer thickness of a solid layer without its facings, with gaps.
 *
 * @param layer - material or sheet
 * @param value - dry or wet μ
 * @returns sd [m]
 */
export function coreSd(layer: SolidLayer, value: VapourValue): number {
  return materialSd(layer.material, layer.thickness, value) * shareLeftByGaps(layer, value);
}

/** sd of a solid layer with its facings and without gaps [m]. */
export function wholeSd(layer: SolidLayer, value: VapourValue): number {
  return layer.facingInner + materialSd(layer.material, layer.thickness, value) + layer.facingOuter;
}

/**
 * Share of a layer's sd that gaps leave. A gap goes through the whole layer, facings and core alike.
 *
 * @param layer - material or sheet
 * @param value - dry or wet μ
 * @returns sd with gaps over sd without [–], 1 without gaps and for a removed layer (sd 0)
 */
export function shareLeftByGaps(layer: SolidLayer, value: VapourValue): number {
  const whole = wholeSd(layer, value);
  if (layer.gaps === null || whole === 0) return 1;
  return sdWithLayerGaps(whole, layer.thickness, layer.gaps) / whole;
}

/** sd of a layer with its gaps [m]: from the shape of laps or holes where it is known, else from their share alone. */
export function sdWithLayerGaps(whole: number, thickness: number, gaps: LayerGaps): number {
  return sdWithOpenings(whole, thickness, gaps) ?? sdWithGaps(whole, gaps.share);
}

/** sd of a material of some thickness [m]; a sheet has its own sd, or if given by humidity, its wettest as wet one. */
export function materialSd(material: Material, thickness: number, value: VapourValue): number {
  const wettest = material.equivalentAirLayerThicknessByHumidity?.at(-1)?.[1];
  if (value === "wet" && wettest !== undefined) return wettest;
  if (material.equivalentAirLayerThickness !== null) return material.equivalentAirLayerThickness;
  const factor = value === "dry" ? material.vapourResistanceFactorDry : material.vapourResistanceFactorWet;
  return factor! * thickness;
}

/**
 * sd of a sheet with openings of unknown shape. Not a lower bound: vapour converges on narrow openings, so slits let
 * more through than this says (`gap-resistance.ts`).
 *
 * @param sd - of the whole sheet [m], above 0
 * @param share - area share of the gaps [–], 0 to 1
 * @param gap - sd of the air in a gap [m]
 * @returns sd [m], 1/sd = (1 − a)/sd + a/gap
 * @throws RangeError when an input is out of range or not a number
 * Source: conductances in parallel (METHOD.md, Gaps in the vapour layer).
 * @example sdWithGaps(50, 0.001) // 8.3347
 */
export function sdWithGaps(sd: number, share: number, gap: number = SD_OF_GAP): number {
  if (!(sd > 0)) throw new RangeError(`sd must be over 0 m, was ${sd}`);
  if (!(share >= 0 && share <= 1)) throw new RangeError(`the share of gaps must lie between 0 and 1, was ${share}`);
  const conductance = (1 - share) / sd + share / gap;
  return 1 / conductance;
}
