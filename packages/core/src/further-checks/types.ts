import type {
  GapsData,
  LeakData,
  TrappedWaterData,
  TwoSeasonData,
  VariableResistanceResult,
  WoodResult,
} from "../result/types.ts";

/** What stands beside the monthly method: results of the checks, empty or null where they do not apply. */
export interface FurtherChecks {
  wood: WoodResult[];
  trappedWater: TrappedWaterData[];
  twoSeasonCheck: TwoSeasonData | null;
  leak: LeakData | null;
  gaps: GapsData[];
  variableResistance: VariableResistanceResult | null;
}
