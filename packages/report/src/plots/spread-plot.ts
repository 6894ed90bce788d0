import type { SpreadInputResult, SpreadProbability, SpreadResult } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { shorten } from "../escape.ts";
import { fixed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { ofHundred } from "../spread-study/spread-in-words.ts";
import { MARKS } from "./judgement-marks.ts";
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
    resolve: { legend: { fill: "independent" } },
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
const JUDGEMENT_ORDER: readonly string[] = Object.keys(MARKS);
/** Verdicts from paper to water, judgements in the colours they have everywhere. */
const FILLS: Readonly<Record<string, string>> = {
  dry: PALETTE.tint.light,
  "dries out": PALETTE.waterSecond.light,
  "stays wet": PALETTE.water.light,
  ...Object.fromEntries(Object.entries(MARKS).map(([word, { colour }]) => [word, colour])),
};

const WIDTH = 250;
const BAR_HEIGHT = 34;
const ROW_HEIGHT = 32;
/** A name on two lines stands so much higher, so that its middle is at its bar [px]. */
const HALF_A_LINE = -7;
const MOST_INPUTS = 8;
/** Letters of a line of an input's name, and of a name on two lines. */
const LONGEST_LINE = 34;
const LONGEST_NAME = 66;

interface Segment {
  row: string;
  /** The answer and how often, as the key words it. */
  key: string;
  fill: string;
  from: number;
  until: number;
}

function segments(row: string, entries: readonly SpreadProbability<string>[], order: readonly string[]): Segment[] {
  let from = 0;
  const often = ofHundred(entries);
  return order.flatMap((word) => {
    const place = entries.findIndex((other) => other.word === word);
    if (place < 0) return [];
    const until = from + 100 * entries[place]!.probability;
    const segment = { row, key: `${word}: ${often[place]}`, fill: FILLS[word]!, from, until };
    from = until;
    return [segment];
  });
}

function answers(values: readonly Segment[]): object {
  const y = { field: "row", type: "nominal", sort: ["Verdict", "Judgement"], axis: { title: null, labelLimit: 0 } };
  return {
    width: WIDTH,
    height: 2 * BAR_HEIGHT,
    data: { values },
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
        field: "key",
        type: "nominal",
        scale: { domain: values.map(({ key }) => key), range: values.map(({ fill }) => fill) },
        legend: { columns: 1, symbolType: "square", symbolSize: 180, symbolStrokeWidth: 0.8 },
      },
    },
  };
}

function influences(inputs: readonly Decisive[]): object {
  const values = inputs.map(({ name, influence }) => ({
    name: onTwoLines(name),
    influence,
    words: fixed(influence, 2),
  }));
  const y = {
    field: "name",
    type: "nominal",
    sort: values.map(({ name }) => name),
    axis: {
      title: null,
      labelLimit: 0,
      labelExpr: `split(datum.label, "${LINE_BREAK}")`,
      labelLineHeight: 14,
      labelOffset: { condition: { test: `indexof(datum.label, "${LINE_BREAK}") >= 0`, value: HALF_A_LINE }, value: 0 },
    },
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
            axis: {
              title: ["rank correlation", "← the more, the better  |  the more, the worse →"],
              values: [-1, -0.5, 0, 0.5, 1],
            },
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

/** A name broken at a space where it is too long for a line. */
function onTwoLines(name: string): string {
  const text = shorten(name, LONGEST_NAME);
  const space = text.length > LONGEST_LINE ? text.lastIndexOf(" ", LONGEST_LINE) : -1;
  return space < 0 ? text : `${text.slice(0, space)}${LINE_BREAK}${text.slice(space + 1)}`;
}

/** Parts the two lines; a name that holds it itself stands on one line more. */
const LINE_BREAK = "¦";

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
  const often = ofHundred(entries);
  return entries.map((entry, place) => `${entry.word} ${often[place]}`).join(", ");
}
