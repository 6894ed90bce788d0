import type { SpreadInputResult, SpreadProbability, SpreadResult } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { shorten } from "../escape.ts";
import { fixed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { inOfHundred } from "../spread-study/spread-in-words.ts";
import { PLOT_CONFIG, PLOT_SCHEMA, type Plot } from "./plot.ts";

/**
 * The spread of the answer: how often each verdict and judgement came out, and below it what decides.
 *
 * @param spread - the study of one build-up
 * @returns one plot of two parts
 */
export function spreadPlot(spread: SpreadResult): Plot {
  const words = [
    ...segments("Verdict", spread.verdicts, VERDICT_ORDER),
    ...segments("Judgement", spread.judgements, JUDGEMENT_ORDER),
  ];
  const decisive = mostDecisive(spread);
  const spec = {
    $schema: PLOT_SCHEMA,
    padding: 4,
    config: PLOT_CONFIG,
    spacing: 22,
    vconcat: [answers(words), influences(decisive)],
  } as unknown as TopLevelSpec;
  return {
    title: "How often each answer comes out, and what decides it",
    description: `Two bars of a hundred: ${described(spread.verdicts)}; judgement ${described(spread.judgements)}. Below, bars to the right where more of an input is worse, to the left where it is better${
      decisive.length > 0 ? `; the longest is ${decisive[0]!.name}` : ""
    }.`,
    spec,
  };
}

const VERDICT_ORDER: readonly string[] = ["dry", "dries out", "stays wet"];
const JUDGEMENT_ORDER: readonly string[] = ["sound", "sound with conditions", "change it", "beyond this method"];
const FILLS = [PALETTE.insulation.light, PALETTE.timber.light, PALETTE.waterSecond.light, PALETTE.rule.light];

const WIDTH = 250;
const BAR_HEIGHT = 34;
const ROW_HEIGHT = 24;
const MOST_INPUTS = 8;
const LONGEST_NAME = 38;
/** A word is written into its segment where the segment is at least this many of a hundred for each letter. */
const HUNDREDTHS_A_LETTER = 2.9;

interface Segment {
  row: string;
  rank: number;
  from: number;
  until: number;
  words: string;
}

function segments(row: string, entries: readonly SpreadProbability<string>[], order: readonly string[]): Segment[] {
  let from = 0;
  return order.flatMap((word, rank) => {
    const entry = entries.find((other) => other.word === word);
    if (entry === undefined) return [];
    const until = from + 100 * entry.probability;
    const fits = until - from >= HUNDREDTHS_A_LETTER * word.length;
    const segment = { row, rank, from, until, words: fits ? word : "" };
    from = until;
    return [segment];
  });
}

function answers(values: readonly Segment[]): object {
  const y = { field: "row", type: "nominal", sort: ["Verdict", "Judgement"], axis: { title: null, labelLimit: 0 } };
  return {
    width: WIDTH,
    height: 2 * BAR_HEIGHT,
    data: { values: values.map((segment) => ({ ...segment, middle: (segment.from + segment.until) / 2 })) },
    layer: [
      {
        mark: { type: "bar", stroke: PALETTE.ink.light, strokeWidth: 0.8 },
        encoding: {
          y,
          x: {
            field: "from",
            type: "quantitative",
            scale: { domain: [0, 100], nice: false },
            axis: { title: "of a hundred samples", tickCount: 5 },
          },
          x2: { field: "until" },
          fill: {
            field: "rank",
            type: "ordinal",
            scale: { domain: FILLS.map((_, rank) => rank), range: FILLS },
            legend: null,
          },
        },
      },
      {
        mark: { type: "text", fontSize: 12 },
        encoding: { y, x: { field: "middle", type: "quantitative" }, text: { field: "words" } },
      },
    ],
  };
}

function influences(inputs: readonly Decisive[]): object {
  const values = inputs.map(({ name, influence }) => ({
    name: shorten(name, LONGEST_NAME),
    influence,
    words: fixed(influence, 2),
  }));
  const y = {
    field: "name",
    type: "nominal",
    sort: values.map(({ name }) => name),
    axis: { title: null, labelLimit: 0 },
  };
  return {
    width: WIDTH,
    height: ROW_HEIGHT * Math.max(1, values.length),
    data: { values },
    layer: [
      {
        mark: { type: "bar", height: { band: 0.62 }, fill: PALETTE.water.light },
        encoding: {
          y,
          x: {
            field: "influence",
            type: "quantitative",
            scale: { domain: [-1.2, 1.2], nice: false },
            axis: { title: "← more is better    rank correlation    more is worse →", values: [-1, -0.5, 0, 0.5, 1] },
          },
        },
      },
      {
        transform: [{ filter: "datum.influence >= 0" }],
        mark: { type: "text", align: "left", dx: 3, fontSize: 11 },
        encoding: { y, x: { field: "influence", type: "quantitative" }, text: { field: "words" } },
      },
      {
        transform: [{ filter: "datum.influence < 0" }],
        mark: { type: "text", align: "right", dx: -3, fontSize: 11 },
        encoding: { y, x: { field: "influence", type: "quantitative" }, text: { field: "words" } },
      },
    ],
  };
}

/** An input with what it does to the answer. */
export interface Decisive {
  name: string;
  influence: number;
}

/**
 * The inputs that decide most: the judgement where it differs among the samples, else how near it comes to water.
 *
 * @param spread - the study of one build-up
 * @returns at most eight, the strongest first
 */
export function mostDecisive({ inputs, decidesJudgement }: SpreadResult): Decisive[] {
  const influenceOf = (input: SpreadInputResult): number =>
    decidesJudgement === null ? input.influenceOnWater : input.influenceOnJudgement;
  return inputs
    .map((input) => ({ name: input.name, influence: influenceOf(input) }))
    .sort((one, other) => Math.abs(other.influence) - Math.abs(one.influence))
    .slice(0, MOST_INPUTS);
}

function described(entries: readonly SpreadProbability<string>[]): string {
  return entries.map((entry) => `${entry.word} ${inOfHundred(entry)}`).join(", ");
}
