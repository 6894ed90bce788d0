import type {
  GapsData,
  LeakData,
  TrappedWaterData,
  TwoSeasonData,
  VariableResistanceResult,
  WoodResult,
} from "../result/types.ts";

/** Results of the checks beside the monthly method, empty or null where they do not apply. */
export interface FurtherChecks {
  wood: WoodResult[];
  trappedWater: TrappedWaterData[];
  twoSeasonCheck: TwoSeasonData | null;
  leak: LeakData | null;
  gaps: GapsData[];
  variableResistance: VariableResistanceResult | null;
}
