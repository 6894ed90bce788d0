import type { BuildUpCalculation } from "../calculate-build-up.ts";
import type { FurtherChecks } from "../further-checks/types.ts";
import type { PlaneCheck } from "../plane-checks/types.ts";
import type { BuildUp, Room } from "../project/types.ts";
import type { FindingCode, FindingFigures, FindingSeverity, SurfaceResult } from "../result/types.ts";
import type { SensitivityRun } from "../sensitivity/sensitivity-runs.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import type { VapourLayerData } from "../vapour-layer/assess-vapour-layer.ts";
import type { TightLayer } from "../vapour-layer/candidates.ts";
import type { WaterJudged } from "./water-level.ts";

/**
 * Effect of a finding on the judgement, in order of precedence: guidance that rejects the build-up whatever the result;
 * beyond the method; a number over its limit; a condition; none.
 */
export type JudgementEffect = "change by guidance" | "beyond" | "change by number" | "condition" | "none";

/** Severity of a finding, and its effect on the judgement. */
export interface FindingWeight {
  severity: FindingSeverity;
  effect: JudgementEffect;
}

/** A finding of one code as a rule gives it, from which its id and words are made. */
export interface RuledFindingOf<Code extends FindingCode> extends FindingWeight {
  code: Code;
  figures: FindingFigures[Code];
}

/** A finding as a rule gives it; its code determines its figures. */
export type RuledFinding = { [Code in FindingCode]: RuledFindingOf<Code> }[FindingCode];

/** Everything known about a build-up when the rules run. */
export interface Evidence {
  buildUp: BuildUp;
  room: Room;
  /** The room on the outer side; null outdoors, over a void or on the ground. */
  farRoom: Room | null;
  site: Site;
  /** Factor on the vapour excess of humidity classes [–]. */
  humidityMargin: number;
  calculation: BuildUpCalculation;
  /** Its water with drying within the month, zone by zone, worst first. */
  water: readonly WaterJudged[];
  surface: SurfaceResult;
  vapourLayer: VapourLayerData;
  /** The tight layer described by `vapourLayer`, with its parts; null without any. */
  tightLayer: TightLayer | null;
  /** Every tight layer, tightest first. */
  tightLayers: readonly TightLayer[];
  sensitivity: readonly SensitivityRun[];
  checks: FurtherChecks;
  /** Result of the plane; null where straight sections are enough. */
  plane: PlaneCheck | null;
  /** Too much of the cross-section is wet for the plane to be calculated. */
  planeIsTooWet: boolean;
}

/** A rule: returns its findings from the evidence, or none. */
export type FindingRule = (evidence: Evidence) => RuledFinding[];
