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
 * Assesses one build-up: its figures, its vapour layer, what happens under other assumptions, findings and judgement.
 * The page to read first: one line a stage.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of the reported, the colder and the wetter year
 * @returns the result, without remedies
 * @throws RangeError when a value is out of range
 * Source: each stage names its clause.
 */
export function assessBuildUp(buildUp: BuildUp, surroundings: Surroundings): BuildUpResult {
  refuseFaults([...checkBuildUp(buildUp, ["buildUp"]), ...checkSurroundings(surroundings, ["surroundings"])]);
  const { evidence, findings, judgement } = judgeBuildUp(buildUp, surroundings);
  return buildUpResult(evidence, findings, judgement);
}

/** How much is worked out: all that a reader is told, only what the judgement rests on, or only what may refuse it. */
export type JudgingScope = "all" | "what the judgement depends on" | "what may refuse it";

const RUNS: Readonly<Record<JudgingScope, readonly SensitivityName[]>> = {
  all: ALL_RUNS,
  "what the judgement depends on": RUNS_THAT_JUDGE,
  "what may refuse it": HARDER_YEARS,
};

/** What is known of a build-up, what is found in it, and the judgement: everything but the words and the result's shape. */
export interface JudgedBuildUp {
  evidence: Evidence;
  findings: readonly RuledFinding[];
  judgement: RuledJudgement;
}

/**
 * Judges one build-up; `assessBuildUp` puts what is found here into the shape of the result.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of the reported, the colder and the wetter year
 * @param scope - all for a result; less where only the judgement is asked for, again and again
 * @returns evidence, findings and judgement. The judgement's word is the same in all scopes with one exception: by "what
 *   may refuse it" a build-up that is sound with conditions may be called sound
 * @throws RangeError when a value is out of range
 */
export function judgeBuildUp(buildUp: BuildUp, surroundings: Surroundings, scope: JudgingScope = "all"): JudgedBuildUp {
  return judgeFigures(reportedFigures(buildUp, surroundings), surroundings, scope);
}

/** A build-up's figures in the reported year, by straight sections. */
export function reportedFigures(buildUp: BuildUp, { sites }: Surroundings): BuildUpCalculation {
  return figuresOfBuildUp(buildUp, sites.reported, { yearsAfter: sites.mean });
}

/** The same where the figures in the reported year are known. */
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
 * A build-up that was judged in a narrower scope, judged in a wider one: runs that were made stay, and so does the plane.
 *
 * @param known - what was judged
 * @param surroundings - the same as before
 * @param scope - how much is to be known of it
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
