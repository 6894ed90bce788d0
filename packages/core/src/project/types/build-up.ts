import type { Ground, RoofSpace, StatedMonths, UnderfloorVoid, UnheatedSpace } from "./far-side.ts";
import type { Layer } from "./layer.ts";

/** What a build-up is. */
export type Element = "wall" | "flat roof" | "pitched roof" | "floor" | "partition";

/** Whether driving rain reaches the outside. */
export type WettedByRain = "no" | "sheltered" | "yes";

/** Water trapped in a layer at the start, to see how long it takes to dry: an amount or a meter reading. */
export interface TrappedWater {
  /** Index of the layer, from 0. */
  layer: number;
  /** [kg/m²]; null if a reading is given. */
  amount: number | null;
  /** Moisture-meter reading of timber, fraction of dry mass [–]; null if an amount is given. */
  reading: number | null;
  /** Month index 0 to 11. */
  startMonth: number;
}

/** A gap through which room air leaks into the build-up. */
export interface AirLeak {
  /** Length of the gap per m² of build-up [m/m²], its width [m], pressure [Pa]. */
  length: number;
  /** [m] */
  width: number;
  /** [Pa] */
  pressure: number;
}

/** A wall, roof, floor or partition as layers from the room outwards. */
export interface BuildUp {
  name: string;
  /** The name in lower case with hyphens, unique in the project; finding ids begin with it. */
  slug: string;
  element: Element;
  /** A room's name; "indoor" is the room of every build-up that names none. */
  room: string;
  /** "outdoors", "ground", "void" or a room's name. */
  faces: string;
  /** [W/(m²·K)] */
  target: number | null;
  /** From level [°]; null when not given. */
  pitch: number | null;
  /** Span of a roof between its eaves openings [m]; null when not given. */
  span: number | null;
  clearSky: boolean;
  layers: readonly Layer[];
  ground: Ground | null;
  void: UnderfloorVoid | null;
  voidClimate: StatedMonths | null;
  space: UnheatedSpace | null;
  roofSpace: RoofSpace | null;
  /** [m²] */
  area: number | null;
  /** [m²] */
  openings: number | null;
  /** [m] */
  length: number | null;
  /** The project's mean rain of the heating season [m/s]; null when not given. */
  rainOfHeatingSeason: number | null;
  /** Null when the file does not say. */
  wettedByRain: WettedByRain | null;
  unheatedSkin: boolean;
  /** Temperature factors from the file, or worked out in the plane [–]. */
  junctionFactors: readonly { name: string; factor: number; workedOut?: boolean }[];
  /** Layers, by index from 0, that suggest a list written from outside; null if none do, or the file accepts it. */
  oddEnds: { innermost: number | null; outermost: number | null } | null;
  twoSeasonCheck: boolean;
  leak: AirLeak | null;
  trappedWater: readonly TrappedWater[];
  variableResistance: boolean;
  /** Variants of this build-up, each a complete build-up; may be empty. */
  variants: readonly Variant[];
}

/** A named change of a build-up, already applied. */
export interface Variant {
  name: string;
  /** The changes, each in words. */
  changes: readonly string[];
  buildUp: BuildUp;
}
