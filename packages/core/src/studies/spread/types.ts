import type { SpreadInputResult } from "../../result/types.ts";

/** An input that is varied: its description, and the function that sets it in the working copy of its build-up. */
export interface SpreadInput {
  description: Omit<SpreadInputResult, "influenceOnJudgement" | "influenceOnWater" | "influenceOnTransmittance">;
  /** Sets it to a quantile of its spread, 0 to 1. */
  set: (quantile: number) => void;
}

/** The outcomes of samples, with one entry for each. */
export interface SpreadOutcomes {
  /** Index in `VERDICTS`, and for `judgement` in `JUDGEMENTS`. */
  verdict: Uint8Array;
  judgement: Uint8Array;
  /** U [W/(m²·K)] */
  transmittance: Float64Array;
  /** Maximum accumulation in the governing section [kg/m²]. */
  peak: Float64Array;
  /** Residual moisture after 12 months [kg/m²]. */
  carriedOver: Float64Array;
  /**
   * How near the section is to condensation, or how much there is: if dry, the highest relative humidity inside
   * [–, under 1]; if wet, 1 plus the peak [kg/m²]. Only the order of these values has a meaning.
   */
  wetness: Float64Array;
}
