import { type BuildUpCalculation, figuresOfBuildUp } from "./calculate-build-up.ts";
import { buildUpResult } from "./describe/build-up-result.ts";
import { allFindings } from "./findings/all-findings.ts";
import { judge, type RuledJudgement } from "./findings/judgement.ts";
import type { Evidence, RuledFinding } from "./findings/types.ts";
import { judgeZones } from "./findings/water-level.ts";
import { checksThatJudge, furtherChecks } from "./further-checks/further-checks.ts";
import { checkBuildUp } from "./given/build-up.ts";
import { refuseFaults } from "./given/faults.ts";
import { checkSurroundings } from "./given/surroundings.ts";
import type { SurfaceQuestion } from "./heat/surface.ts";
import { surfaceOfBuildUp } from "./heat/surface-of-cases.ts";
import { withHeatOfChannels } from "./plane-checks/channel-heat.ts";
import { planeCheck } from "./plane-checks/plane-check.ts";
import type { PlaneCheck } from "./plane-checks/types.ts";
import type { BuildUp } from "./project/types.ts";
import type { BuildUpResult, SensitivityName } from "./result/types.ts";
import { ALL_RUNS, HARDER_YEARS, RUNS_THAT_JUDGE, sensitivityRuns } from "./sensitivity/sensitivity-runs.ts";
import type { Surroundings } from "./surroundings/surroundings.ts";
import { assessVapourLayer } from "./vapour-layer/assess-vapour-layer.ts";
import { worseVerdict } from "./year/verdicts.ts";

/**
 * Assesses one build-up: its figures, its vapour layer, its sensitivity, findings and judgement.
 * Read this file first: `judgeFigures` has one line per stage.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of the reported year and of the years compared with it
 * @returns the result, without remedies
 * @throws TypeError or RangeError when a value is of the wrong kind or out of range
 * Source: each stage names its clause.
 */
export function assessBuildUp(buildUp: BuildUp, surroundings: Surroundings): BuildUpResult {
  refuseFaults([...checkBuildUp(buildUp, ["buildUp"]), ...checkSurroundings(surroundings, ["surroundings"])]);
  const { evidence, findings, judgement } = judgeBuildUp(buildUp, surroundings);
  return buildUpResult(evidence, findings, judgement);
}

/** How much is worked out: everything reported, only what the judgement depends on, or only what may refuse it. */
export type JudgingScope = "all" | "what the judgement depends on" | "what may refuse it";

const RUNS: Readonly<Record<JudgingScope, readonly SensitivityName[]>> = {
  all: ALL_RUNS,
  "what the judgement depends on": RUNS_THAT_JUDGE,
  "what may refuse it": HARDER_YEARS,
};

/** The evidence on a build-up, its findings and its judgement, before words and the result's shape are added. */
export interface JudgedBuildUp {
  evidence: Evidence;
  findings: readonly RuledFinding[];
  judgement: RuledJudgement;
}

/**
 * Judges one build-up; `assessBuildUp` brings the outcome into the shape of the result.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of the reported year and of the years compared with it
 * @param scope - all for a result; less for searches, which need only the judgement, many times over
 * @returns evidence, findings and judgement. The judgement is the same in every scope, with one exception: with "what
 *   may refuse it", a build-up that is sound with conditions may be called sound
 * @throws RangeError when a value is out of range
 */
export function judgeBuildUp(buildUp: BuildUp, surroundings: Surroundings, scope: JudgingScope = "all"): JudgedBuildUp {
  return judgeFigures(reportedFigures(buildUp, surroundings), surroundings, scope);
}

/** A build-up's figures in the reported year, along its straight sections. */
export function reportedFigures(buildUp: BuildUp, { sites }: Surroundings): BuildUpCalculation {
  return figuresOfBuildUp(buildUp, sites.reported, { yearsAfter: sites.mean });
}

/** Judges a build-up whose figures in the reported year are known. */
export function judgeFigures(
  straight: BuildUpCalculation,
  surroundings: Surroundings,
  scope: JudgingScope,
): JudgedBuildUp {
  const { buildUp } = straight;
  const { sites, rooms, humidityMargin } = surroundings;
  const room = rooms.get(buildUp.room)!;
  const farRoom = rooms.get(buildUp.faces) ?? null;
  const checked = planeCheck(straight, scope === "all");
  const planeIsTooWet = checked === "too wet";
  const plane = planeIsTooWet ? null : checked;
  const calculation = withHeatOfChannels(straight, plane?.channel ?? null);
  const surface = surfaceOfBuildUp(buildUp, calculation.heat, surfaceQuestion(calculation, farRoom !== null, plane));
  const { result: vapourLayer, tightLayer, tightLayers } = assessVapourLayer(calculation);
  const isAll = scope === "all";
  const sensitivity = sensitivityRuns(calculation, sites, tightLayer, RUNS[scope]);
  const checks = isAll
    ? furtherChecks(buildUp, sites.reported, calculation, vapourLayer, room, humidityMargin)
    : checksThatJudge(calculation, vapourLayer);
  return judged({
    buildUp,
    room,
    farRoom,
    site: sites.reported,
    humidityMargin,
    calculation,
    water: judgeZones(calculation),
    surface,
    vapourLayer,
    tightLayer,
    tightLayers,
    sensitivity,
    checks,
    plane,
    planeIsTooWet,
  });
}

/**
 * Judges a build-up again in a wider scope. Runs already made are kept, and so is the check in the plane.
 *
 * @param known - the build-up as judged before
 * @param surroundings - the same as before
 * @param scope - the wider scope
 * @returns evidence, findings and judgement
 */
export function judgeFurther({ evidence }: JudgedBuildUp, { sites }: Surroundings, scope: JudgingScope): JudgedBuildUp {
  const { buildUp, room, site, humidityMargin, calculation, vapourLayer, tightLayer } = evidence;
  const sensitivity = sensitivityRuns(calculation, sites, tightLayer, RUNS[scope], evidence.sensitivity);
  const checks =
    scope === "all" ? furtherChecks(buildUp, site, calculation, vapourLayer, room, humidityMargin) : evidence.checks;
  return judged({ ...evidence, sensitivity, checks });
}

function judged(evidence: Evidence): JudgedBuildUp {
  const findings = allFindings(evidence);
  const { calculation, plane } = evidence;
  const verdict = worseVerdict(calculation.governing.withinMonth.verdict, plane?.asBuilt.year.verdict ?? "dry");
  return { evidence, findings, judgement: judge(findings, verdict) };
}

function surfaceQuestion(
  { buildUp, inside, farSide }: BuildUpCalculation,
  otherRoom: boolean,
  plane: PlaneCheck | null,
): SurfaceQuestion {
  const question = { inside, outside: farSide.months, otherRoom, junctions: buildUp.junctionFactors };
  if (plane === null || plane.channel === null) return question;
  const { temperatureFactor: lowest, wholeTemperatureFactor: whole } = plane.channel;
  return { ...question, channel: { framing: plane.framing.name, lowest, whole } };
}
