import { nameOfAirLayer } from "../../project/resolve/resolve-air-layer.ts";
import { inThickness } from "../../project/resolve/special-sheets.ts";
import type { BuildUp, Layer } from "../../project/types.ts";

/**
 * A build-up with one layer in another thickness.
 *
 * @param buildUp - the build-up
 * @param at - index of the layer, which has a thickness
 * @param thickness - [m]; 0 takes the layer out, and water that was stated for it goes with it
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

/** As the reader makes it, and called as it calls it where the file gives it no name. */
function inOther(layer: Layer, thickness: number): Layer {
  if (layer.type === "air") {
    const isUnnamed = layer.name === nameOfAirLayer(layer.thickness);
    return { ...layer, thickness, name: isUnnamed ? nameOfAirLayer(thickness) : layer.name };
  }
  const made = inThickness(layer.material, thickness);
  return { ...layer, ...made, name: layer.name === layer.material.name ? made.material.name : layer.name };
}
