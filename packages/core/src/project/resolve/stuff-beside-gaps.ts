import type { Layer, StuffBeside } from "../types.ts";

/** Air, and what has no thickness, counts as this much still air [m] (ISO 13788:2012 clause 6.2, from memory). */
const DEPTH_OF_AIR = 0.01;
const AIR: StuffBeside = { factor: 1, depth: DEPTH_OF_AIR };

/**
 * Adds to the gaps of each layer the materials on both sides, through which vapour converges on laps and holes.
 *
 * @param layers - the layers of one build-up or variant
 * @returns the layers; those without laps or holes are unchanged
 * Source: METHOD.md, Gaps in the vapour layer.
 */
export function stuffBesideGaps(layers: readonly Layer[]): Layer[] {
  return layers.map((layer, index) => {
    if (layer.type === "air" || layer.gaps === null) return layer;
    const { laps, holes } = layer.gaps;
    if (laps === null && (holes === undefined || holes === null)) return layer;
    const around = [layers[index - 1], layers[index + 1]].map(stuffOf);
    return { ...layer, gaps: { ...layer.gaps, around } };
  });
}

function stuffOf(layer: Layer | undefined): StuffBeside {
  if (layer?.type !== "material") return AIR;
  return { factor: layer.material.vapourResistanceFactorDry!, depth: layer.thickness };
}
