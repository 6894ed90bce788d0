import type { BuildUp, Framing } from "../project/types.ts";

/** Framing at or above this conductivity needs a detailed calculation [W/(m·K)] (this project's rule: metals). */
export const METAL_CONDUCTIVITY = 10;

/**
 * Mortar and other mineral bridging counts for heat only; no straight path runs through a channel (this project's rule,
 * METHOD.md, Framing).
 */
export function countsForVapour({ material, origin }: Framing): boolean {
  return material.kind !== "mineral" && origin.kind !== "channel";
}

/**
 * Metal that bridges insulation and is not described as a channel: neither the combined method nor the plane covers it.
 *
 * @param buildUp - the build-up
 * @returns the innermost such framing, or null
 * Source: ISO 6946:2017 clause 6.7.2.1 excludes metal bridging insulation (from memory).
 */
export function metalBridging(buildUp: BuildUp): Framing | null {
  for (const layer of buildUp.layers) {
    const { framing } = layer;
    if (framing === null || framing.origin.kind === "channel") continue;
    if (framing.material.conductivity! >= METAL_CONDUCTIVITY) return framing;
  }
  return null;
}
