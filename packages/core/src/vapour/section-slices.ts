import { resistanceAlong } from "../heat/paths.ts";
import type { CountedLayer, Path } from "../heat/types.ts";
import type { SlicePart } from "../result/types.ts";
import { coreSd, materialSd, SD_OF_AIR_LAYER, shareLeftByGaps, type VapourValue } from "./layer-sd.ts";

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

/** sd that replaces a layer's own, by layer index [m]: for variants and humidity-dependent sheets. */
export type SdOverrides = ReadonlyMap<number, number>;

/**
 * The slices along one heat-flow path, from the room outwards. Where the path runs through framing, this replaces the
 * layer and its facings; slices with neither resistance nor sd are dropped.
 *
 * @param counted - counted layers
 * @param path - heat-flow path
 * @param choice - dry or wet μ, layer by layer
 * @param overrides - sd [m] that replaces a layer's own
 * @returns slices
 * Source: ISO 13788:2012 clause 6.2 (from memory); treating facings as separate sheets is this project's rule.
 */
export function sectionSlices(
  counted: readonly CountedLayer[],
  path: Path,
  choice: VapourChoice,
  overrides: SdOverrides = NO_OVERRIDES,
): Slice[] {
  const slices: Slice[] = [];
  for (const layer of counted) addSlices(slices, layer, path, choice(layer.index), overrides.get(layer.index));
  return slices;
}

const NO_OVERRIDES: SdOverrides = new Map();

function addSlices(
  slices: Slice[],
  counted: CountedLayer,
  path: Path,
  value: VapourValue,
  override: number | undefined,
): void {
  const { layer, framing } = counted;
  const resistance = resistanceAlong(counted, path);
  if (framing !== null && path.through.includes(framing.name)) {
    const sd = layer.thickness === 0 ? 0 : materialSd(framing.material, layer.thickness, value);
    addSlice(slices, counted, "framing", framing.material.name, resistance, sd);
  } else if (layer.type === "air") {
    addSlice(slices, counted, "whole", "air", resistance, override ?? SD_OF_AIR_LAYER);
  } else if (override !== undefined) {
    addSlice(slices, counted, "whole", layer.material.name, resistance, override);
  } else {
    const left = shareLeftByGaps(layer, value);
    addSlice(slices, counted, "inner facing", layer.material.name, 0, layer.facingInner * left);
    addSlice(slices, counted, "whole", layer.material.name, resistance, coreSd(layer, value));
    addSlice(slices, counted, "outer facing", layer.material.name, 0, layer.facingOuter * left);
  }
}

/** Adds a slice, unless it has neither resistance nor sd. A facing has no thickness and is named after its material. */
function addSlice(
  slices: Slice[],
  { index, layer }: CountedLayer,
  part: SlicePart,
  material: string,
  resistance: number,
  sd: number,
): void {
  if (!(resistance > 0 || sd > 0)) return;
  const isFacing = part === "inner facing" || part === "outer facing";
  slices.push({
    layer: index,
    part,
    name: layer.name,
    material: isFacing ? `facing of ${material}` : material,
    thickness: isFacing ? 0 : layer.thickness,
    resistance,
    sd,
    isAir: layer.type === "air" && part === "whole",
  });
}
