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
 * What a finding does to the judgement, in order of precedence: guidance that refuses the build-up however it
 * calculates; beyond the method; a number over its limit; a condition; nothing.
 */
export type JudgementEffect = "change by guidance" | "beyond" | "change by number" | "condition" | "none";

/** How much a finding matters, and what it does to the judgement. */
export interface FindingWeight {
  severity: FindingSeverity;
  effect: JudgementEffect;
}

/** A finding of one code as a rule gives it: its id and its words are made from this. */
export interface RuledFindingOf<Code extends FindingCode> extends FindingWeight {
  code: Code;
  figures: FindingFigures[Code];
}

/** A finding as a rule gives it; the code tells which figures it has. */
export type RuledFinding = { [Code in FindingCode]: RuledFindingOf<Code> }[FindingCode];

/** Everything known about a build-up when findings are made. */
export interface Evidence {
  buildUp: BuildUp;
  room: Room;
  /** The room on the far side; null outdoors, over a void or on ground. */
  farRoom: Room | null;
  site: Site;
  /** Factor on the vapour excess of humidity classes [–]. */
  humidityMargin: number;
  calculation: BuildUpCalculation;
  /** Its water with drying inside the month, zone by zone, worst first. */
  water: readonly WaterJudged[];
  surface: SurfaceResult;
  vapourLayer: VapourLayerData;
  /** The tight layer it speaks of, with its parts; null without any. */
  tightLayer: TightLayer | null;
  /** Every tight layer, tightest first. */
  tightLayers: readonly TightLayer[];
  sensitivity: readonly SensitivityRun[];
  checks: FurtherChecks;
  /** What the plane tells; null where straight sections see all there is. */
  plane: PlaneCheck | null;
  /** So much of the cross-section is wet that the plane was not worked out. */
  planeIsTooWet: boolean;
}

/** A rule: looks at the evidence and gives its findings, none where it has nothing to say. */
export type FindingRule = (evidence: Evidence) => RuledFinding[];
