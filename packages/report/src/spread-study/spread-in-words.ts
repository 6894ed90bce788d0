import { inSpeech, type SpreadProbability, type SpreadResult } from "@warmside/core";
import { fixed, gramsPerArea } from "../numbers.ts";
import { sentence } from "../words.ts";

/**
 * The spread in plain sentences: how often which verdict and judgement, and what decides it.
 *
 * @param result - the study without its sentence
 * @returns two or three sentences
 */
export function spreadInWords(result: Omit<SpreadResult, "message">): string {
  const { verdicts, judgements, samples } = result;
  const worse = worseSentence(result);
  return `${worse}${worse === "" ? "" : " "}${verdictSentence(verdicts, samples)} ${judgementSentence(judgements)} ${decidingSentence(result)}${waterSentence(result)}`;
}

/**
 * What has to stand beside the judgement: that it is often worse within the spread of what went in.
 *
 * @param result - the study
 * @returns a sentence; empty where the judgement is worse in no more than a quarter of the samples
 */
export function worseSentence({ worse }: Pick<SpreadResult, "worse">): string {
  if (worse === null) return "";
  return `Within the spread of its inputs the judgement is worse ${inOfHundred(worse)}, mostly “${worse.word}”.`;
}

const VERDICT_CLAUSES = {
  dry: "stays dry",
  "dries out": "dries out within the year",
  "stays wet": "stays wet",
} as const;

function verdictSentence(verdicts: SpreadResult["verdicts"], samples: number): string {
  if (verdicts.length === 1) return `In all ${samples} samples it ${VERDICT_CLAUSES[verdicts[0]!.word]}.`;
  return `${sentence(
    inSpeech(
      ofHundred(verdicts).map((often, place) => `${often} it ${VERDICT_CLAUSES[verdicts[place]!.word]}`),
      "and",
    ),
  )}.`;
}

function judgementSentence(judgements: SpreadResult["judgements"]): string {
  if (judgements.length === 1) return `The judgement is always “${judgements[0]!.word}”.`;
  return `The judgement is ${inSpeech(
    ofHundred(judgements).map((often, place) => `“${judgements[place]!.word}” ${often}`),
    "and",
  )}.`;
}

/** What decides: the judgement where it differs, else how near it comes to water. */
function decidingSentence(result: Omit<SpreadResult, "message">): string {
  const { decidesJudgement, decidesWater, inputs } = result;
  const name = decidesJudgement ?? decidesWater;
  const input = inputs.find((entry) => entry.name === name);
  if (name === null || input === undefined) return "Nothing that was varied changes it.";
  const influence = decidesJudgement === null ? input.influenceOnWater : input.influenceOnJudgement;
  if (Math.abs(influence) < WEAKEST_INFLUENCE) return "No single input decides it.";
  const direction = influence > 0 ? "the more, the worse" : "the more, the better";
  return `What decides it most: ${name}; ${direction} (rank correlation ${fixed(influence, 2)}).`;
}

/** Under this rank correlation an input decides nothing by itself [–] (this project's rule). */
const WEAKEST_INFLUENCE = 0.1;

function waterSentence({ peak }: Omit<SpreadResult, "message">): string {
  if (!(peak.ninetyFive > 0)) return "";
  return ` In 95 of 100 it holds at most ${gramsPerArea(peak.ninetyFive)}.`;
}

/**
 * How often, in words, out of a hundred.
 *
 * @param entry - its probability [–], over 0
 * @returns such as "in 97 of 100"; "in more than 99 of 100" and "in fewer than 1 of 100" at the ends
 * @example inOfHundred({ probability: 0.974 }) // "in 97 of 100"
 */
export function inOfHundred({ probability }: Pick<SpreadProbability<string>, "probability">): string {
  return inWords(probability, Math.round(probability * HUNDRED));
}

/**
 * How often each of several answers comes out, so that the figures add up to a hundred: what rounding down leaves over
 * goes to those it took most from.
 *
 * @param entries - their probabilities [–], each over 0, together 1
 * @returns in their order, as `inOfHundred` words it
 * @example ofHundred([{ probability: 0.805 }, { probability: 0.195 }]) // ["in 81 of 100", "in 19 of 100"]
 */
export function ofHundred(entries: readonly Pick<SpreadProbability<string>, "probability">[]): string[] {
  const exact = entries.map(({ probability }) => probability * HUNDRED);
  const whole = exact.map((value) => Math.floor(value + SMALLEST_PART));
  const left = HUNDRED - whole.reduce((sum, value) => sum + value, 0);
  const rests = exact.map((value, place) => ({ place, rest: value - whole[place]! }));
  rests.sort((one, other) => other.rest - one.rest || one.place - other.place);
  for (const { place } of rests.slice(0, Math.max(0, left))) whole[place]! += 1;
  return entries.map(({ probability }, place) => inWords(probability, whole[place]!));
}

/** Binary numbers miss a whole by less than this. */
const SMALLEST_PART = 1e-9;

function inWords(probability: number, hundredths: number): string {
  if (probability < 1 && hundredths >= HUNDRED) return "in more than 99 of 100";
  if (hundredths < 1) return "in fewer than 1 of 100";
  return `in ${hundredths} of 100`;
}

const HUNDRED = 100;
