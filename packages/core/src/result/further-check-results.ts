import type { Peak } from "./moisture-result.ts";
import type { MonthName, Place, SectionId } from "./places.ts";
import type { VerdictWord } from "./words.ts";

/** Equilibrium moisture content at the faces of a wooden layer. */
export interface WoodResult {
  section: string;
  sectionId: SectionId;
  /** Index of that section among the sections of the moisture side, from 0. */
  sectionIndex: number;
  /** Index from 0. */
  layer: number;
  name: string;
  /** Equilibrium moisture content, fraction of dry mass [–], month by month at the inner and outer face. */
  months: { month: MonthName; inner: number; outer: number }[];
  /** Count of months. */
  monthsOverLimit: number;
}

/** A change that would let a wet layer dry faster: layers by index, from 0. */
export type DryingChange =
  | { kind: "no vapour layer"; layers: readonly number[] }
  | { kind: "vapour layer more open"; layers: readonly number[] }
  /** sd [m] */
  | { kind: "breather membrane"; layer: number; sd: number }
  | { kind: "open wood fibre board"; layer: number };

/** How long water that starts in a layer takes to dry, as data: amounts in kg/m². */
export interface TrappedWaterData {
  /** Index of the layer, from 0. */
  layer: number;
  /** The section that dries slowest, which is reported. */
  sectionId: SectionId;
  /** [kg/m²] */
  amount: number;
  startMonth: MonthName;
  /** Days until under 0.001 kg/m² anywhere [d]; null when not within ten years. */
  daysToDry: number | null;
  /** [kg/m²] */
  mostHeldElsewhere: number;
  /** Place of that water; null without any. */
  place: Place | null;
  /** Water that left to the room side and to the outer side [kg/m²]. */
  toRoom: number;
  /** [kg/m²] */
  toFarSide: number;
  withinScope: boolean;
  /** Water in the layer at each month's end from the start, until dry or for ten years [kg/m²]. */
  held: number[];
  /** Water everywhere else at the same times [kg/m²]. */
  heldElsewhere: number[];
  /** Changes that were tried, fastest first, with the days to dry [d]. */
  variants: { by: DryingChange; daysToDry: number | null }[];
}

/** The same with its names and words. */
export interface TrappedWaterResult extends Omit<TrappedWaterData, "variants"> {
  name: string;
  section: string;
  elsewhere: string | null;
  /** Changes that were tried, fastest first, with the days to dry [d]. */
  variants: { by: DryingChange; change: string; daysToDry: number | null }[];
}

/** Why the two-season check does not apply to a build-up. */
export type TwoSeasonReason =
  | "not against outdoor air"
  | "not heated"
  | "cooled"
  | "pool or steam"
  | "wetter than its class"
  | "more than one plane";

/** The two-season check of DIN 4108-3, as data. */
export interface TwoSeasonData {
  applies: boolean;
  /** Why it does not apply; null where it does. */
  why: TwoSeasonReason | null;
  /** [m²·K/W] */
  surfaceResistanceInside: number;
  edition: string;
  /** [kg/m²] */
  condensate: number;
  /** [kg/m²] */
  limit: number;
  /** [kg/m²] */
  summerCapacity: number;
  passes: boolean | null;
  /** The worst section, and its wettest plane, null where nothing condenses. */
  sectionId: SectionId;
  place: Place | null;
}

/** The same with its words. */
export interface TwoSeasonResult extends TwoSeasonData {
  reason: string | null;
  plane: string | null;
}

/** Water from air leakage, beside diffusion, as data. */
export interface LeakData {
  /** [m²/m²], [Pa] */
  area: number;
  /** [Pa] */
  pressure: number;
  /** [m³/s per m²], and over the wet season [m³/m²] */
  airFlow: number;
  /** [m³/m² a year] */
  airVolume: number;
  /** Deposited in each month [kg/m²]. */
  months: { month: MonthName; amount: number }[];
  /** Deposited over the year, beside the condensate from diffusion [kg/m²]. */
  total: number;
  /** [kg/m² a year] */
  diffusion: number;
  place: Place;
  /** The largest amount accepted at that place [kg/m²]. */
  limit: number;
}

/** The same with its words. */
export interface LeakResult extends LeakData {
  message: string;
}

/** Summary of a year: amounts in kg/m². */
export interface GapsYear {
  verdict: VerdictWord;
  peak: Peak;
}

/** A layer with gaps, as data. */
export interface GapsData extends GapsYear {
  /** Gaps as stated, usual gaps, or the framed part without a vapour layer. */
  kind: "stated" | "usual" | "framed part";
  /** Index of the layer, from 0. */
  layer: number;
  /** [–] */
  share: number;
  /** Open laps as stated: width and spacing [m]; null where not stated. */
  laps: { width: number; spacing: number } | null;
  /** Round holes as stated: diameter [m] and number [1/m²]; null where not stated. */
  holes: { diameter: number; perArea: number } | null;
  /** [m] */
  sdWhole: number;
  /** [m] */
  sdEffective: number;
  /** With the layer whole; null for the framed part. */
  whole: GapsYear | null;
  /** The framed part: its section, and whether the vapour layer stops there; null for the others. */
  framedPart: { section: SectionId; stops: boolean } | null;
}

/** The same with its name and words. */
export interface GapsResult extends GapsData {
  name: string;
  message: string;
}

/** The year with each layer's vapour resistance taken from its own humidity. */
export interface VariableResistanceResult {
  /** Count. */
  rounds: number;
  /** [–] */
  tolerance: number;
  converged: boolean;
  /** Name of the governing section. */
  section: string;
  sectionId: SectionId;
  verdict: VerdictWord;
  peak: Peak;
  /** Layers by index from 0: relative humidity [–] and sd [m] in each month. */
  layers: { layer: number; name: string; months: { month: MonthName; relativeHumidity: number; sd: number }[] }[];
}
