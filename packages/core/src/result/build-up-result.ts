import type { Element, MaterialKind, ValueBasis, Ventilation } from "../project/types.ts";
import type { MonthOfAir } from "./air-result.ts";
import type {
  GapsResult,
  LeakResult,
  TrappedWaterResult,
  TwoSeasonResult,
  VariableResistanceResult,
  WoodResult,
} from "./further-check-results.ts";
import type { HeatResult, SurfaceResult } from "./heat-result.ts";
import type { Finding, Judgement, Remedy } from "./judgement-result.ts";
import type { MoistureResult } from "./moisture-result.ts";
import type { SpreadResult } from "./spread-study.ts";
import type { SensitivityResult, VapourLayerResult } from "./vapour-layer-result.ts";

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
  /** As the pages number it: from 1, room outwards. */
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
  /** What `sd` is made of where the layer has facings [m]; null without. */
  sdParts: { innerFacing: number; core: number; outerFacing: number } | null;
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
  /** Indices, from 0, of the layers it runs through. */
  layers: number[];
  /** Width and spacing, centre to centre [m]; null or absent when only the share was given. */
  width?: number | null;
  spacing?: number | null;
}
