import type { SpreadInputResult } from "../../result/types.ts";

/** An input that is varied: what it is, and how it is set in the working copy of its build-up. */
export interface SpreadInput {
  description: Omit<SpreadInputResult, "influenceOnJudgement" | "influenceOnWater" | "influenceOnTransmittance">;
  /** Sets it to a quantile of its spread, 0 to 1. */
  set: (quantile: number) => void;
}

/** What came of samples, one entry each. */
export interface SpreadOutcomes {
  /** Places in `VERDICTS` and `JUDGEMENTS`. */
  verdict: Uint8Array;
  judgement: Uint8Array;
  /** U [W/(m²·K)] */
  transmittance: Float64Array;
  /** Of the governing section [kg/m²]. */
  peak: Float64Array;
  /** [kg/m²] */
  carriedOver: Float64Array;
  /**
   * How near it comes to water, and how much there is: the highest relative humidity inside while dry [–, under 1], 1 and
   * the peak [kg/m²] when wet. Only its order means anything.
   */
  wetness: Float64Array;
}
