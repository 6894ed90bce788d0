/**
 * The project as it is calculated: every quantity in SI, every name resolved, layers from the room outwards.
 * `read-project.ts` makes it from the text of a project file.
 */

export type Element = "wall" | "flat roof" | "pitched roof" | "floor" | "partition";

/** What a material is to mould, corrosion and drops; null when the file does not say. */
export type MaterialKind = "wood" | "board" | "mineral" | "metal" | "plastic" | "paper";

/** How a value came about: given by a maker's declaration, taken from a table, or assumed. */
export type ValueBasis = "declared" | "tabulated" | "assumed";

/** A material with a thickness of its own, or a sheet that has only an sd. */
export interface Material {
  name: string;
  group: string | null;
  kind: MaterialKind | null;
  /** [kg/m³] */
  density: number | null;
  /** λ [W/(m·K)]; null for a sheet. */
  conductivity: number | null;
  /** [J/(kg·K)] */
  specificHeat: number | null;
  /** μ dry and wet [–], ≥ 1; null for a sheet. */
  vapourResistanceFactorDry: number | null;
  vapourResistanceFactorWet: number | null;
  /** sd of a sheet [m]; null for a material with a thickness. */
  equivalentAirLayerThickness: number | null;
  /** sd of a sheet against relative humidity: pairs [RH as a fraction, sd in m], RH rising; null when constant. */
  equivalentAirLayerThicknessByHumidity: readonly (readonly [number, number])[] | null;
  /** ε of its faces [–]. */
  emissivity: number;
  /** sd [m] of the facing on the room side and on the outer side; null without facing. */
  facingInner: number | null;
  facingOuter: number | null;
  source: string;
  basis: ValueBasis;
  /** How far the values may be off, as the table's row tells; left out: by the basis. */
  spreadClass?: "tabulated" | "common" | "assumed";
  /** Relative spread of its values for the spread study (0.1 is ±10 %); null: the default of its basis. */
  spread: number | null;
}

/** Where a framing's share comes from. */
export type FramingOrigin =
  | { kind: "fraction" }
  | { kind: "width and spacing"; width: number; spacing: number; otherTimber: number; otherTimberByDefault: boolean };

/** Timber (or another bridge) running through a layer. The same name through several layers is the same timber. */
export interface Framing {
  name: string;
  material: Material;
  /** Part of the area, 0 to 1. */
  share: number;
  origin: FramingOrigin;
  /** True for a framing written inside one layer: it belongs to that layer alone. */
  ofOneLayer: boolean;
}

/** ISO 6946 Annex F levels, in words: 0 continuous, 1 gaps, 2 gaps and air behind. */
export type InsulationFit = "continuous" | "gaps" | "gaps and air behind";

/** What a tight layer is for; all but the vapour layer are required and never removed. */
export type LayerPurpose =
  | "vapour layer"
  | "damp-proof membrane"
  | "radon membrane"
  | "gas membrane"
  | "weather skin"
  | "tanking";

/** Fasteners through an insulation, ISO 6946 Annex F. */
export interface Fasteners {
  /** [1/m²] */
  perArea: number;
  /** [m] */
  diameter: number;
  /** [W/(m·K)] */
  conductivity: number;
  /** Depth by which the fastener stops short of the layer's face [m]. */
  recess: number;
}

/** What is missing of a sheet: an area share 0 to 1, with the words of the file. */
export interface LayerGaps {
  share: number;
  /** Open laps, when given so: width and spacing [m]. */
  laps: { width: number; spacing: number } | null;
}

/** A layer of one material, or a sheet, as it stands in a build-up. */
export interface SolidLayer {
  type: "material" | "sheet";
  name: string;
  material: Material;
  /** [m]; 0 for a sheet. */
  thickness: number;
  framing: Framing | null;
  fit: InsulationFit;
  fasteners: Fasteners | null;
  gaps: LayerGaps | null;
  purpose: LayerPurpose | null;
  /** ε of the two faces, after the material and the layer's own keys. */
  emissivityInner: number;
  emissivityOuter: number;
  /** sd [m] of facings on the two faces; 0 without. */
  facingInner: number;
  facingOuter: number;
}

/** How an air layer is ventilated, ISO 6946. */
export type Ventilation = "none" | "slight" | "well";

/** A layer of air, as it stands in a build-up. */
export interface AirLayer {
  type: "air";
  name: string;
  /** [m] */
  thickness: number;
  ventilation: Ventilation;
  /** Openings [m²] per metre of length (upright) or per m² (level); null when not given. */
  ventilationArea: number | null;
  open: "both ends" | "one end" | "closed" | null;
  /** Stated thermal resistance [m²·K/W]; null: calculated. */
  resistance: number | null;
  /** ε of its faces when the file states it for the air layer; null: the neighbours'. */
  emissivity: number | null;
  framing: Framing | null;
}

/** One layer of a build-up. */
export type Layer = SolidLayer | AirLayer;

/** Edge insulation of a slab: level (width) or upright (depth). */
export interface EdgeInsulation {
  /** Rn [m²·K/W] */
  resistance: number;
  /** dn [m] */
  thickness: number;
  /** D [m] */
  extent: number;
  upright: boolean;
}

/** What a floor stands on; it sets the conductivity of the ground. */
export type Soil = "clay or silt" | "sand or gravel" | "rock" | "unknown";

/** Slab on ground, ISO 13370:2017. */
export interface Ground {
  area: number;
  perimeter: number;
  wallThickness: number;
  soil: Soil;
  edgeInsulation: EdgeInsulation | null;
  membrane: boolean;
}

/** Ventilated void under a suspended floor, ISO 13370:2017. */
export interface UnderfloorVoid {
  area: number;
  perimeter: number;
  wallThickness: number;
  soil: Soil;
  height: number;
  wallTransmittance: number;
  /** Openings [m²] per metre of perimeter. */
  openings: number;
  windSpeed: number;
  shelter: "sheltered" | "average" | "exposed";
  groundInsulation: number;
}

/** A climate stated for the far side: twelve temperatures [°C] and relative humidities (fraction). */
export interface StatedMonths {
  temperature: readonly number[];
  relativeHumidity: readonly number[];
}

/** An unheated space next door, as a resistance: ISO 6946:2017 clause 6.10 (from memory). */
export interface UnheatedSpace {
  area: number;
  external: readonly { area: number; transmittance: number }[];
  /** [1/h] */
  airChanges: number;
  volume: number;
}

/** The roof void above a ceiling, ISO 6946. */
export type RoofSpace = "tiles without underlay" | "felt or boards" | "felt or boards, low emissivity";

/** Water that starts in a layer, to see how long it takes to dry: an amount or a meter reading. */
export interface TrappedWater {
  /** Index of the layer, from 0. */
  layer: number;
  /** [kg/m²]; null with a reading. */
  amount: number | null;
  /** Moisture-meter reading of timber, fraction of dry mass; null with an amount. */
  reading: number | null;
  /** Month index 0 to 11. */
  startMonth: number;
}

/** A gap through which room air leaks into the build-up. */
export interface AirLeak {
  /** Length of the gap per m² of build-up [m/m²], its width [m], pressure [Pa]. */
  length: number;
  width: number;
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
  /** Degrees from level; null when not given. */
  pitch: number | null;
  clearSky: boolean;
  layers: readonly Layer[];
  ground: Ground | null;
  void: UnderfloorVoid | null;
  voidClimate: StatedMonths | null;
  space: UnheatedSpace | null;
  roofSpace: RoofSpace | null;
  /** [m²], [m²], [m] */
  area: number | null;
  openings: number | null;
  length: number | null;
  wettedByRain: boolean;
  unheatedSkin: boolean;
  junctionFactors: readonly { name: string; factor: number }[];
  twoSeasonCheck: boolean;
  leak: AirLeak | null;
  trappedWater: readonly TrappedWater[];
  variableResistance: boolean;
  /** Variants of this build-up, each a whole build-up again; empty without. */
  variants: readonly Variant[];
}

/** A named change of a build-up, already applied. */
export interface Variant {
  name: string;
  /** The changes in words, one each. */
  changes: readonly string[];
  buildUp: BuildUp;
}

/** How a room's air is told: temperature rule and humidity rule. */
export interface Room {
  name: string;
  temperature: TemperatureRule;
  /** Cap on θi [°C]; null without cooling. */
  cooling: number | null;
  humidity: HumidityRule;
  burstsOfSteam: boolean;
  pool: boolean;
}

/** How the temperature of a room comes about [°C]. */
export type TemperatureRule =
  | { kind: "heated"; setPoint: number; daysPerWeek: number; otherwise: number | null }
  | { kind: "held"; months: readonly number[] }
  | { kind: "by outdoor temperature" }
  | { kind: "unheated" };

/** How the humidity of a room comes about. */
export type HumidityRule =
  | { kind: "class"; class: 1 | 2 | 3 | 4 | 5 }
  | { kind: "months"; relativeHumidity: readonly number[] }
  | { kind: "by outdoor temperature"; level: "normal" | "high" }
  /** production [kg/s], volume [m³], air changes [1/s] */
  | { kind: "balance"; production: number; volume: number; airChanges: number }
  | { kind: "as outdoors" };

/** Twelve months of air: temperature [°C], vapour pressure [Pa]; January first. */
export interface AirMonths {
  temperature: readonly number[];
  vapourPressure: readonly number[];
}

/** Change of the year: temperature added [K] and the words for it. */
export interface Severity {
  name: string;
  offset: number;
}

/** A place's twelve monthly means with the lines that say where they come from. */
export interface OutdoorClimate {
  name: string;
  /** Header lines of the table, without `#`. */
  origin: readonly string[];
  latitude: number | null;
  longitude: number | null;
  altitude: number | null;
  temperature: readonly number[];
  /** Fractions 0 to 1. */
  relativeHumidity: readonly number[];
}

/** What is asked, of whom and about which drawings, as printed on the first page. */
export interface Query {
  question: string | null;
  to: string | null;
  site: string | null;
  preparedBy: string | null;
  date: string | null;
  drawings: readonly string[];
}

/** Correction of the climate for the site's height. */
export interface AltitudeCorrection {
  /** Height of the site [m]. */
  altitude: number;
  /** [K/m] */
  lapseRate: number;
}

/** A place, its rooms, and the build-ups to assess. */
export interface Project {
  name: string;
  reference: string | null;
  query: Query | null;
  /** The year it is worked out for: altitude and severity are in it. */
  climate: OutdoorClimate;
  severity: Severity;
  altitudeCorrection: AltitudeCorrection | null;
  /** Factor on the vapour excess of humidity classes, 1 unless stated. */
  humidityMargin: number;
  /** By name; always has "indoor" when any build-up uses it. */
  rooms: ReadonlyMap<string, Room>;
  buildUps: readonly BuildUp[];
  accept: readonly string[];
  /** Odd but possible values found while reading, and where climate and rooms do not fit; shown, and marked accepted when `accept` names them. */
  oddities: readonly Oddity[];
  climatesForPlace: readonly string[];
  prices: PriceList | null;
}

/** A plausible but odd value: a note, not a problem. */
export interface Oddity {
  code: string;
  path: string;
  message: string;
  accepted: boolean;
}

/** Prices as the user gave them; warmside ships none. */
export interface PriceList {
  currency: string;
  hourRate: number | null;
  /** Currency per J is never shown; per kWh as written. */
  heatPricePerKilowattHour: number | null;
  entries: readonly PriceEntry[];
}

/** What a price is for: a square metre, a cubic metre, a metre, a roll or a sheet. */
export type PriceUnit = "m2" | "m3" | "m" | "roll" | "sheet";

/** A row of a price list. */
export interface PriceEntry {
  material: string;
  /** Thickness of the layer, or depth of the framing, that it is for [m]; null: any. */
  thickness: number | null;
  per: PriceUnit;
  /** Null for a roll or sheet of which only the size is told. */
  price: number | null;
  /** m² a roll or sheet covers; null otherwise. */
  covers: number | null;
  /** Width of a roll or sheet and the lap of its edges [m]; null when not given. */
  width: number | null;
  lap: number | null;
  /** Waste share 0 to 1. */
  waste: number;
  /** Hours per m² of the build-up. */
  hours: number | null;
}
