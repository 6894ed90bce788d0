import type { BuildUp, Layer } from "../project/types.ts";
import { layerSd } from "../vapour/layer-sd.ts";
import { TIGHT } from "../vapour/tight.ts";

/** Index, from 0, of foam bonded to a tight skin outside it; null without any. */
export function bondedFoam(layers: readonly Layer[]): number | null {
  const index = layers.findIndex((layer, at) => isBonded(layer) && isSkin(layers[at + 1]));
  return index === -1 ? null : index;
}

/** Sprayed closed-cell foam bonds on its own; boards do where the file says so. */
function isBonded(layer: Layer): boolean {
  if (layer.type !== "material" || layer.material.kind !== "plastic") return false;
  return layer.bonded || /sprayed closed cell/i.test(layer.material.name);
}

function isSkin(layer: Layer | undefined): boolean {
  return layer !== undefined && layer.type !== "air" && layerSd(layer, "dry") >= TIGHT;
}

/** Whether a zone lies in bonded foam or between it and its skin, so that it has no free surface. */
export function isInBondedFoam(
  zone: { layers: readonly number[] },
  { layers }: Pick<BuildUp, "layers">,
): number | null {
  const foam = bondedFoam(layers);
  return foam !== null && zone.layers.every((index) => index === foam || index === foam + 1) ? foam : null;
}
