import type { CombinedResistance } from "../result/types.ts";
import { type BridgedLayer, bridgedResistance, combinedLimits } from "./combined-limits.ts";
import { resistanceAlong } from "./paths.ts";
import type { CountedLayer, Path } from "./types.ts";

/**
 * Total resistance of a bridged build-up by the combined method: the mean of an upper limit (all distinct
 * paths in parallel) and a lower limit (layer by layer).
 *
 * @param counted - counted layers
 * @param paths - heat-flow paths, with shares that add up to 1
 * @param surfaceInside - Rsi [m²·K/W]
 * @param surfaceOutside - Rse and any resistance outside the layers [m²·K/W]
 * @returns limits, mean [m²·K/W], their ratio and the possible error as fractions
 * Source: ISO 6946:2017 clause 6.7.2 (from memory).
 */
export function combinedResistance(
  counted: readonly CountedLayer[],
  paths: readonly Path[],
  surfaceInside: number,
  surfaceOutside: number,
): CombinedResistance {
  const ways = paths.map((path) => ({ share: path.share, resistance: resistanceOfPath(counted, path) }));
  const { upperLimit, lowerLimit } = combinedLimits(ways, counted.map(asBridged), surfaceInside + surfaceOutside);
  const resistance = (upperLimit + lowerLimit) / 2;
  const limitsRatio = upperLimit / lowerLimit;
  const possibleError = (upperLimit - lowerLimit) / (2 * resistance);
  return { upperLimit, lowerLimit, resistance, limitsRatio, possibleError };
}

/** Sum of the layers' resistances along one heat-flow path [m²·K/W]. */
export function resistanceOfPath(counted: readonly CountedLayer[], path: Path): number {
  return counted.reduce((sum, layer) => sum + resistanceAlong(layer, path), 0);
}

/** Resistance of one layer with its framing in parallel [m²·K/W]. Source: ISO 6946:2017 clause 6.7.2.4 (from memory). */
export function bridgedLayerResistance(layer: CountedLayer): number {
  return bridgedResistance(asBridged(layer));
}

function asBridged({ resistance, framing, framingResistance }: CountedLayer): BridgedLayer {
  return { resistance, share: framing?.share ?? 0, bridgeResistance: framingResistance };
}

/** Largest R′/R″ for which the method is valid [–]. Source: ISO 6946:2017 clause 6.7.2.1 (from memory). */
export const LARGEST_LIMITS_RATIO = 1.5;
