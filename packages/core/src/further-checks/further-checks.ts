import type { BuildUpCalculation } from "../calculate-build-up.ts";
import type { BuildUp, Room } from "../project/types.ts";
import type { VapourLayerResult } from "../result/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import type { FurtherChecks } from "./types.ts";

/**
 * The checks that stand beside the monthly method.
 *
 * @returns results; empty or null where a check does not apply
 */
export function furtherChecks(
  _buildUp: BuildUp,
  _site: Site,
  _calculation: BuildUpCalculation,
  _vapourLayer: VapourLayerResult,
  _room: Room,
): FurtherChecks {
  return { wood: [], trappedWater: [], twoSeasonCheck: null, leak: null, gaps: [], variableResistance: null };
}
