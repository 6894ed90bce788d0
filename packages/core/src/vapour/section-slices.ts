import { resistanceAlong } from "../heat/paths.ts";
import type { CountedLayer, Path } from "../heat/types.ts";
import { coreSd, materialSd, SD_OF_AIR_LAYER, shareLeftByGaps, type VapourValue } from "./layer-sd.ts";

/** Which part of a layer a slice is. */
export type SlicePart = "whole" | "inner facing" | "outer facing" | "framing";

/** One homogeneous slice of a section: a layer, its framing, or a facing. */
export interface Slice {
  /** Index of the layer it belongs to. */
  layer: number;
  part: SlicePart;
  name: string;
  material: string;
  thickness: number;
  resistance: number;
  sd: number;
  isAir: boolean;
}

/** Chooses dry or wet μ for a layer. */
export type VapourChoice = (layerIndex: number) => VapourValue;

/** sd that replaces a layer's own, by layer index [m]: what-ifs and humidity-dependent sheets. */
export type SdOverrides = ReadonlyMap<number, number>;

/**
 * The slices along one way through, from the room outwards. Where framing is crossed its timber stands in the layer's
 * place, facings and all; slices with neither resistance nor sd are dropped.
 *
 * @param counted - counted layers
 * @param path - way through
 * @param choice - dry or wet μ, layer by layer
 * @param overrides - sd [m] that replaces a layer's own
 * @returns slices
 * Source: ISO 13788:2012 clause 6.2 (from memory); facings as sheets of their own is this project's rule.
 */
export function sectionSlices(
  counted: readonly CountedLayer[],
  path: Path,
  choice: VapourChoice,
  overrides: SdOverrides = new Map(),
): Slice[] {
  const slices = counted.flatMap((layer) =>
    slicesOfLayer(layer, path, choice(layer.index), overrides.get(layer.index)),
  );
  return slices.filter((slice) => slice.resistance > 0 || slice.sd > 0);
}

function slicesOfLayer(counted: CountedLayer, path: Path, value: VapourValue, override: number | undefined): Slice[] {
  const { index, layer, framing } = counted;
  const resistance = resistanceAlong(counted, path);
  const common = { layer: index, part: "whole" as SlicePart, name: layer.name, thickness: layer.thickness, resistance };
  if (framing !== null && path.through.includes(framing.name)) {
    const sd = layer.thickness === 0 ? 0 : materialSd(framing.material, layer.thickness, value);
    return [{ ...common, part: "framing", material: framing.material.name, sd, isAir: false }];
  }
  if (layer.type === "air") return [{ ...common, material: "air", sd: override ?? SD_OF_AIR_LAYER, isAir: true }];
  const material = layer.material.name;
  if (override !== undefined) return [{ ...common, material, sd: override, isAir: false }];
  const facing = (part: SlicePart, sd: number): Slice => ({
    ...common,
    part,
    material: `facing of ${material}`,
    thickness: 0,
    resistance: 0,
    sd,
    isAir: false,
  });
  const left = shareLeftByGaps(layer, value);
  return [
    facing("inner facing", layer.facingInner * left),
    { ...common, material, sd: coreSd(layer, value), isAir: false },
    facing("outer facing", layer.facingOuter * left),
  ];
}
