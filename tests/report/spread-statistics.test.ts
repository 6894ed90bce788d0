import { sampleRankCorrelation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { latinHypercube } from "../../packages/core/src/studies/spread/latin-hypercube.ts";
import { emptyOutcomes } from "../../packages/core/src/studies/spread/spread-question.ts";
import { influencesOn, ranksOf, strongest } from "../../packages/report/src/spread-study/influence.ts";
import { quantilesOf } from "../../packages/report/src/spread-study/quantiles.ts";
import { inOfHundred, ofHundred, spreadInWords } from "../../packages/report/src/spread-study/spread-in-words.ts";
import { shareOf, spreadResult, type WorkedOutSamples } from "../../packages/report/src/spread-study/spread-result.ts";

const samples = latinHypercube(400, 3, 21);
const column = (dimension: number): number[] =>
  Array.from({ length: samples.count }, (_, sample) => samples.values[3 * sample + dimension]!);

/** A made-up study of three inputs: wet where the first is over 0.9, judged by the second. */
function study(): WorkedOutSamples {
  const outcomes = emptyOutcomes(samples.count);
  column(0).forEach((value, sample) => {
    outcomes.verdict[sample] = value > 0.9 ? 2 : 0;
    outcomes.peak[sample] = value > 0.9 ? value : 0;
    outcomes.wetness[sample] = value;
    outcomes.judgement[sample] = column(1)[sample]! < 0.25 ? 1 : 0;
    outcomes.transmittance[sample] = 0.3 - 0.1 * column(2)[sample]!;
  });
  const inputs = ["first", "second", "third"].map((name) => ({
    description: {
      name,
      kind: "conductivity",
      stated: 1,
      low: 0.9,
      high: 1.1,
      unit: "W/(m·K)",
      origin: "made up",
    } as const,
  }));
  return { inputs, samples, outcomes, asked: samples.count, seed: 21 };
}

describe("rank correlation", () => {
  it("nearly what the package simple-statistics works out from both rankings (an input's strip stands for its rank)", () => {
    const outcome = Float64Array.from(column(0), (value, sample) => Math.round(4 * (value + column(1)[sample]! ** 3)));
    const [own] = influencesOn([outcome], samples) as [number[]];
    for (let dimension = 0; dimension < 3; dimension += 1) {
      expect(Math.abs(own[dimension]! - sampleRankCorrelation(column(dimension), [...outcome]))).toBeLessThan(0.002);
    }
    expect(own[0]).toBeGreaterThan(0.5);
  });

  it("1 with any rising function of an input, −1 with any falling one", () => {
    const rising = Float64Array.from(column(1), (value) => Math.exp(9 * value));
    const falling = rising.map((value) => 1 / value);
    const [up, down] = influencesOn([rising, falling], samples) as [number[], number[]];
    expect(up[1]).toBeGreaterThan(0.9999);
    expect(down[1]).toBeLessThan(-0.9999);
  });

  it("0 with an outcome that is always the same, and of a single sample", () => {
    expect(influencesOn([new Float64Array(samples.count).fill(3)], samples)).toEqual([[0, 0, 0]]);
    expect(influencesOn([Float64Array.of(1)], { count: 1, dimensions: 1, values: Float64Array.of(0.5) })).toEqual([
      [0],
    ]);
  });

  it("equal values share the mean of their ranks", () => {
    expect(ranksOf(Float64Array.of(3, 1, 3, 2, 3))).toEqual([3, 0, 3, 1, 3]);
  });

  it("the strongest of either sign; none where nothing moves", () => {
    expect(strongest([0.1, -0.8, 0.5])).toBe(1);
    expect(strongest([0, 0])).toBeNull();
  });
});

describe("quantiles and probabilities", () => {
  it("of the numbers 0 to 100: the number itself", () => {
    const numbers = Float64Array.from({ length: 101 }, (_, index) => (index * 37) % 101);
    expect(quantilesOf(numbers)).toEqual({ one: 1, five: 5, fifty: 50, ninetyFive: 95, ninetyNine: 99 });
  });

  it("standard error of a share: worked by hand, and half as large with four times the samples", () => {
    expect(shareOf(20, 100).standardError).toBeCloseTo(0.04, 12);
    expect(shareOf(80, 400).standardError).toBeCloseTo(0.02, 12);
    expect(shareOf(7, 7)).toEqual({ probability: 1, standardError: 0 });
  });
});

describe("the study's result", () => {
  it("counts every word, and tells which input decides what", () => {
    const result = spreadResult(study());
    expect(result.verdicts.map(({ word, count }) => [word, count])).toEqual([
      ["dry", 360],
      ["stays wet", 40],
    ]);
    expect(result.judgements.map(({ word, count }) => [word, count])).toEqual([
      ["sound", 300],
      ["sound with conditions", 100],
    ]);
    expect([result.decidesWater, result.decidesJudgement, result.decidesTransmittance]).toEqual([
      "first",
      "second",
      "third",
    ]);
    expect(result.inputs[1]!.influenceOnJudgement).toBeLessThan(-0.7);
    expect(result.peak.fifty).toBe(0);
    expect(result.transmittance.fifty).toBeCloseTo(0.25, 3);
  });

  it("in plain sentences", () => {
    expect(spreadResult(study()).message).toMatch(
      /^In 90 of 100 it stays dry and in 10 of 100 it stays wet\. The judgement is “sound” in 75 of 100 and “sound with conditions” in 25 of 100\. What decides it most: second; the more, the better \(rank correlation −0\.\d\d\)\. In 95 of 100 it holds at most 949\u00a0g\/m²\.$/,
    );
  });

  it("one outcome in every sample: nothing decides", () => {
    const still = study();
    for (const list of Object.values(still.outcomes)) list.fill(0);
    expect(spreadInWords(spreadResult(still))).toBe(
      "In all 400 samples it stays dry. The judgement is always “sound”. Nothing that was varied changes it.",
    );
  });

  it("no sample is refused", () => {
    const none = {
      ...study(),
      samples: { count: 0, dimensions: 3, values: new Float64Array(0) },
      outcomes: emptyOutcomes(0),
    };
    expect(() => spreadResult(none)).toThrow(RangeError);
  });

  it("shares out of a hundred add up to a hundred", () => {
    const shares = (...probabilities: number[]): string[] =>
      ofHundred(probabilities.map((probability) => ({ probability })));
    expect(shares(0.805, 0.195)).toEqual(["in 81 of 100", "in 19 of 100"]);
    expect(shares(0.387, 0.293, 0.215, 0.105).map((words) => Number(/in (\d+) of/.exec(words)![1]))).toEqual([
      39, 29, 22, 10,
    ]);
    expect(shares(0.996, 0.004)).toEqual(["in more than 99 of 100", "in fewer than 1 of 100"]);
    expect(shares(1)).toEqual(["in 100 of 100"]);
  });

  it("a share out of a hundred never says none or all of what is some", () => {
    expect(inOfHundred({ probability: 0.0001 })).toBe("in fewer than 1 of 100");
    expect(inOfHundred({ probability: 0.9999 })).toBe("in more than 99 of 100");
    expect(inOfHundred({ probability: 0.974 })).toBe("in 97 of 100");
  });
});
