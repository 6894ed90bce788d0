import type {
  GapsResult,
  LeakResult,
  TrappedWaterResult,
  TwoSeasonResult,
  VariableResistanceResult,
  WoodResult,
} from "../result/types.ts";

/** What stands beside the monthly method: results of the checks, empty or null where they do not apply. */
export interface FurtherChecks {
  wood: WoodResult[];
  trappedWater: TrappedWaterResult[];
  twoSeasonCheck: TwoSeasonResult | null;
  leak: LeakResult | null;
  gaps: GapsResult[];
  variableResistance: VariableResistanceResult | null;
}
