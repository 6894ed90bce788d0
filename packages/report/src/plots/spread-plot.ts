import type { SpreadInputResult, SpreadProbability, SpreadResult } from "@warmside/core";
import { PALETTE } from "../palette.ts";
import { ofHundred } from "../spread-study/spread-in-words.ts";
import { MARKS } from "./judgement-marks.ts";
import { layout, nominal, type Plot, type PlotKind, type Row, type Y } from "./plot.ts";

/**
 * The spread of the answer: how often each verdict and judgement came out, and below it what decides. Segments carry
 * letters and bars carry numbers; the tables beside it have the names.
 *
 * @param spread - the study of one build-up
 * @returns one plot of two parts
 */
export function spreadPlot(spread: SpreadResult): Plot {
  const decisive = mostDecisive(spread);
  return {
    title: "How often each answer comes out, and what decides it",
    description: `Two bars of a hundred: ${described(spread.verdicts)}; judgement ${described(spread.judgements)}. Below, bars to the right where more of an input is worse, to the left where it is better${
      decisive.length > 0 ? `; the longest is ${decisive[0]!.name}` : ""
    }.`,
    kind: SPREAD,
    data: {
      segments: [
        ...segments("verdict", spread.verdicts, VERDICT_ORDER),
        ...segments("judgement", spread.judgements, JUDGEMENT_ORDER),
      ],
      inputs: decisive.map(({ influence }, index) => ({ number: String(index + 1), influence })),
    },
  };
}

const VERDICT_ORDER: readonly string[] = ["dry", "dries out", "stays wet"];
const JUDGEMENT_ORDER: readonly string[] = Object.keys(MARKS);

/** Letter, fill and ink of every answer: light, middle and dark in turn, so that neighbours differ in grey too. */
const ANSWERS: readonly { word: string; letter: string; fill: string; ink: string }[] = [
  { word: "dry", letter: "a", fill: PALETTE.paper.light, ink: PALETTE.ink.light },
  { word: "dries out", letter: "b", fill: PALETTE.waterSecond.light, ink: PALETTE.ink.light },
  { word: "stays wet", letter: "c", fill: PALETTE.water.light, ink: PALETTE.paper.light },
  { word: "sound", letter: "d", fill: PALETTE.lining.light, ink: PALETTE.ink.light },
  { word: "sound with conditions", letter: "e", fill: PALETTE.waterFourth.light, ink: PALETTE.ink.light },
  { word: "change it", letter: "f", fill: PALETTE.change.light, ink: PALETTE.paper.light },
  { word: "beyond this method", letter: "g", fill: PALETTE.ink.light, ink: PALETTE.paper.light },
];

/**
 * The letter that an answer has in the plot.
 *
 * @param word - a verdict or a judgement
 * @returns "a" to "g"
 */
export function letterOf(word: string): string {
  return ANSWERS.find((answer) => answer.word === word)?.letter ?? "";
}

/** Segments narrower than this carry no letter [of a hundred]. */
const NARROWEST_LETTERED = 5;
const MOST_INPUTS = 8;

function segments(row: string, entries: readonly SpreadProbability<string>[], order: readonly string[]): Row[] {
  let from = 0;
  return order.flatMap((word) => {
    const entry = entries.find((other) => other.word === word);
    if (entry === undefined) return [];
    const until = from + 100 * entry.probability;
    const segment = {
      row,
      answer: word,
      letter: until - from < NARROWEST_LETTERED ? "" : letterOf(word),
      from,
      middle: (from + until) / 2,
      until,
    };
    from = until;
    return [segment];
  });
}

/** An input with its influence on the answer. */
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
  return entries.map((entry, index) => `${entry.word} ${often[index]}`).join(", ");
}

const rows: Y = {
  field: "row",
  type: "nominal",
  sort: ["verdict", "judgement"],
  axis: { title: null, minExtent: 66, maxExtent: 66 },
};
const words = ANSWERS.map(({ word }) => word);

const SPREAD: PlotKind = {
  size: { width: 408, height: 286 },
  spec: {
    ...layout({ left: 76, right: 16, top: 8, bottom: 56 }),
    bounds: "flush",
    spacing: 64,
    vconcat: [
      {
        width: 408,
        height: 72,
        data: { name: "segments" },
        layer: [
          {
            mark: { type: "bar", stroke: PALETTE.ink.light, strokeWidth: 1 },
            encoding: {
              y: rows,
              x: {
                field: "from",
                type: "quantitative",
                scale: { domain: [0, 100], nice: false },
                axis: { title: "of a hundred samples", tickCount: 5 },
              },
              x2: { field: "until" },
              fill: nominal(
                "answer",
                words,
                ANSWERS.map(({ fill }) => fill),
              ),
            },
          },
          {
            mark: { type: "text", fontWeight: "bold" },
            encoding: {
              y: rows,
              x: { field: "middle", type: "quantitative" },
              text: { field: "letter", type: "nominal" },
              color: nominal(
                "answer",
                words,
                ANSWERS.map(({ ink }) => ink),
              ),
            },
          },
        ],
      },
      {
        width: 408,
        height: 150,
        data: { name: "inputs" },
        mark: { type: "bar", height: { band: 0.62 }, fill: PALETTE.water.light },
        encoding: {
          y: {
            field: "number",
            type: "nominal",
            axis: { title: "input", titleY: -2, titleX: -66, minExtent: 66, maxExtent: 66 },
          },
          x: {
            field: "influence",
            type: "quantitative",
            scale: { domain: [-1, 1], nice: false },
            axis: {
              title: ["rank correlation", "← the more, the better  |  the more, the worse →"],
              values: [-1, -0.5, 0, 0.5, 1],
              maxExtent: 20,
            },
          },
        },
      },
    ],
  },
};
