import type { Path } from "../../heat/types.ts";
import type { BuildUp, Layer, Material } from "../../project/types.ts";
import type { Slice } from "../../vapour/section-slices.ts";

/**
 * The material of a layer along a heat-flow path: its own, or that of the framing the path runs through.
 *
 * @param layer - the layer
 * @param path - the heat-flow path
 * @returns the material; null for air
 */
export function materialAlong(layer: Layer, path: Path): Material | null {
  if (isThroughFraming(layer, path)) return layer.framing!.material;
  return layer.type === "air" ? null : layer.material;
}

/** Whether the path runs through the framing of this layer. */
export function isThroughFraming(layer: Layer, path: Path): boolean {
  return layer.framing !== null && path.through.includes(layer.framing.name);
}

/** Whether a slice is the body of its layer, or the framing in its place, rather than a facing. */
export function isBody(slice: Slice): boolean {
  return slice.part === "whole" || slice.part === "framing";
}

/** The material of a slice; null for air and facings. */
export function materialOfSlice(slice: Slice, buildUp: BuildUp, path: Path): Material | null {
  return isBody(slice) ? materialAlong(buildUp.layers[slice.layer]!, path) : null;
}
