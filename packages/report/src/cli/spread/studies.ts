import {
  type BuildUp,
  emptyOutcomes,
  latinHypercube,
  type Project,
  type SampleTable,
  type SpreadInput,
  type SpreadOutcomes,
  spreadQuestion,
  surroundingsOf,
} from "@warmside/core";
import type { WorkedOutSamples } from "../../spread-study/spread-result.ts";

/** What the study is asked to do. */
export interface SpreadChoice {
  samples: number;
  seed: number;
  /** Threads; as many as the machine has where it is not said. */
  workers?: number;
}

/** The spread of one build-up under way. */
export interface SpreadStudy {
  buildUp: BuildUp;
  /** Place of the build-up in the project. */
  place: number;
  inputs: readonly SpreadInput[];
  seed: number;
  samples: SampleTable;
  outcomes: SpreadOutcomes;
  /** 1 for a sample that is done. */
  done: Uint8Array;
}

/**
 * The study of a build-up, with nothing worked out yet. Every build-up has samples of its own: they do not change when
 * another is added.
 *
 * @param project - the project
 * @param place - of the build-up in it
 * @param choice - samples and seed
 * @returns the study
 */
export function openStudy(project: Project, place: number, { samples, seed }: SpreadChoice): SpreadStudy {
  const buildUp = project.buildUps[place]!;
  const { inputs } = spreadQuestion(buildUp, surroundingsOf(project));
  return {
    buildUp,
    place,
    inputs,
    seed,
    samples: latinHypercube(samples, inputs.length, seed),
    outcomes: emptyOutcomes(samples),
    done: new Uint8Array(samples),
  };
}

/** Notes what came of some samples, the first of which stands at `from`. */
export function noteOutcomes(study: SpreadStudy, from: number, outcomes: SpreadOutcomes): void {
  study.outcomes.verdict.set(outcomes.verdict, from);
  study.outcomes.judgement.set(outcomes.judgement, from);
  study.outcomes.transmittance.set(outcomes.transmittance, from);
  study.outcomes.peak.set(outcomes.peak, from);
  study.outcomes.carriedOver.set(outcomes.carriedOver, from);
  study.outcomes.wetness.set(outcomes.wetness, from);
  study.done.fill(1, from, from + outcomes.verdict.length);
}

/** The samples of a study that are done, in their order. */
export function finished({ inputs, seed, samples, outcomes, done }: SpreadStudy): WorkedOutSamples {
  const { dimensions, values, count: asked } = samples;
  if (!done.includes(0)) return { inputs, seed, samples, outcomes, asked };
  const isDone = (_: number, sample: number): boolean => done[sample] === 1;
  const isOfDone = (_: number, place: number): boolean => done[Math.floor(place / dimensions)] === 1;
  const count = done.reduce((sum, mark) => sum + mark, 0);
  return {
    inputs,
    seed,
    asked,
    samples: { count, dimensions, values: values.filter(isOfDone) },
    outcomes: {
      verdict: outcomes.verdict.filter(isDone),
      judgement: outcomes.judgement.filter(isDone),
      transmittance: outcomes.transmittance.filter(isDone),
      peak: outcomes.peak.filter(isDone),
      carriedOver: outcomes.carriedOver.filter(isDone),
      wetness: outcomes.wetness.filter(isDone),
    },
  };
}
