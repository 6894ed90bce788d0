import type { Framing, Layer } from "../project/types.ts";

/** Which way heat goes through the build-up over the year. */
export type HeatFlowDirection = "upward" | "horizontal" | "downward";

/** A layer that counts, with its resistance and that of the framing through it [m²·K/W]. */
export interface CountedLayer {
  /** Index in the build-up, room outwards, from 0. */
  index: number;
  layer: Layer;
  resistance: number;
  framing: Framing | null;
  /** Resistance through the framing; equal to `resistance` without framing. */
  framingResistance: number;
  /** How an air layer's resistance came about, in words; null for materials. */
  airRule: string | null;
}

/** A distinct straight way through: which framings it runs through, and its part of the area. */
export interface Path {
  /** Names of the framings it goes through; empty between framing. */
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

/** The combined method's figures [m²·K/W]; ratio and error are fractions. */
export interface CombinedResistance {
  upperLimit: number;
  lowerLimit: number;
  resistance: number;
  limitsRatio: number;
  possibleError: number;
}

/** A correction of U to ISO 6946 Annex F, with its formula in figures. */
export interface HeatCorrection {
  name: string;
  /** Index of the layer. */
  layer: number;
  /** ΔU [W/(m²·K)] */
  value: number;
  /** The formula with its numbers. */
  formula: string;
}

/** A named value of a longer working, for people who retrace it. */
export interface WorkingValue {
  name: string;
  symbol: string;
  value: number;
  unit: string;
}

/** A build-up's heat figures with the working behind them. */
export interface HeatCalculation extends CombinedResistance {
  direction: HeatFlowDirection;
  surfaceResistances: SurfaceResistances;
  counted: readonly CountedLayer[];
  /** Index of the well-ventilated layer that ends the sums; null without. */
  endsAt: number | null;
  paths: readonly Path[];
  corrections: readonly HeatCorrection[];
  correctionsLeftOut: boolean;
  /** Sum of the corrections that were added [W/(m²·K)]. */
  correction: number;
  /** [W/(m²·K)] */
  transmittance: number;
  /** [W/(m²·K)] */
  clearTransmittance: number;
  /** [–] */
  framingShare: number;
  /** Resistance added outside the layers (roof void, unheated space) [m²·K/W]. */
  addedOutside: number;
  ground: readonly WorkingValue[] | null;
  /** Rg, what the ground below a slab adds to its layers [m²·K/W]; null for everything else. */
  groundResistance: number | null;
  /** U of channels in the plane [W/(m²·K)], without corrections, and its bounds; absent where the combined method gives U. */
  channel?: { transmittance: number; lower: number; upper: number };
  /** The two cases that a slightly ventilated air layer lies between; absent without one. */
  slightVentilation?: SlightVentilation;
}

/** Closed and well ventilated, and how far the layer is from the one to the other. */
export interface SlightVentilation {
  /** (Av − 500)/1000 with Av in mm² [–], 0 to 1. */
  openShare: number;
  /** Combined total resistances [m²·K/W]. */
  closedResistance: number;
  openResistance: number;
  /** Corrections ΔU of the two cases [W/(m²·K)]. */
  closedCorrection: number;
  openCorrection: number;
}
