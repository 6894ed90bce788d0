import type { BuildUp, Layer, Material } from "../project/types.ts";
import type { SlicePart } from "../result/types.ts";
import { shareLeftByGaps } from "../vapour/layer-sd.ts";
import type { TightLayer } from "../vapour-layer/candidates.ts";

/**
 * A build-up with its vapour layer more open, or removed: the worst effect of faults in laps and of holes.
 *
 * @param buildUp - the build-up
 * @param tightLayer - the vapour layer with its parts
 * @param factor - divides the sd; Infinity removes the layer's vapour resistance
 * @returns the changed build-up; layers keep their places, boards their thermal resistance and at least μ 1
 * Source: this project's rule (METHOD.md, Sensitivity).
 */
export function withVapourLayerOpened(buildUp: BuildUp, tightLayer: TightLayer, factor: number): BuildUp {
  const layers = buildUp.layers.map((layer, index) => {
    const parts = tightLayer.parts.filter((part) => part.layer === index).map(({ part }) => part);
    return parts.length === 0
      ? layer
      : parts.reduce((changed: Layer, part) => openPart(changed, part, factor), withGapsSpread(layer));
  });
  return { ...buildUp, layers };
}

/** The layer without its gaps but with the same effective sd, to which the factor then applies. */
function withGapsSpread(layer: Layer): Layer {
  if (layer.type === "air" || layer.gaps === null) return layer;
  const by = 1 / shareLeftByGaps(layer, "dry");
  return {
    ...layer,
    gaps: null,
    facingInner: layer.facingInner / by,
    facingOuter: layer.facingOuter / by,
    material: openMaterial(layer.material, by),
  };
}

function openPart(layer: Layer, part: SlicePart, factor: number): Layer {
  if (layer.type === "air") return layer;
  if (part === "inner facing") return { ...layer, facingInner: layer.facingInner / factor };
  if (part === "outer facing") return { ...layer, facingOuter: layer.facingOuter / factor };
  return { ...layer, material: openMaterial(layer.material, factor) };
}

function openMaterial(material: Material, factor: number): Material {
  const openFactor = (value: number | null): number | null => (value === null ? null : Math.max(1, value / factor));
  const sd = material.equivalentAirLayerThickness;
  return {
    ...material,
    equivalentAirLayerThickness: sd === null ? null : sd / factor,
    equivalentAirLayerThicknessByHumidity: null,
    vapourResistanceFactorDry: openFactor(material.vapourResistanceFactorDry),
    vapourResistanceFactorWet: openFactor(material.vapourResistanceFactorWet),
  };
}
