/**
 * The result: plain data, unrounded SI, the same from `assessProject` and from `--json`.
 * Months always run January to December, of the one year that begins at `startMonth`.
 */

import type { Element, MaterialKind, ValueBasis, Ventilation } from "../project/types.ts";

export type VerdictWord = "dry" | "dries out" | "stays wet";
export type JudgementWord = "sound" | "sound with conditions" | "change it" | "beyond this method";
export type FindingSeverity = "note" | "caution" | "fault";

export interface ProjectResult {
  format: 1;
  method: "ISO 13788:2012 clause 6";
  project: string;
  reference: string | null;
  query: {
    question: string | null;
    to: string | null;
    site: string | null;
    preparedBy: string | null;
    date: string | null;
    drawings: readonly string[];
  } | null;
  climate: ClimateResult;
  /** The rooms that any build-up uses, with their twelve months in the reported year. */
  rooms: RoomResult[];
  buildUps: BuildUpResult[];
  /** Odd but possible values; `accepted` when the file acknowledges them. */
  oddities: { code: string; path: string; message: string; accepted: boolean }[];
  /** The vapour layer in each sensible position, in several climates; only when the study was asked for. */
  placement?: PlacementStudy;
}

export interface ClimateResult {
  name: string;
  severity: string;
  /** Header lines of the climate table: place, period, origin, terms. */
  origin: readonly string[];
  latitude: number | null;
  longitude: number | null;
  altitude: number | null;
  /** Correction for the height of the site, when asked for: [m], [K/m]; what it did stands in the origin lines. */
  altitudeCorrection: { siteAltitude: number; lapseRate: number } | null;
  months: MonthOfAir[];
}

export interface MonthOfAir {
  month: string;
  temperature: number;
  relativeHumidity: number;
  vapourPressure: number;
}

export interface RoomResult {
  name: string;
  /** How temperature and humidity come about, in words. */
  temperatureRule: string;
  humidityRule: string;
  source: string;
  months: MonthOfAir[];
}

export interface BuildUpResult {
  name: string;
  slug: string;
  element: Element;
  room: string;
  faces: string;
  target: number | null;
  area: number | null;
  layers: LayerResult[];
  framings: FramingResult[];
  /** The air on the far side month by month (outdoors, a room, a void, the ground). */
  farSide: { name: string; rule: string; months: MonthOfAir[] };
  heat: HeatResult | null;
  surface: SurfaceResult | null;
  moisture: MoistureResult | null;
  /** The same build-up under other assumptions: colder year, unfavourable μ, vapour layer opened or taken out, wetter room. */
  sensitivity: SensitivityResult[];
  vapourLayer: VapourLayerResult | null;
  /** Results of the checks beside the method; null or empty where there is nothing to tell. */
  wood: WoodResult[];
  trappedWater: TrappedWaterResult[];
  twoSeasonCheck: TwoSeasonResult | null;
  leak: LeakResult | null;
  gaps: GapsResult[];
  variableResistance: VariableResistanceResult | null;
  /** Why heat or moisture is null, or what kind of assessment to ask for instead; null when within the method. */
  beyond: { code: string; reason: string; askFor: string } | null;
  findings: Finding[];
  judgement: Judgement;
  remedies: Remedy[];
  /** How the search went, in a sentence ("no single change …"); null when none was needed. */
  remedySearch: string | null;
  /** How sure the answer is: the study of the spread; absent where it was not asked for. */
  spread?: SpreadResult;
}

export interface LayerResult {
  /** Counts from 1, room outwards. */
  number: number;
  name: string;
  type: "material" | "sheet" | "air";
  kind: MaterialKind | null;
  group: string | null;
  /** [m] */
  thickness: number;
  conductivity: number | null;
  /** Of the layer's own material, between framing [m²·K/W]. */
  resistance: number;
  vapourResistanceFactor: number | null;
  /** [m], the dry value used */
  sd: number;
  /** [m], the unfavourable value of the second run */
  sdUnfavourable: number;
  density: number | null;
  emissivityInner: number | null;
  emissivityOuter: number | null;
  source: string;
  basis: ValueBasis;
  framing: string | null;
  ventilation: Ventilation | null;
  /** Openings [m² per m or m²] and where they are, as stated. */
  ventilationArea: number | null;
  open: string | null;
  /** The rule that gave an air layer its resistance, in words; null for materials. */
  airRule: string | null;
  fit: string | null;
  purpose: string | null;
  /** False from a well-ventilated layer outwards: left out of the sums. */
  counted: boolean;
}

export interface FramingResult {
  name: string;
  material: string;
  conductivity: number;
  share: number;
  /** Where the share comes from, in words with its numbers. */
  origin: string;
  /** The usual share of such an element for comparison, in words (common practice). */
  usual: string;
  /** Numbers (from 1) of the layers it runs through. */
  layers: number[];
  /** Width and spacing, centre to centre [m]; null or absent when only the share was given. */
  width?: number | null;
  spacing?: number | null;
}

export interface HeatResult {
  /** Combined total resistance before corrections [m²·K/W]. */
  resistance: number;
  upperLimit: number;
  lowerLimit: number;
  /** U with framing and corrections [W/(m²·K)]. */
  transmittance: number;
  /** U between framing [W/(m²·K)]. */
  clearTransmittance: number;
  /** ΔU added [W/(m²·K)]. */
  correction: number;
  framingShare: number;
  temperatureFactor: number;
  requiredTemperatureFactor: number | null;
  criticalMonth: string | null;
  /** "upward" | "horizontal" | "downward" */
  direction: string;
  surfaceResistanceInside: number;
  /** As used for U, and as used for temperatures and vapour. */
  surfaceResistanceOutside: number;
  surfaceResistanceOutsideMoisture: number;
  limitsRatio: number;
  possibleError: number;
  /** The distinct ways through, with total resistance of each (upper limit). */
  paths: { name: string; share: number; resistance: number; layerResistances: number[] }[];
  /** Each layer's resistance in the lower limit, with its bridging. */
  lowerLimitLayers: { layer: number | null; name: string; resistance: number }[];
  /** Corrections to ISO 6946 Annex F: each with its numbers, and whether it was left out under 3 %. */
  corrections: { name: string; layer: number; value: number; formula: string }[];
  correctionsLeftOut: boolean;
  /** Floors: the working of ISO 13370 as named values with units; null otherwise. */
  ground: { name: string; symbol: string; value: number; unit: string }[] | null;
  /**
   * The two cases that a slightly ventilated air layer lies between: combined total resistances [m²·K/W] and
   * corrections [W/(m²·K)]; null without such a layer. `paths` and `lowerLimitLayers` are those of the closed case.
   */
  slightVentilation?: {
    openShare: number;
    closedResistance: number;
    openResistance: number;
    closedCorrection: number;
    openCorrection: number;
  } | null;
  /** Heat over the heating year [kWh/m²]; null where there is none. */
  heatPerYear: number | null;
  heatPerYearNote: string | null;
}

export interface SurfaceResult {
  temperatureFactors: { where: string; factor: number }[];
  /** Required factor each month for mould, condensation and corrosion; null where the month does not count. */
  required: { month: string; mould: number | null; condensation: number | null; corrosion: number | null }[];
  critical: {
    mould: { month: string; factor: number } | null;
    condensation: { month: string; factor: number } | null;
    corrosion: { month: string; factor: number } | null;
  };
  /** Why a critical month is null. */
  reason: string | null;
  /** Room relative humidity the coldest surface would stand in its worst month (fraction) before mould and before drops. */
  humidityStood: { month: string; mould: number; condensation: number } | null;
  /** The other face of a partition, judged by the other room's air; null otherwise. */
  otherFace: { temperatureFactor: number; required: number | null; criticalMonth: string | null } | null;
  junctions: { name: string; factor: number; meetsMould: boolean | null; meetsCondensation: boolean | null }[];
  /** Months in which the room surface itself is at saturation. */
  condensationMonths: string[];
}

export interface Peak {
  /** [kg/m²] */
  amount: number;
  month: string | null;
}

export interface YearSummary {
  verdict: VerdictWord;
  peak: Peak;
  carriedOver: number;
  dryBy: string | null;
}

export interface MoistureResult extends YearSummary {
  /** Name of the governing section. */
  section: string;
  sections: SectionResult[];
}

export interface SectionResult extends YearSummary {
  name: string;
  share: number;
  startMonth: string | null;
  /** Water written off by setting nodes to zero at month ends [kg/m²]. */
  writtenOff: number;
  withinMonth: YearSummary;
  repeating: { settles: boolean; years: number; level: number; growthPerYear: number };
  /** The least distance to saturation over the year: where and when; null when wet. */
  leastMargin: { node: number; month: string /** psat − p [Pa] */; margin: number; relativeHumidity: number } | null;
  /** The deciding month: the greatest change, or when dry the least distance to saturation. */
  decidingMonth: string;
  /** Layers of this way through that were counted, with R and sd each. */
  layers: { layer: number; name: string; material: string; resistance: number; sd: number; nodeAfter: number }[];
  months: SectionMonth[];
}

export interface SectionMonth {
  month: string;
  outdoor: { temperature: number; vapourPressure: number };
  indoor: { temperature: number; vapourPressure: number };
  nodes: NodeState[];
  planes: { node: number; change: number; held: number }[];
}

export interface NodeState {
  node: number;
  /** Number of the layer (from 0) that ends or is cut here; null at the room surface. */
  layer: number | null;
  /** Its name. */
  after: string | null;
  /** [m] from the room surface */
  depth: number;
  sd: number;
  temperature: number;
  saturationPressure: number;
  vapourPressure: number;
}

export interface SensitivityResult {
  /** "colder year", "unfavourable vapour resistance", "vapour layer ten times more open", "no vapour layer", "wetter room" … */
  name: string;
  verdict: VerdictWord;
  withinMonthVerdict: VerdictWord;
  peak: Peak;
  carriedOver: number;
  /** True when the verdict is worse than the reported one. */
  worse: boolean;
  /** One plain sentence. */
  message: string;
}

export interface VapourLayerResult {
  present: boolean;
  /** 0-based layer indices. */
  layers: number[];
  sd: number | null;
  /** A room's name, "outdoors" or "neither". */
  warmSide: string;
  onWarmSide: boolean | null;
  monthsOnWarmSide: number | null;
  /** The drive month by month: which side vapour is pushed from. */
  drive: { month: string; from: string; pressure: number }[];
  resistanceShareWarmSide: number | null;
  /** Least (temperature of warm face − dew point of the air on that side) over the year [K]. */
  dewPointMargin: number | null;
  dewPointMarginMonth: string | null;
  sdRatioWarmToCold: number | null;
  outerSkin: { layers: number[]; sd: number; name: string } | null;
  /** Every candidate, tightest first. */
  candidates: { layers: number[]; sd: number; side: "warm" | "cold" | "both" | "neither" }[];
  /** The plain answer in a sentence. */
  message: string;
}

export interface WoodResult {
  section: string;
  layer: number;
  name: string;
  /** Equilibrium moisture content, fraction of dry mass, month by month at the inner and outer face. */
  months: { month: string; inner: number; outer: number }[];
  monthsOverLimit: number;
}

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

export interface Finding {
  /** `build-up-slug/code`, with `/section` or a number when one code occurs twice. */
  id: string;
  code: string;
  severity: FindingSeverity;
  /** What is so, in plain words with its figures. */
  message: string;
  /** What to do, or what to ask; null where nothing follows. */
  advice: string | null;
  /** Standard and clause, or "common practice". */
  source: string;
  figures: Record<string, number | string | null>;
}

export interface Judgement {
  word: JudgementWord;
  /** Ids of findings. */
  reasons: string[];
  /** One plain sentence: the answer and its first reason. */
  message: string;
  /** What the answer rests on and does not cover, in sentences. */
  conditions: string[];
}

export interface Remedy {
  change: string;
  judgement: JudgementWord;
  verdict: VerdictWord;
  transmittance: number;
  peak: Peak;
  /** Thickness added on the room side and on the outer side [m]. */
  thicknessInside: number;
  thicknessOutside: number;
}

/** Where the vapour layer lies in a cell of the placement study; the far side is outdoors, a void or another room. */
export type PlacementPosition =
  | "towards the room"
  | "within the insulation"
  | "towards the far side"
  | "none"
  | "both faces";

/** The vapour layer of every build-up in each sensible position, in several climates, heated and cooled. */
export interface PlacementStudy {
  /** The project's own climate first. */
  climates: { name: string; kind: string; severity: string }[];
  buildUps: PlacementOfBuildUp[];
}

export interface PlacementOfBuildUp {
  name: string;
  slug: string;
  /** The layer that is moved about, and its sd [m]; null where the build-up is left out. */
  layer: { name: string; sd: number; added: boolean } | null;
  /** Why the build-up is left out; null where it is not. */
  leftOut: string | null;
  /** The positions, in the order of the cells, with their words and whether the file draws it so. */
  positions: { position: PlacementPosition; words: string; isDrawn: boolean }[];
  rows: PlacementRow[];
  /** One sentence that says what the grid shows; null where the build-up is left out. */
  message: string | null;
}

export interface PlacementRow {
  climate: string;
  use: "heated" | "cooled" | "unheated";
  /** The room's rules in words. */
  temperatureRule: string;
  humidityRule: string;
  /** A room's name, "outdoors", "void" or "neither". */
  warmSide: string | null;
  /** Why the row has no cells: a room that cannot exist there; null otherwise. */
  leftOut: string | null;
  cells: PlacementCell[];
}

export interface PlacementCell {
  position: PlacementPosition;
  judgement: JudgementWord;
  /** Null where the case is beyond the method, as the figures beside it are. */
  verdict: VerdictWord | null;
  peak: Peak | null;
  carriedOver: number | null;
  /** Least (temperature of the layer − dew point of the air on the warm side) over the year [K]; null without a layer. */
  dewPointMargin: number | null;
  dewPointMarginMonth: string | null;
}

/** The same build-up worked out many times, with every input somewhere within its spread. */
export interface SpreadResult {
  /** Samples worked out; fewer than `asked` when the study was interrupted. */
  samples: number;
  asked: number;
  /** The same seed gives the same figures. */
  seed: number;
  sampling: "Latin hypercube";
  inputs: SpreadInputResult[];
  /** Every word that came up, most often first. */
  verdicts: SpreadProbability<VerdictWord>[];
  judgements: SpreadProbability<JudgementWord>[];
  /** [W/(m²·K)] */
  transmittance: SpreadQuantiles;
  /** Peak and carried over [kg/m²]. */
  peak: SpreadQuantiles;
  carriedOver: SpreadQuantiles;
  /** Names of the inputs that matter most, for each of the three; null where it comes out the same in every sample. */
  decidesJudgement: string | null;
  decidesWater: string | null;
  decidesTransmittance: string | null;
  /** One plain sentence or two. */
  message: string;
}

export interface SpreadInputResult {
  name: string;
  kind: SpreadInputKind;
  /** As stated, and the ends of its spread, in the unit named. */
  stated: number;
  low: number;
  high: number;
  unit: "W/(m·K)" | "–" | "m" | "share";
  /** Where the width comes from, in words. */
  origin: string;
  /**
   * Rank correlation [–] with the judgement (worse words higher), with how near it comes to water and how much there is,
   * and with the transmittance.
   */
  influenceOnJudgement: number;
  influenceOnWater: number;
  influenceOnTransmittance: number;
}

export type SpreadInputKind =
  | "conductivity"
  | "vapour resistance factor"
  | "sd"
  | "framing share"
  | "gap share"
  | "indoor humidity";

export interface SpreadProbability<Word> {
  word: Word;
  count: number;
  /** count over samples, with the standard error of a share among independent samples [–]. */
  probability: number;
  standardError: number;
}

/** One, five, fifty, ninety-five and ninety-nine of a hundred lie below. */
export interface SpreadQuantiles {
  one: number;
  five: number;
  fifty: number;
  ninetyFive: number;
  ninetyNine: number;
}
