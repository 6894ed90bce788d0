import type { Peak } from "./moisture-result.ts";
import type { JudgementWord, VerdictWord } from "./words.ts";

/** One layer of a build-up in many thicknesses. */
export interface VariationStudy {
  buildUp: { name: string; slug: string };
  /** `index` counts from 0, `number` from 1 as in the report. */
  layer: { index: number; number: number; name: string };
  /** [m] */
  from: number;
  /** [m] */
  to: number;
  /** [m] */
  step: number;
  points: VariationPoint[];
  /** Thicknesses at which the judgement changes, thinnest first. */
  turns: VariationTurn[];
  /** Least thickness that meets the target, compared at two decimals [m]; null without a target or such a thickness. */
  meetsTargetFrom: number | null;
  /** [W/(m²·K)] */
  target: number | null;
  message: string;
}

/** One thickness of the varied layer. */
export interface VariationPoint {
  /** [m]; 0 is the build-up without the layer. */
  thickness: number;
  isDrawn: boolean;
  judgement: JudgementWord;
  reason: string;
  /** [W/(m²·K)] */
  transmittance: number | null;
  /** [–] */
  temperatureFactor: number | null;
  verdict: VerdictWord | null;
  peak: Peak | null;
  /** [kg/m²] */
  carriedOver: number | null;
  /** [kWh/m² a year] */
  heatPerYear: number | null;
}

/** A thickness at which the judgement changes. */
export interface VariationTurn {
  /** Found by halving, to a tenth of a millimetre [m]: the thinnest with the new judgement. */
  thickness: number;
  from: JudgementWord;
  to: JudgementWord;
  reason: string;
}
