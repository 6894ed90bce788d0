import type { Element } from "../project/types.ts";
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
import type { FramingResult, LayerResult } from "./layer-result.ts";
import type { MoistureResult } from "./moisture-result.ts";
import type { PlaneResult } from "./plane-result.ts";
import type { SpreadResult } from "./spread-study.ts";
import type { SensitivityResult, VapourLayerResult } from "./vapour-layer-result.ts";

/** A build-up, assessed. */
export interface BuildUpResult {
  name: string;
  slug: string;
  element: Element;
  room: string;
  faces: string;
  /** [W/(m²·K)] */
  target: number | null;
  /** [m²] */
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
  /** Results in two dimensions that straight sections cannot show; null where those are enough. */
  plane: PlaneResult | null;
  findings: Finding[];
  judgement: Judgement;
  remedies: Remedy[];
  /** How the search went, in a sentence ("no single change …"); null when none was needed. */
  remedySearch: string | null;
  /** How sure the answer is: the study of the spread; absent where it was not asked for. */
  spread?: SpreadResult;
}
