import type { BuildUp, Layer } from "../project/types.ts";

/**
 * A build-up with some layers put in the place of others; water that was stated for a layer stays with it.
 *
 * @param buildUp - the build-up
 * @param at - index of the first layer to go, or the place of the new ones
 * @param remove - how many layers go
 * @param layers - what comes in their place
 * @returns the changed build-up, without variants
 * @throws RangeError when water was stated for a layer that goes without another in its place
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

/** A layer put in before the one at an index. */
export function insertLayers(buildUp: BuildUp, at: number, ...layers: Layer[]): BuildUp {
  return spliceLayers(buildUp, at, 0, layers);
}

/** A layer exchanged for another. */
export function replaceLayer(buildUp: BuildUp, at: number, layer: Layer): BuildUp {
  return spliceLayers(buildUp, at, 1, [layer]);
}

/** A layer taken out. */
export function removeLayer(buildUp: BuildUp, at: number): BuildUp {
  return spliceLayers(buildUp, at, 1, []);
}

/** Whether water is stated for a layer: then it cannot be taken out. */
export function holdsStatedWater(buildUp: BuildUp, at: number): boolean {
  return buildUp.trappedWater.some(({ layer }) => layer === at);
}
