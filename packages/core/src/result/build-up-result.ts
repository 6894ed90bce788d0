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

/** The assessment of a build-up. */
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
  /** The air on the outer side, month by month (outdoors, a room, a void, the ground). */
  farSide: { name: string; rule: string; months: MonthOfAir[] };
  heat: HeatResult | null;
  surface: SurfaceResult | null;
  moisture: MoistureResult | null;
  /** The same build-up under other assumptions, listed in `SensitivityName`. */
  sensitivity: SensitivityResult[];
  vapourLayer: VapourLayerResult | null;
  /** Results of the checks beside the monthly method; null or empty where they do not apply. */
  wood: WoodResult[];
  trappedWater: TrappedWaterResult[];
  twoSeasonCheck: TwoSeasonResult | null;
  leak: LeakResult | null;
  gaps: GapsResult[];
  variableResistance: VariableResistanceResult | null;
  /** Why heat or moisture is null, and which assessment to ask for instead; null when within the method. */
  beyond: { code: string; reason: string; askFor: string } | null;
  /** Effects in the plane that straight sections do not show; null where these are enough. */
  plane: PlaneResult | null;
  findings: Finding[];
  judgement: Judgement;
  remedies: Remedy[];
  /** Outcome of the search for remedies, in a sentence ("no single change …"); null when none was needed. */
  remedySearch: string | null;
  /** How sure the answer is: the spread study; absent where it was not requested. */
  spread?: SpreadResult;
}
