/**
 * The result: plain data, unrounded SI, the same from `assessProject` and from `--json`.
 * Months always run January to December, of the one year that begins at `startMonth`.
 */

import type { Element, MaterialKind, PriceUnit, ValueBasis, Ventilation } from "../project/types.ts";

/** What the monthly method says: ISO 13788 cases a, b and c. */
export type VerdictWord = "dry" | "dries out" | "stays wet";
/** What a careful adviser makes of it. */
export type JudgementWord = "sound" | "sound with conditions" | "change it" | "beyond this method";
/** How much a finding matters. */
export type FindingSeverity = "note" | "caution" | "fault";

/** A whole project, assessed. */
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
  /** The variants beside the build-ups they belong to; only where the file has any. */
  comparison?: ComparisonStudy;
  /** One layer in many thicknesses; only when the study was asked for. */
  sweep?: SweepStudy;
}

/** The outdoor climate that was used, month by month. */
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

/** The air of one month: [°C], a fraction, [Pa]. */
export interface MonthOfAir {
  month: string;
  temperature: number;
  relativeHumidity: number;
  vapourPressure: number;
}

/** A room with its twelve months. */
export interface RoomResult {
  name: string;
  /** How temperature and humidity come about, in words. */
  temperatureRule: string;
  humidityRule: string;
  source: string;
  months: MonthOfAir[];
}

/** A build-up, assessed. */
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

/** A layer with the properties that were used and where they come from, in SI. */
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

/** A framing with its share of the area and where that comes from. */
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

/** The heat side: resistances [m²·K/W], transmittances [W/(m²·K)], temperature factors [–], with their working. */
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

/** The inside surface: temperature factors [–] against what mould, drops and corrosion require. */
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

/** The greatest month-end total of held water, and its month; null when dry. */
export interface Peak {
  /** [kg/m²] */
  amount: number;
  month: string | null;
}

/** What the year comes to: verdict, peak, water left after twelve months [kg/m²], the month by which all is gone. */
export interface YearSummary {
  verdict: VerdictWord;
  peak: Peak;
  carriedOver: number;
  dryBy: string | null;
}

/** The moisture side: what the governing section comes to, and every section. */
export interface MoistureResult extends YearSummary {
  /** Name of the governing section. */
  section: string;
  sections: SectionResult[];
}

/** One straight way through, with its twelve months. Amounts are per m² of its own area. */
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

/** One month of a section: the air on both sides [°C], [Pa], every node, and the nodes where water comes or goes [kg/m²]. */
export interface SectionMonth {
  month: string;
  outdoor: { temperature: number; vapourPressure: number };
  indoor: { temperature: number; vapourPressure: number };
  nodes: NodeState[];
  planes: { node: number; change: number; held: number }[];
}

/** A node in one month: place [m], temperature [°C], pressures [Pa]. */
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

/** The same build-up under one other assumption. */
export interface SensitivityResult {
  /** "colder year", "unfavourable vapour resistance", "vapour layer ten times more open", "no vapour layer", "wetter room" … */
  name: string;
  verdict: VerdictWord;
  withinMonthVerdict: VerdictWord;
  peak: Peak;
  carriedOver: number;
  /** True when the verdict is worse than the reported one, or the peak higher by more than a trace. */
  worse: boolean;
  /** One plain sentence. */
  message: string;
}

/** The vapour layer: which it is, on which side it lies, and how far from the dew point. */
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

/** Equilibrium moisture content at the faces of a wooden layer. */
export interface WoodResult {
  section: string;
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

/** One thing worth telling, with the figures behind it and what to do. */
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

/** The judgement with its reasons. */
export interface Judgement {
  word: JudgementWord;
  /** Ids of findings. */
  reasons: string[];
  /** One plain sentence: the answer and its first reason. */
  message: string;
  /** What the answer rests on and does not cover, in sentences. */
  conditions: string[];
}

/** A change that was computed to turn the judgement, with its result. */
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

/** The placement study of one build-up. */
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

/** One climate and use of the placement study. */
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

/** What the build-up comes to with the vapour layer in one position. */
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

/** One input of the spread study, with how much it matters. */
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

/** What an input of the spread study is. */
export type SpreadInputKind =
  | "conductivity"
  | "vapour resistance factor"
  | "sd"
  | "framing share"
  | "gap share"
  | "indoor humidity";

/** How often a word came up. */
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

/** The variants of the build-ups beside the build-ups themselves. */
export interface ComparisonStudy {
  /** As the file has it; empty when it names none. */
  currency: string;
  hourRate: number | null;
  heatPricePerKilowattHour: number | null;
  /** Build-ups that have variants. */
  buildUps: ComparisonOfBuildUp[];
  /** What is odd about the prices, in sentences: ones that nothing uses, ones used for several thicknesses alike. */
  notes: string[];
  /** What the figures rest on, in sentences. */
  assumptions: string[];
}

/** A build-up beside its variants. */
export interface ComparisonOfBuildUp {
  name: string;
  slug: string;
  /** Area with openings off [m²], and length of the wall [m]; null when not stated. */
  area: number | null;
  length: number | null;
  /** The build-up as drawn, then its variants in the order of the file. */
  rows: ComparisonRow[];
}

/** The build-up as drawn, or one of its variants. */
export interface ComparisonRow {
  /** Null for the build-up as drawn. */
  variant: string | null;
  slug: string;
  /** In words, one each. */
  changes: string[];
  judgement: JudgementWord;
  /** The judgement's reason in a sentence. */
  reason: string;
  /** Figures are null where the variant is beyond the method. */
  transmittance: number | null;
  clearTransmittance: number | null;
  temperatureFactor: number | null;
  requiredTemperatureFactor: number | null;
  verdict: VerdictWord | null;
  peak: Peak | null;
  carriedOver: number | null;
  /** Of the whole build-up [m]. */
  thickness: number;
  /** Floor area that a wall of the stated length stands on [m²]; null for roofs and floors, or without a length. */
  floorArea: number | null;
  /** On the warm side; null without one there. */
  vapourLayer: { name: string; sd: number } | null;
  /** Whether it has to be continuous; null without a vapour layer, or where water is too much already. */
  dependence: "forgives gaps" | "depends on its vapour layer" | null;
  /** Most water in a year with the vapour layer ten times more open, and with none. */
  whenOpened: { verdict: VerdictWord; peak: number } | null;
  whenLeftOut: { verdict: VerdictWord; peak: number } | null;
  /** [kWh/m²] and [kWh] */
  heatPerYear: number | null;
  heatPerYearInAll: number | null;
  goods: GoodsResult[];
  /** Null when nothing in it has a price. */
  cost: CostResult | null;
  /** Null for the build-up as drawn. */
  againstBase: AgainstBase | null;
  /** What the variant does, in one plain sentence; null for the build-up as drawn. */
  sentence: string | null;
}

/** One thing to buy for a build-up; waste is left out of `perArea` and `inAll`. */
export interface GoodsResult {
  use: "layer" | "framing" | "tape";
  material: string;
  /** Of the layer, or depth of the framing [m]; null for sheets and tape. */
  thickness: number | null;
  /** For a square metre of the build-up; null for tape, which is counted for the whole only. */
  perArea: GoodsAmounts | null;
  /** For the whole, openings off; null where no area is stated. */
  inAll: GoodsAmounts | null;
  /** Share that goes to waste; 0 where no price states one. */
  waste: number;
  /** What to order, waste counted, whole rolls and sheets; null without a price or size. */
  toBuy: { count: number; unit: PriceUnit } | null;
  costPerArea: number | null;
  costInAll: number | null;
  /** Hours for a square metre of the build-up; null when not stated. */
  hours: number | null;
  /** How tape was counted. */
  note: string | null;
}

/** Area [m²], volume [m³] and length [m]; null where it is not counted that way or not known. */
export interface GoodsAmounts {
  area: number | null;
  volume: number | null;
  length: number | null;
}

/** Money in the file's currency. */
export interface CostResult {
  materialsPerArea: number;
  /** Null without an hour rate. */
  labourPerArea: number | null;
  /** Materials and labour for a square metre, rolls and sheets by their share. */
  perArea: number;
  /** For the whole, whole rolls and sheets; null without an area. */
  inAll: number | null;
  /** Hours for a square metre. */
  hoursPerArea: number;
  /** What has no price and is left out. */
  unpriced: string[];
}

/** A variant less the build-up as drawn; savings count upwards. */
export interface AgainstBase {
  /** [m], [m²] */
  thickness: number;
  floorArea: number | null;
  /** Heat saved over a year [kWh/m²] and [kWh]. */
  heat: number | null;
  heatInAll: number | null;
  /** Heat saved over a year for each metre of thickness added [kWh/m³]; null where none is added. */
  heatPerThickness: number | null;
  /** Money saved over a year for a square metre and in all; null without a heat price. */
  money: number | null;
  moneyInAll: number | null;
  /** Money saved over a year for a square metre and each metre of thickness added. */
  moneyPerThickness: number | null;
  /** Null where goods without a price differ. */
  extraCost: number | null;
  extraCostInAll: number | null;
  /** Null without a heat price, where nothing is saved, or where the extra cost is not known. */
  yearsToPay: number | null;
}

/** One layer of a build-up in many thicknesses. */
export interface SweepStudy {
  buildUp: { name: string; slug: string };
  /** Counts from 1. */
  layer: { number: number; name: string };
  /** [m] */
  from: number;
  to: number;
  step: number;
  points: SweepPoint[];
  /** Where the judgement turns, thinnest first. */
  turns: SweepTurn[];
  /** Least thickness at which the target is met, compared at two decimals; null without a target, or where it never is. */
  meetsTargetFrom: number | null;
  target: number | null;
  message: string;
}

/** One thickness of the layer that is varied. */
export interface SweepPoint {
  /** [m]; 0 is the build-up without the layer. */
  thickness: number;
  isDrawn: boolean;
  judgement: JudgementWord;
  reason: string;
  transmittance: number | null;
  temperatureFactor: number | null;
  verdict: VerdictWord | null;
  peak: Peak | null;
  carriedOver: number | null;
  heatPerYear: number | null;
}

/** A thickness at which the judgement turns. */
export interface SweepTurn {
  /** Found by halving, to a tenth of a millimetre [m]: the thinnest with the new judgement. */
  thickness: number;
  from: JudgementWord;
  to: JudgementWord;
  reason: string;
}
