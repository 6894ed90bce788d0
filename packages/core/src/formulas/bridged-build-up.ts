import { combinedLimits } from "../heat/combined-limits.ts";
import { requireList, requireNumber, requireObject } from "../require.ts";

/** A layer, with the resistance through the framing where it is bridged. */
export interface LayerForLimits {
  /** R [m²·K/W], 0 to 50. */
  resistance: number;
  /** R through the framing [m²·K/W], 0.0001 to 50; omitted where no framing runs through the layer. */
  framingResistance?: number;
}

/** The combined method's figures. */
export interface LimitsOfResistance {
  /** R′, R″ and their mean RT [m²·K/W]. */
  upperLimit: number;
  /** [m²·K/W] */
  lowerLimit: number;
  /** [m²·K/W] */
  resistance: number;
  /** U without corrections [W/(m²·K)]. */
  transmittance: number;
  /** Possible error of RT as a fraction [–]. */
  possibleError: number;
}

/**
 * Limits of the total resistance, and U, of a build-up whose framing runs straight through the layers it bridges.
 *
 * @param layers - the layers, in any order
 * @param framingShare - share of the area that the framing takes [–], 0 to 0.95
 * @param surfaces - Rsi + Rse [m²·K/W], 0.01 to 1
 * @returns R′, R″, RT [m²·K/W], U [W/(m²·K)] and the possible error [–]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 6946:2017 clause 6.7.2 (from memory).
 * @example limitsOfResistance([{ resistance: 4, framingResistance: 1.077 }], 0.15, 0.17).transmittance // 0.328
 */
export function limitsOfResistance(
  layers: readonly LayerForLimits[],
  framingShare: number,
  surfaces: number,
): LimitsOfResistance {
  requireList(layers, "layers");
  for (const layer of layers) {
    requireObject(layer, "each of layers", ["resistance"]);
    requireNumber(layer.resistance, "resistance", "m²·K/W", 0, 50);
    if (layer.framingResistance !== undefined)
      requireNumber(layer.framingResistance, "framingResistance", "m²·K/W", 1e-4, 50);
  }
  requireNumber(framingShare, "framingShare", "", 0, 0.95);
  requireNumber(surfaces, "surfaces", "m²·K/W", 0.01, 1);
  const between = layers.reduce((sum, { resistance }) => sum + resistance, 0);
  const through = layers.reduce((sum, { resistance, framingResistance }) => sum + (framingResistance ?? resistance), 0);
  const paths = [
    { share: 1 - framingShare, resistance: between },
    { share: framingShare, resistance: through },
  ];
  const bridged = layers.map(({ resistance, framingResistance }) => ({
    resistance,
    share: framingResistance === undefined ? 0 : framingShare,
    bridgeResistance: framingResistance ?? resistance,
  }));
  const { upperLimit, lowerLimit } = combinedLimits(paths, bridged, surfaces);
  const resistance = (upperLimit + lowerLimit) / 2;
  const possibleError = (upperLimit - lowerLimit) / (2 * resistance);
  return { upperLimit, lowerLimit, resistance, transmittance: 1 / resistance, possibleError };
}
