import type { JudgementWord, VerdictWord } from "./words.ts";

/** The same build-up calculated many times, with every input varied within its spread. */
export interface SpreadResult {
  /** Count of the samples calculated; fewer than `asked` when the study was interrupted. */
  samples: number;
  /** Count of the samples asked for. */
  asked: number;
  /** A whole number, counted from 0: the same seed gives the same figures. */
  seed: number;
  sampling: "Latin hypercube";
  inputs: SpreadInputResult[];
  /** Every word that occurred, most frequent first. */
  verdicts: SpreadProbability<VerdictWord>[];
  judgements: SpreadProbability<JudgementWord>[];
  /** [W/(m²·K)] */
  transmittance: SpreadQuantiles;
  /** Maximum accumulation and residual moisture [kg/m²]. */
  peak: SpreadQuantiles;
  carriedOver: SpreadQuantiles;
  /** The most influential input for each of the three; null where the result is the same in every sample. */
  decidesJudgement: string | null;
  decidesWater: string | null;
  decidesTransmittance: string | null;
  /**
   * Share of samples with a judgement worse than for the stated values [–], and the worst judgement among them; null
   * where that share is at most a quarter, or where the stated judgement is unknown.
   */
  worse: { word: JudgementWord; probability: number } | null;
  /** One plain sentence or two. */
  message: string;
}

/** One input of the spread study, and its influence. */
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
  /** Origin of the width, in words. */
  origin: string;
  /**
   * Rank correlation [–] with the judgement (worse words higher), with water (nearness to it, then its amount), and
   * with the transmittance.
   */
  influenceOnJudgement: number;
  /** [–] */
  influenceOnWater: number;
  /** [–] */
  influenceOnTransmittance: number;
}

/** Kind of an input of the spread study. */
export type SpreadInputKind =
  | "conductivity"
  | "vapour resistance factor"
  | "sd"
  | "framing share"
  | "gap share"
  | "indoor humidity";

/** Frequency of a word. */
export interface SpreadProbability<Word> {
  word: Word;
  /** Number of samples with the word. */
  count: number;
  /** count over samples, with the standard error of a share among independent samples [–]. */
  probability: number;
  /** [–] */
  standardError: number;
}

/** Percentiles 1, 5, 50, 95 and 99, in the unit of the figure. */
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
