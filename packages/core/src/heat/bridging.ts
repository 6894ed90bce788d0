import type { BuildUp, Framing } from "../project/types.ts";

/** Framing at or above this conductivity needs a detailed calculation [W/(m·K)] (this project's rule: metals). */
export const METAL_CONDUCTIVITY = 10;

/** Mortar and other mineral bridging counts for heat only (this project's rule, METHOD.md, Framing). */
export function countsForVapour(framing: Framing): boolean {
  return framing.material.kind !== "mineral";
}

/**
 * Metal that bridges insulation, which the combined method does not cover.
 *
 * @param buildUp - the build-up
 * @returns the framing, or null
 * Source: ISO 6946:2017 clause 6.7.2.1 excludes metal bridging insulation (from memory).
 */
export function metalBridging(buildUp: BuildUp): Framing | null {
  for (const layer of buildUp.layers) {
    if (layer.framing !== null && layer.framing.material.conductivity! >= METAL_CONDUCTIVITY) return layer.framing;
  }
  return null;
}
