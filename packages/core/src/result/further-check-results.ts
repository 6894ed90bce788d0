import type { Peak } from "./moisture-result.ts";
import type { VerdictWord } from "./words.ts";

/** Equilibrium moisture content at the faces of a wooden layer. */
export interface WoodResult {
  section: string;
  /** Index of that section among the sections of the moisture side, from 0. */
  sectionIndex: number;
  layer: number;
  name: string;
  /** Equilibrium moisture content, fraction of dry mass, month by month at the inner and outer face. */
  months: { month: string; inner: number; outer: number }[];
  monthsOverLimit: number;
}

/** How long water that starts in a layer takes to dry. */
export interface TrappedWaterResult {
  layer: number;
  name: string;
  /** The way through that dries slowest, and is reported. */
  section: string;
  amount: number;
  startMonth: string;
  /** Days until under 0.001 kg/m² anywhere; null when not within ten years. */
  daysToDry: number | null;
  mostHeldElsewhere: number;
  elsewhere: string | null;
  /** Water gone to the room side and outwards [kg/m²]. */
  toRoom: number;
  toFarSide: number;
  withinScope: boolean;
  /** Held in the layer at each month end from the start, until dry or ten years [kg/m²]. */
  held: number[];
  /** Held everywhere else at the same times [kg/m²]. */
  heldElsewhere: number[];
  variants: { change: string; daysToDry: number | null }[];
}

/** The two-season check of DIN 4108-3. */
export interface TwoSeasonResult {
  applies: boolean;
  reason: string | null;
  surfaceResistanceInside: number;
  edition: string;
  condensate: number;
  limit: number;
  summerCapacity: number;
  passes: boolean | null;
  plane: string | null;
}

/** Water that leaking air brings, beside diffusion. */
export interface LeakResult {
  area: number;
  pressure: number;
  /** [m³/s per m²] */
  airFlow: number;
  months: { month: string; grams: number }[];
  /** [kg/m²] over the wet season, beside diffusion's. */
  total: number;
  diffusion: number;
  message: string;
}

/** A sheet with part of its area missing. */
export interface GapsResult {
  layer: number;
  name: string;
  share: number;
  sdWhole: number;
  sdEffective: number;
  verdict: VerdictWord;
  peak: Peak;
  message: string;
}

/** The year with each layer's vapour resistance following its own humidity. */
export interface VariableResistanceResult {
  rounds: number;
  tolerance: number;
  converged: boolean;
  /** The way through that governs. */
  section: string;
  verdict: VerdictWord;
  peak: Peak;
  layers: { layer: number; name: string; months: { month: string; relativeHumidity: number; sd: number }[] }[];
}
