import type { JudgementWord, VerdictWord } from "./words.ts";

/** The same build-up worked out many times, with every input somewhere within its spread. */
export interface SpreadResult {
  /** Count of the samples worked out; fewer than `asked` when the study was interrupted. */
  samples: number;
  /** Count of the samples asked for. */
  asked: number;
  /** A whole number, counted from 0: the same seed gives the same figures. */
  seed: number;
  sampling: "Latin hypercube";
  inputs: SpreadInputResult[];
  /** Every word that came up, most often first. */
  verdicts: SpreadProbability<VerdictWord>[];
  judgements: SpreadProbability<JudgementWord>[];
  /** [W/(m²·K)] */
  transmittance: SpreadQuantiles;
  /** Peak and carried over [kg/m²]. */
  peak: SpreadQuantiles;
  carriedOver: SpreadQuantiles;
  /** Names of the inputs that matter most, for each of the three; null where it comes out the same in every sample. */
  decidesJudgement: string | null;
  decidesWater: string | null;
  decidesTransmittance: string | null;
  /**
   * How often the judgement is worse than with the values as stated, and the worst that comes up then; null where that is
   * no more than a quarter [–] of the samples, or where the stated judgement is not known.
   */
  worse: { word: JudgementWord; probability: number } | null;
  /** One plain sentence or two. */
  message: string;
}

/** One input of the spread study, with how much it matters. */
export interface SpreadInputResult {
  name: string;
  kind: SpreadInputKind;
  /** As stated, and the ends of its spread below [`unit`]. */
  stated: number;
  /** [`unit`] */
  low: number;
  /** [`unit`] */
  high: number;
  unit: "W/(m·K)" | "–" | "m" | "share";
  /** Where the width comes from, in words. */
  origin: string;
  /**
   * Rank correlation [–] with the judgement (worse words higher), with how near it comes to water and how much there is,
   * and with the transmittance.
   */
  influenceOnJudgement: number;
  /** [–] */
  influenceOnWater: number;
  /** [–] */
  influenceOnTransmittance: number;
}

/** What an input of the spread study is. */
export type SpreadInputKind =
  | "conductivity"
  | "vapour resistance factor"
  | "sd"
  | "framing share"
  | "gap share"
  | "indoor humidity";

/** How often a word came up. */
export interface SpreadProbability<Word> {
  word: Word;
  /** How many. */
  count: number;
  /** count over samples, with the standard error of a share among independent samples [–]. */
  probability: number;
  /** [–] */
  standardError: number;
}

/** One, five, fifty, ninety-five and ninety-nine of a hundred lie below, in the unit of the figure they are of. */
export interface SpreadQuantiles {
  /** [unit of the figure] */
  one: number;
  /** [unit of the figure] */
  five: number;
  /** [unit of the figure] */
  fifty: number;
  /** [unit of the figure] */
  ninetyFive: number;
  /** [unit of the figure] */
  ninetyNine: number;
}
