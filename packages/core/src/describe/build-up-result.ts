import { BEYOND_HEAT } from "../findings/beyond-method.ts";
import type { RuledJudgement } from "../findings/judgement.ts";
import type { Evidence, RuledFinding } from "../findings/types.ts";
import type { BuildUpResult } from "../result/types.ts";
import { checksInWords } from "./checks-in-words.ts";
import { heatResult } from "./heat-result.ts";
import { findingsInWords, judgementInWords } from "./judgement-in-words.ts";
import { framingResults, layerResults } from "./layer-result.ts";
import { moistureResult } from "./moisture-result.ts";
import { monthsOfAir } from "./months-of-air.ts";
import { planeResult } from "./plane-result.ts";
import { sensitivityResult } from "./sensitivity-result.ts";
import { vapourLayerMessage } from "./vapour-layer-message.ts";

/**
 * The result of a build-up, from its evidence.
 *
 * @param evidence - figures, surface, vapour layer, sensitivity runs, checks
 * @param ruled - all findings with their effects
 * @param judgement - the judgement
 * @returns plain data; heat or moisture null where the build-up is beyond the method
 */
export function buildUpResult(
  evidence: Evidence,
  ruled: readonly RuledFinding[],
  judgement: RuledJudgement,
): BuildUpResult {
  const { buildUp, calculation, site, surface, vapourLayer, tightLayer, sensitivity, checks, plane } = evidence;
  const worded = findingsInWords(ruled, buildUp);
  const findings = [...worded.values()];
  const beyond = findings[ruled.findIndex(({ effect }) => effect === "beyond")] ?? null;
  const heatIsBeyond = beyond !== null && BEYOND_HEAT.has(beyond.code);
  return {
    name: buildUp.name,
    slug: buildUp.slug,
    element: buildUp.element,
    room: buildUp.room,
    faces: buildUp.faces,
    target: buildUp.target,
    area: buildUp.area,
    layers: layerResults(calculation),
    framings: framingResults(calculation),
    farSide: {
      name: calculation.farSide.name,
      rule: calculation.farSide.rule,
      months: monthsOfAir(calculation.farSide.months),
    },
    heat: heatIsBeyond ? null : heatResult(calculation, surface, site.outdoor),
    surface: heatIsBeyond ? null : surface,
    moisture: beyond !== null ? null : moistureResult(calculation),
    sensitivity: beyond !== null ? [] : sensitivity.map((run) => sensitivityResult(run, calculation)),
    vapourLayer: { ...vapourLayer, message: vapourLayerMessage(vapourLayer, tightLayer?.name ?? null, buildUp) },
    ...checksInWords(checks, buildUp),
    beyond: beyond === null ? null : { code: beyond.code, reason: beyond.message, askFor: beyond.advice ?? "" },
    plane: heatIsBeyond ? null : planeResult(plane, calculation.inside, calculation.farSide.months),
    findings,
    judgement: judgementInWords(judgement, worded),
    remedies: [],
    remedySearch: null,
  };
}
