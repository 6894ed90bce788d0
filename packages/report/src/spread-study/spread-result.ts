import {
  JUDGEMENTS,
  type JudgementWord,
  type SampleTable,
  type SpreadInput,
  type SpreadOutcomes,
  type SpreadProbability,
  type SpreadResult,
  VERDICTS,
} from "@warmside/core";
import { influencesOn, strongest } from "./influence.ts";
import { quantilesOf } from "./quantiles.ts";
import { spreadInWords } from "./spread-in-words.ts";

/** Samples of a build-up and what came of them. */
export interface WorkedOutSamples {
  inputs: readonly Pick<SpreadInput, "description">[];
  samples: SampleTable;
  outcomes: SpreadOutcomes;
  /** How many were asked for; more than there are after an interruption. */
  asked: number;
  seed: number;
  /** The judgement with the values as stated, where it is known. */
  stated?: JudgementWord;
}

/**
 * Probabilities, quantiles and influences from the outcomes of samples.
 *
 * @param worked - samples and outcomes, at least one
 * @returns the study's result; the same samples give the same result, however they were worked out
 * @throws RangeError when there is no sample
 */
export function spreadResult(worked: WorkedOutSamples): SpreadResult {
  const { inputs, samples, outcomes, asked, seed } = worked;
  if (!(samples.count >= 1)) throw new RangeError("the spread needs at least one sample");
  const influences = influencesOn(
    [Float64Array.from(outcomes.judgement), outcomes.wetness, outcomes.transmittance],
    samples,
  );
  const [onJudgement, onWater, onTransmittance] = influences as [number[], number[], number[]];
  const nameOf = (place: number | null): string | null => (place === null ? null : inputs[place]!.description.name);
  const result = {
    samples: samples.count,
    asked,
    seed,
    sampling: "Latin hypercube" as const,
    inputs: inputs.map(({ description }, place) => ({
      ...description,
      influenceOnJudgement: onJudgement[place]!,
      influenceOnWater: onWater[place]!,
      influenceOnTransmittance: onTransmittance[place]!,
    })),
    verdicts: probabilities(outcomes.verdict, VERDICTS),
    judgements: probabilities(outcomes.judgement, JUDGEMENTS),
    worse: worseThan(worked.stated ?? null, outcomes.judgement),
    transmittance: quantilesOf(outcomes.transmittance),
    peak: quantilesOf(outcomes.peak),
    carriedOver: quantilesOf(outcomes.carriedOver),
    decidesJudgement: nameOf(strongest(onJudgement)),
    decidesWater: nameOf(strongest(onWater)),
    decidesTransmittance: nameOf(strongest(onTransmittance)),
  };
  return { ...result, message: spreadInWords(result) };
}

/** A share of worse judgements beyond this is told beside the judgement [–] (this project's rule). */
const TOLD_FROM = 0.25;

/** How often the judgement is worse than stated, with the most frequent of the worse words. */
function worseThan(stated: JudgementWord | null, judgements: Uint8Array): SpreadResult["worse"] {
  if (stated === null) return null;
  const place = JUDGEMENTS.indexOf(stated);
  const worse = probabilities(judgements, JUDGEMENTS).filter(({ word }) => JUDGEMENTS.indexOf(word) > place);
  const count = worse.reduce((sum, entry) => sum + entry.count, 0);
  const { probability } = shareOf(count, judgements.length);
  return probability > TOLD_FROM ? { word: worse[0]!.word, probability } : null;
}

/** How often each word came up, most often first; words that never did are left out. */
function probabilities<Word>(places: Uint8Array, words: readonly Word[]): SpreadProbability<Word>[] {
  const counts = words.map(() => 0);
  for (const place of places) counts[place] = counts[place]! + 1;
  return words
    .map((word, place) => ({ word, count: counts[place]!, ...shareOf(counts[place]!, places.length) }))
    .filter(({ count }) => count > 0)
    .sort((one, other) => other.count - one.count);
}

/**
 * A share of samples with its standard error.
 *
 * @param count - 0 to `samples`
 * @param samples - at least 1
 * @returns p and √(p(1 − p)/n) [–]
 * Source: standard error of a share among independent samples; a Latin hypercube's is no larger in the long run.
 * @example shareOf(25, 100).standardError // 0.0433
 */
export function shareOf(count: number, samples: number): { probability: number; standardError: number } {
  const probability = count / samples;
  return { probability, standardError: Math.sqrt((probability * (1 - probability)) / samples) };
}
