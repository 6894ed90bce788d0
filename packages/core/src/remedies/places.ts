import { insulates } from "../project/insulates.ts";
import type { BuildUp, Layer, SolidLayer } from "../project/types.ts";
import type { BetweenLayers } from "../result/types.ts";
import { layerSd } from "../vapour/layer-sd.ts";
import type { Situation } from "./types.ts";

/** Least resistance of insulation that is worth moving or adding to [m²·K/W] (this project's rule). */
export const LEAST_INSULATION = 0.25;

/** Index of the first well-ventilated air layer, or the number of layers; layers from there on do not count. */
export function endOfCounted(buildUp: BuildUp): number {
  const end = buildUp.layers.findIndex((layer) => layer.type === "air" && layer.ventilation === "well");
  return end === -1 ? buildUp.layers.length : end;
}

/** Indices of the first and the last layer of insulation; without any, twice that of the layer that resists most. */
export interface InsulationExtent {
  first: number;
  last: number;
}

/**
 * The run of layers from the first insulating one to the last.
 *
 * @param buildUp - the build-up
 * @returns indices, or null where no layer has a resistance of its own
 */
export function insulationExtent(buildUp: BuildUp): InsulationExtent | null {
  const counted = buildUp.layers.slice(0, endOfCounted(buildUp));
  const insulating = counted.flatMap((layer, index) => (isInsulating(layer) ? [index] : []));
  if (insulating.length > 0) return { first: insulating[0]!, last: insulating[insulating.length - 1]! };
  const most = counted.reduce(
    (best, layer, index) =>
      ownResistance(layer) > best.resistance ? { index, resistance: ownResistance(layer) } : best,
    {
      index: -1,
      resistance: 0,
    },
  );
  return most.index === -1 ? null : { first: most.index, last: most.index };
}

/** Index of the insulation with the highest resistance, without regard to framing; null if there is no insulation. */
export function bestInsulation(buildUp: BuildUp): number | null {
  let main: number | null = null;
  for (let index = 0; index < endOfCounted(buildUp); index += 1) {
    const layer = buildUp.layers[index]!;
    if (isInsulating(layer) && (main === null || ownResistance(layer) > ownResistance(buildUp.layers[main]!)))
      main = index;
  }
  return main;
}

/** Whether a layer is insulation with at least that resistance. */
export function isInsulating(layer: Layer): boolean {
  return insulates(layer) && ownResistance(layer) >= LEAST_INSULATION;
}

/** Resistance of a solid layer's own material [m²·K/W]; 0 for sheets and air. */
export function ownResistance(layer: Layer): number {
  return layer.type === "material" ? layer.thickness / layer.material.conductivity! : 0;
}

/** Index at which a sheet lies on the warm side of all insulation; null if there is no warm side. */
export function warmFace({ buildUp, warmSide }: Situation): number | null {
  const extent = insulationExtent(buildUp);
  if (extent === null || warmSide === "neither") return null;
  return warmSide === "room" ? extent.first : extent.last + 1;
}

/** Indices of the counted layers on the warm side of all insulation, and on its cold side. */
export function layersBySide({ buildUp, warmSide }: Situation): { warm: number[]; cold: number[] } {
  const extent = insulationExtent(buildUp);
  if (extent === null || warmSide === "neither") return { warm: [], cold: [] };
  const indices = Array.from({ length: endOfCounted(buildUp) }, (_, index) => index);
  const before = indices.filter((index) => index < extent.first);
  const beyond = indices.filter((index) => index > extent.last);
  return warmSide === "room" ? { warm: before, cold: beyond } : { warm: beyond, cold: before };
}

/** sd of a layer [m], with its gaps and facings. */
export function sdOf(layer: Layer): number {
  return layerSd(layer, "dry");
}

/** A sheet more open than this does not hold vapour back [m] (this project's rule, as for candidates). */
const LEAST_VAPOUR_SHEET = 0.5;

/** Whether a layer is a sheet that holds vapour back. */
export function isVapourSheet(layer: Layer): layer is SolidLayer & { type: "sheet" } {
  return layer.type === "sheet" && sdOf(layer) >= LEAST_VAPOUR_SHEET;
}

/** A layer's name, numbered if the name occurs before it: tells layers apart while others are added and removed. */
export function nameWithCount(buildUp: BuildUp, at: number): string {
  const { name } = buildUp.layers[at]!;
  const before = buildUp.layers.slice(0, at).filter((layer) => layer.name === name).length;
  return before === 0 ? name : `${name} ${before + 1}`;
}

/** A place between two layers, given by their names. */
export function betweenLayers({ layers }: BuildUp, at: number): BetweenLayers {
  return { inner: layers[at - 1]?.name ?? null, outer: layers[at]?.name ?? null };
}
