import { judgeBuildUp } from "../../assess-build-up.ts";
import type { SectionCalculation } from "../../calculate-build-up.ts";
import { checkBuildUp } from "../../given/build-up.ts";
import { refuseFaults } from "../../given/faults.ts";
import { checkSurroundings } from "../../given/surroundings.ts";
import type { BuildUp } from "../../project/types.ts";
import { requireNumber } from "../../require.ts";
import type { JudgementWord } from "../../result/types.ts";
import type { Surroundings } from "../../surroundings/surroundings.ts";
import { VERDICTS } from "../../year/verdicts.ts";
import { framingInputs, gapInputs } from "./built-inputs.ts";
import { humidityInputs } from "./humidity-inputs.ts";
import type { SampleTable } from "./latin-hypercube.ts";
import { materialInputs } from "./material-inputs.ts";
import type { SpreadInput, SpreadOutcomes } from "./types.ts";

/** The judgements; an outcome gives the index in this list. */
export const JUDGEMENTS: readonly JudgementWord[] = [
  "sound",
  "sound with conditions",
  "change it",
  "beyond this method",
];

/** A build-up whose inputs are varied. */
export interface SpreadQuestion {
  inputs: readonly SpreadInput[];
  /**
   * Calculates and judges every sample.
   *
   * @param samples - quantiles of the inputs
   * @returns the outcome of each
   */
  workOut(samples: SampleTable): SpreadOutcomes;
}

/**
 * Prepares a build-up for the spread study: makes a working copy and finds every input to vary.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms of all runs
 * @returns the inputs, and the function that works out samples
 * Source: this project's study: materials, framing share, gaps and indoor humidity; thicknesses and climate stay.
 */
export function spreadQuestion(buildUp: BuildUp, surroundings: Surroundings): SpreadQuestion {
  refuseFaults([...checkBuildUp(buildUp, ["buildUp"]), ...checkSurroundings(surroundings, ["surroundings"])]);
  const { calculation, vapourLayer } = judgeBuildUp(buildUp, surroundings).evidence;
  const copy = { buildUp: copyOfBuildUp(buildUp), surroundings: copyOfSurroundings(surroundings) };
  const counted = copy.buildUp.layers.slice(0, calculation.heat.counted.length);
  const inputs = [
    ...materialInputs(counted),
    ...framingInputs(counted),
    ...gapInputs(counted, vapourLayer.onWarmSide === false ? [] : vapourLayer.layers),
    ...humidityInputs([...new Set([buildUp.room, buildUp.faces])], Object.values(copy.surroundings.sites)),
  ];
  const workOut = (samples: SampleTable): SpreadOutcomes => {
    const outcomes = emptyOutcomes(samples.count);
    for (let sample = 0; sample < samples.count; sample += 1) {
      inputs.forEach((input, index) => {
        input.set(samples.values[sample * samples.dimensions + index]!);
      });
      noteOutcome(outcomes, sample, judgeBuildUp(copy.buildUp, copy.surroundings, "what the judgement depends on"));
    }
    return outcomes;
  };
  return { inputs, workOut };
}

/**
 * Makes empty outcomes, to be filled.
 *
 * @param count - number of samples [–], whole, ≥ 0
 * @returns outcomes with an entry for each sample
 */
export function emptyOutcomes(count: number): SpreadOutcomes {
  requireNumber(count, "count", "", 0, MOST_OUTCOMES);
  return {
    verdict: new Uint8Array(count),
    judgement: new Uint8Array(count),
    transmittance: new Float64Array(count),
    peak: new Float64Array(count),
    carriedOver: new Float64Array(count),
    wetness: new Float64Array(count),
  };
}

function noteOutcome(
  outcomes: SpreadOutcomes,
  sample: number,
  { evidence, judgement }: ReturnType<typeof judgeBuildUp>,
): void {
  const { heat, governing, sections } = evidence.calculation;
  const { verdict, peak, carriedOver } = governing.year;
  outcomes.verdict[sample] = VERDICTS.indexOf(verdict);
  outcomes.judgement[sample] = JUDGEMENTS.indexOf(judgement.word);
  outcomes.transmittance[sample] = heat.transmittance;
  outcomes.peak[sample] = peak;
  outcomes.carriedOver[sample] = carriedOver;
  outcomes.wetness[sample] = peak > 0 ? 1 + peak : Math.max(...sections.map(highestHumidity));
}

/** The highest relative humidity at an inner node over the year [–]. */
function highestHumidity({ line, climate, year }: SectionCalculation): number {
  let highest = 0;
  for (let month = 0; month < climate.saturation.length; month += 1) {
    const saturation = climate.saturation[month]!;
    const pressure = year.pressure[month]!;
    for (let node = 1; node < line.count - 1; node += 1) {
      const humidity = pressure[node]! / saturation[node]!;
      if (humidity > highest) highest = humidity;
    }
  }
  return highest;
}

/** A separate copy of a build-up, in which each layer has its own copy of its material. */
function copyOfBuildUp(buildUp: BuildUp): BuildUp {
  const copy = structuredClone(buildUp);
  for (const layer of copy.layers) if (layer.type !== "air") layer.material = { ...layer.material };
  return copy;
}

/** A copy of surroundings with its own months; the rules of the rooms are shared. */
function copyOfSurroundings(surroundings: Surroundings): Surroundings {
  return { ...surroundings, sites: structuredClone(surroundings.sites) };
}

/** Most outcomes that are kept. */
const MOST_OUTCOMES = 10_000_000;
