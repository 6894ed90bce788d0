import type { HeatFlowDirection } from "../result/types.ts";
import type { SurfaceResistances } from "./types.ts";

/** Rsi by direction [m²·K/W]. Source: ISO 6946:2017 Table 7 (from memory). */
export const SURFACE_RESISTANCE_INSIDE: Readonly<Record<HeatFlowDirection, number>> = {
  upward: 0.1,
  horizontal: 0.13,
  downward: 0.17,
};

/** Rse [m²·K/W]. Source: ISO 6946:2017 Table 7 (from memory). */
export const SURFACE_RESISTANCE_OUTSIDE = 0.04;

/** What the outer end of the counted layers faces. */
export type OuterEnd = "outdoor air" | "well-ventilated layer" | "room or void";

/**
 * Surface resistances at both ends of the counted layers.
 *
 * @param direction - of the heat flow
 * @param outerEnd - what the outer end faces
 * @returns inside and outside [m²·K/W]; behind a well-ventilated layer, the transmittance takes Rsi on the
 *   outer side too; temperatures and vapour keep Rse
 * Source: ISO 6946:2017 clauses 6.8 and 6.9.4 (from memory).
 * @example surfaceResistances("horizontal", "outdoor air").inside // 0.13
 */
export function surfaceResistances(direction: HeatFlowDirection, outerEnd: OuterEnd): SurfaceResistances {
  const inside = SURFACE_RESISTANCE_INSIDE[direction];
  const sheltered = outerEnd === "room or void";
  return {
    inside,
    outside: outerEnd === "outdoor air" ? SURFACE_RESISTANCE_OUTSIDE : inside,
    outsideForMoisture: sheltered ? inside : SURFACE_RESISTANCE_OUTSIDE,
  };
}
