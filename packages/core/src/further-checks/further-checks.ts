import type { BuildUpCalculation } from "../calculate-build-up.ts";
import type { BuildUp, Room } from "../project/types.ts";
import type { VapourLayerResult } from "../result/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import { gaps } from "./gaps/gaps.ts";
import { leak } from "./leak/leak.ts";
import { trappedWater } from "./trapped-water/trapped-water.ts";
import { twoSeasonCheck } from "./two-season/two-season.ts";
import type { FurtherChecks } from "./types.ts";
import { hasVariableResistance, variableResistance } from "./variable-resistance/variable-resistance.ts";
import { woodMoisture } from "./wood/wood-moisture.ts";

/**
 * The checks beside the monthly method. Wood and gaps are always checked; the others only where the file asks for them.
 *
 * @param buildUp - the build-up as the file has it
 * @param site - outdoor air and rooms
 * @param calculation - its figures
 * @param vapourLayer - its vapour layer; one on the cold side does not count
 * @param room - its room
 * @param humidityMargin - factor on the vapour excess of humidity classes [–]
 * @returns the checks' results, empty or null where they do not apply
 */
export function furtherChecks(
  buildUp: BuildUp,
  site: Site,
  calculation: BuildUpCalculation,
  vapourLayer: Pick<VapourLayerResult, "layers" | "onWarmSide">,
  room: Room,
  humidityMargin: number,
): FurtherChecks {
  const layers = vapourLayer.onWarmSide === false ? [] : vapourLayer.layers;
  return {
    wood: woodMoisture(calculation),
    trappedWater: buildUp.trappedWater.length === 0 ? [] : trappedWater(calculation, layers),
    twoSeasonCheck: buildUp.twoSeasonCheck
      ? twoSeasonCheck(calculation, room, site.outdoor.temperature, humidityMargin)
      : null,
    leak: leak(calculation),
    gaps: gaps(calculation, site, layers),
    variableResistance: hasVariableResistance(buildUp) ? variableResistance(calculation) : null,
  };
}

/**
 * Only the checks that the judgement may use; the others are reported beside it (a test ensures they never change it).
 *
 * @param calculation - the build-up's figures
 * @param vapourLayer - its vapour layer
 * @returns the checks' results, empty or null for the others
 */
export function checksThatJudge(
  calculation: BuildUpCalculation,
  vapourLayer: Pick<VapourLayerResult, "layers" | "onWarmSide">,
): FurtherChecks {
  const layers = vapourLayer.onWarmSide === false ? [] : vapourLayer.layers;
  return {
    wood: [],
    trappedWater: calculation.buildUp.trappedWater.length === 0 ? [] : trappedWater(calculation, layers),
    twoSeasonCheck: null,
    leak: leak(calculation),
    gaps: [],
    variableResistance: null,
  };
}
