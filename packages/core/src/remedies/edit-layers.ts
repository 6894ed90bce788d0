import type { BuildUp, Layer } from "../project/types.ts";

/**
 * Replaces layers of a build-up by others; water stated for a layer that stays keeps its layer.
 *
 * @param buildUp - the build-up
 * @param at - index of the first layer to remove, or of the new layers
 * @param remove - number of layers to remove
 * @param layers - the layers that replace them
 * @returns the changed build-up, without variants
 * @throws RangeError when water is stated for a removed layer, unless as many layers replace those removed
 */
export function spliceLayers(buildUp: BuildUp, at: number, remove: number, layers: readonly Layer[]): BuildUp {
  const shift = layers.length - remove;
  const trappedWater = buildUp.trappedWater.map((stated) => {
    if (stated.layer < at) return stated;
    if (stated.layer >= at + remove) return { ...stated, layer: stated.layer + shift };
    if (remove === layers.length) return stated;
    throw new RangeError(`layer ${stated.layer + 1} holds stated water and cannot be taken out`);
  });
  const changed = [...buildUp.layers.slice(0, at), ...layers, ...buildUp.layers.slice(at + remove)];
  return { ...buildUp, layers: changed, trappedWater, variants: [] };
}

/** Inserts layers before the one at an index. */
export function insertLayers(buildUp: BuildUp, at: number, ...layers: Layer[]): BuildUp {
  return spliceLayers(buildUp, at, 0, layers);
}

/** Replaces a layer by another. */
export function replaceLayer(buildUp: BuildUp, at: number, layer: Layer): BuildUp {
  return spliceLayers(buildUp, at, 1, [layer]);
}

/** Removes a layer. */
export function removeLayer(buildUp: BuildUp, at: number): BuildUp {
  return spliceLayers(buildUp, at, 1, []);
}

/** Whether water is stated for a layer, which then cannot be removed. */
export function holdsStatedWater(buildUp: BuildUp, at: number): boolean {
  return buildUp.trappedWater.some(({ layer }) => layer === at);
}
