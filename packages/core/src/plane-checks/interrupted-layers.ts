import type { CountedLayer } from "../heat/types.ts";
import type { Framing, SolidLayer } from "../project/types.ts";
import { materialSd, wholeSd } from "../vapour/layer-sd.ts";

/** Least sd of a tight layer [m], as for a candidate for the vapour layer (METHOD.md, Vapour layer). */
const TIGHT_FROM = 0.5;

/** Its least sd as a multiple of that of the framing beside it [–] (this project's rule): below, little effect. */
const TIMES_THE_FRAMING = 10;

/** A layer that framing interrupts. */
export interface InterruptedLayer {
  index: number;
  layer: SolidLayer;
}

/**
 * Tight layers that end at vapour-open framing: vapour bypasses them, through the timber or the gap beside them.
 *
 * @param counted - counted layers
 * @param framing - the framing
 * @returns the layers, from the room outwards
 * Source: this project's rule (METHOD.md, The plane).
 */
export function interruptedLayers(counted: readonly CountedLayer[], framing: Framing): InterruptedLayer[] {
  return counted.flatMap(({ index, layer, framing: own }) => {
    if (layer.type === "air" || own?.name !== framing.name) return [];
    return isTightBetween(layer, framing) ? [{ index, layer }] : [];
  });
}

/** Whether a layer is tight, and far tighter than framing of its depth. */
export function isTightBetween(layer: SolidLayer, framing: Framing): boolean {
  const sd = wholeSd(layer, "dry");
  const beside = materialSd(framing.material, layer.thickness, "dry");
  return sd >= TIGHT_FROM && sd >= TIMES_THE_FRAMING * beside;
}
