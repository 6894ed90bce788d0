import type { Framing, Layer } from "../project/types.ts";
import type { HeatFigures } from "../result/types.ts";

/** A counted layer, with its own resistance and that through its framing [m²·K/W]. */
export interface CountedLayer {
  /** Index in the build-up, room outwards, from 0. */
  index: number;
  layer: Layer;
  resistance: number;
  framing: Framing | null;
  /** Resistance through the framing; equal to `resistance` without framing. */
  framingResistance: number;
  /** How an air layer's resistance was found, in words; null for other layers. */
  airRule: string | null;
}

/** A distinct heat-flow path: the framings it runs through, and its share of the area. */
export interface Path {
  /** Names of the framings it runs through; empty between framing. */
  through: readonly string[];
  share: number;
}

/** Resistances at the two surfaces [m²·K/W]. */
export interface SurfaceResistances {
  inside: number;
  /** For transmittance. */
  outside: number;
  /** For temperatures and vapour; below a slab the resistance of the ground. */
  outsideForMoisture: number;
}

/** A build-up's heat figures, with the values they were calculated from. */
export interface HeatCalculation extends HeatFigures {
  surfaceResistances: SurfaceResistances;
  counted: readonly CountedLayer[];
  /** Index of the well-ventilated layer that ends the counted layers; null without one. */
  endsAt: number | null;
  paths: readonly Path[];
  /** Resistance added outside the layers (roof void, unheated space) [m²·K/W]. */
  addedOutside: number;
}
