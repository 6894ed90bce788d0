import type { SpreadInputResult, SpreadProbability, SpreadResult } from "@warmside/core";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "../coverage.ts";
import { figure } from "../figure.ts";
import { type Html, html } from "../html.ts";
import { fixed, grams, percent, trimmed } from "../numbers.ts";
import { letterOf, mostDecisive, spreadPlot } from "../plots/spread-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";

/**
 * How sure the answer of a build-up is.
 *
 * @param spread - the study of the build-up
 * @param id - prefix of its names
 * @returns plot and tables
 */
export async function spreadPart(spread: SpreadResult, id: string): Promise<Html> {
  const decisive = mostDecisive(spread);
  const plot = await figure(
    spread.decidesJudgement === null ? "Margin to condensation" : "How often each answer comes out",
    toSvg(spreadPlot(spread), `${id}-spread`),
    html`The letters are those of the table. Inputs: ${decisive.map(({ name }, index) => `${index + 1} ${name}`).join("; ")}.`,
  );
  return html`${plot}${wordsTable(spread)}${quantilesTable(spread)}${inputsTable(spread)}<p class="aside">${howItWasMade(spread)}</p>`;
}

/**
 * Pages of a build-up's spread.
 *
 * @param spread - the study of the build-up
 * @returns one; null where the plot and the tables may not fit on it
 */
export function spreadPages({ inputs }: SpreadResult): number | null {
  return inputs.length <= MOST_INPUTS ? 1 : null;
}

/** Inputs whose table fits on a page below the plot. */
const MOST_INPUTS = 18;

function howItWasMade({ samples, asked, seed }: SpreadResult): Html {
  const cut = samples < asked ? ` of ${asked}, then interrupted` : "";
  return html`The build-up was calculated ${samples} times${cut}, each time to a judgement, with every value of the last table somewhere within its spread: a Latin hypercube, seed ${seed}, the stated value the likeliest and the ends the least likely. The widths are this project’s own judgement where the file gives none. Thicknesses, climate, set points and junctions stay as stated. A material in several layers varies as one.`;
}

function wordsTable({ verdicts, judgements, samples }: SpreadResult): Html {
  const row = (kind: string, answer: Html, entry: SpreadProbability<string>) => [
    kind,
    answer,
    letterOf(entry.word),
    percent(entry.probability, 1),
    `± ${percent(entry.standardError, 2)}`,
    fixed(entry.count, 0),
  ];
  return tableMarkup({
    caption: `How often each answer came out of ${samples} samples`,
    columns: [
      wordsUnder("Of the"),
      wordsUnder("Answer"),
      wordsUnder("In the plot"),
      figuresUnder("Probability"),
      figuresUnder("Standard error"),
      figuresUnder("Samples"),
    ],
    rows: [
      ...verdicts.map((entry) => row("verdict", verdictCell(entry.word), entry)),
      ...judgements.map((entry) => row("judgement", judgementCell(entry.word), entry)),
    ],
    note: COVERED_BY_TABLE,
  });
}

function quantilesTable({ transmittance, peak, carriedOver }: SpreadResult): Html {
  const row = (name: string, of: SpreadResult["peak"], show: (value: number) => string) => [
    name,
    show(of.one),
    show(of.five),
    show(of.fifty),
    show(of.ninetyFive),
    show(of.ninetyNine),
  ];
  return tableMarkup({
    caption: "Spread of the figures: the value not exceeded in so many of a hundred samples",
    columns: [wordsUnder("Figure"), ...["in 1", "in 5", "in 50", "in 95", "in 99"].map((head) => figuresUnder(head))],
    rows: [
      row("U [W/(m²·K)]", transmittance, (value) => fixed(value, 3)),
      row("Ma at most [g/m²]", peak, grams),
      row("left after 12 months [g/m²]", carriedOver, grams),
    ],
  });
}

/** From this size on a value has so many figures: its spread is not known better. */
const ROUNDED_FROM = 10_000;
const ROUNDED_TO = 3;

function inputsTable({ inputs }: SpreadResult): Html {
  const shown = ({ unit }: SpreadInputResult, value: number): string =>
    value >= ROUNDED_FROM
      ? fixed(Number(value.toPrecision(ROUNDED_TO)), 0)
      : unit === "share"
        ? percent(value, value < 0.01 ? 2 : 1)
        : trimmed(value, value >= 10 ? 1 : value < 0.1 ? 4 : 3);
  const unitOf = ({ unit }: SpreadInputResult): string => (unit === "share" || unit === "–" ? "" : ` [${unit}]`);
  return tableMarkup({
    caption: "What was varied, and its rank correlation with judgement, water and U",
    columns: [
      wordsUnder("Input"),
      figuresUnder("Stated"),
      figuresUnder("From"),
      figuresUnder("To"),
      wordsUnder("Width"),
      figuresUnder("Judgement"),
      figuresUnder("Water"),
      symbolColumn("U-value", null),
    ],
    rows: inputs.map((input) => [
      `${input.name}${unitOf(input)}`,
      shown(input, input.stated),
      shown(input, input.low),
      shown(input, input.high),
      input.origin,
      fixed(input.influenceOnJudgement, 2),
      fixed(input.influenceOnWater, 2),
      fixed(input.influenceOnTransmittance, 2),
    ]),
  });
}
