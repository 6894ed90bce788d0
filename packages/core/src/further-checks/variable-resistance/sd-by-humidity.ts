import type { BuildUp, Material, SolidLayer } from "../../project/types.ts";
import { sdWithLayerGaps } from "../../vapour/layer-sd.ts";
import type { Slice } from "../../vapour/section-slices.ts";

/** sd of a slice as a function of its mean relative humidity. */
export type SdByHumidity = (relativeHumidity: number) => number;

/**
 * Mean humidity in the two cup tests that measure μ [–]: dry cup between 0 and 50 %, wet cup between 50 and 100 %.
 * Source: ISO 12572 conditions, rounded (from memory).
 */
export const DRY_CUP_MEAN = 0.25;
export const WET_CUP_MEAN = 0.75;

/**
 * How a slice's sd depends on its humidity.
 *
 * @param slice - the slice
 * @param buildUp - its build-up; with `variableResistance` all its layers vary, otherwise only sheets given by a table
 * @returns sd [m] by mean relative humidity, or null where it is constant (air, facings, sheets of one sd)
 * Source: this project's rule: μ is linear from the dry value at 25 % to the wet value at 75 %, and constant beyond; a
 * sheet is interpolated linearly in its table and keeps the end values beyond it.
 */
export function sdByHumidity(slice: Slice, buildUp: BuildUp): SdByHumidity | null {
  const layer = buildUp.layers[slice.layer]!;
  if (slice.isAir || slice.part === "inner facing" || slice.part === "outer facing") return null;
  if (slice.part === "framing") {
    return buildUp.variableResistance ? byFactors(layer.framing!.material, slice.thickness) : null;
  }
  if (layer.type === "air") return null;
  const own = ofMaterial(layer.material, slice.thickness, buildUp.variableResistance);
  return own === null ? null : withGaps(own, layer);
}

function ofMaterial(material: Material, thickness: number, all: boolean): SdByHumidity | null {
  const table = material.equivalentAirLayerThicknessByHumidity;
  if (table !== null) return (humidity) => valueAt(table, humidity);
  return all ? byFactors(material, thickness) : null;
}

function byFactors(material: Material, thickness: number): SdByHumidity | null {
  const { vapourResistanceFactorDry: dry, vapourResistanceFactorWet: wet } = material;
  if (dry === null || wet === null || dry === wet) return null;
  const points = [
    [DRY_CUP_MEAN, dry * thickness],
    [WET_CUP_MEAN, wet * thickness],
  ] as const;
  return (humidity) => valueAt(points, humidity);
}

/** Gaps go through facings and core alike: the core keeps its share of the sd that they leave. */
function withGaps(own: SdByHumidity, layer: SolidLayer): SdByHumidity {
  if (layer.gaps === null) return own;
  const { gaps, thickness } = layer;
  return (humidity) => {
    const core = own(humidity);
    const whole = layer.facingInner + core + layer.facingOuter;
    return (core * sdWithLayerGaps(whole, thickness, gaps!)) / whole;
  };
}

/**
 * A value interpolated linearly in a table; beyond its ends, the end values.
 *
 * @param points - pairs [position, value], positions rising, at least one
 * @param at - position
 * @returns value
 * @example valueAt([[0.3, 10], [0.8, 0.5]], 0.55) // 5.25
 */
export function valueAt(points: readonly (readonly [number, number])[], at: number): number {
  const next = points.findIndex(([position]) => position >= at);
  if (next === -1) return points[points.length - 1]![1];
  const [toPosition, toValue] = points[next]!;
  if (next === 0) return toValue;
  const [fromPosition, fromValue] = points[next - 1]!;
  return fromValue + ((toValue - fromValue) * (at - fromPosition)) / (toPosition - fromPosition);
}
