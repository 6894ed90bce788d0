import { nameOfAirLayer } from "../../project/resolve/resolve-air-layer.ts";
import { inThickness } from "../../project/resolve/special-sheets.ts";
import type { BuildUp, Layer } from "../../project/types.ts";

/**
 * A build-up with one layer in another thickness.
 *
 * @param buildUp - the build-up
 * @param at - index of the layer, which has a thickness
 * @param thickness - [m]; 0 removes the layer and any water stated for it
 * @returns the build-up, without variants
 */
export function withThickness(buildUp: BuildUp, at: number, thickness: number): BuildUp {
  const { layers, trappedWater } = buildUp;
  if (thickness > 0) return { ...buildUp, layers: layers.with(at, inOther(layers[at]!, thickness)), variants: [] };
  const stays = trappedWater
    .filter(({ layer }) => layer !== at)
    .map((water) => (water.layer > at ? { ...water, layer: water.layer - 1 } : water));
  return { ...buildUp, layers: layers.toSpliced(at, 1), trappedWater: stays, variants: [] };
}

/** The layer in another thickness, made and named as when read from a file; a name given in the file stays. */
function inOther(layer: Layer, thickness: number): Layer {
  if (layer.type === "air") {
    const isUnnamed = layer.name === nameOfAirLayer(layer.thickness);
    return { ...layer, thickness, name: isUnnamed ? nameOfAirLayer(thickness) : layer.name };
  }
  const made = inThickness(layer.material, thickness);
  return { ...layer, ...made, name: layer.name === layer.material.name ? made.material.name : layer.name };
}
