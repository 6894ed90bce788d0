import { isRoof } from "../project/is-roof.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp } from "../project/types.ts";

/**
 * The weather skin of a roof: the outermost counted layer that is a sheet or is stated to be the skin.
 *
 * @param buildUp - the build-up
 * @param counted - number of its counted layers
 * @returns index of the layer; null for other build-ups, and for roofs covered outside ventilated air
 * Source: METHOD.md, Tight layers (this project's rule: sheets as laid are tighter than the polymer's tabulated μ).
 */
export function weatherSkinOfRoof({ element, pitch, faces, layers }: BuildUp, counted: number): number | null {
  if (!isRoof({ element }) || isUpright({ element, pitch }) || faces !== "outdoors") return null;
  const index = layers.slice(0, counted).findLastIndex((layer) => {
    if (layer.type === "air") return false;
    const isSheet = layer.material.group === "roofing" && layer.material.kind === "plastic";
    return isSheet || layer.purpose === "weather skin";
  });
  return index === -1 ? null : index;
}
