import type { SpreadInputResult, SpreadResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, grams, percent, trimmed } from "../numbers.ts";
import { spreadPlot } from "../plots/spread-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { tableMarkup } from "../table.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "./coverage.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** How sure the answer is: the study of the spread; only when it was made. */
export async function spreadPart({ buildUp, id }: BuildUpPage): Promise<Part | null> {
  const { spread } = buildUp;
  if (!spread) return null;
  const plot = await figure(
    toSvg(spreadPlot(spread), `${id}-plot-spread`),
    html`How often each answer comes out of a hundred samples, and what decides: ${spread.decidesJudgement === null ? "how near it comes to water" : "the judgement"}. The tables below have the figures.`,
    "wide",
  );
  return {
    key: "spread",
    heading: "How sure the answer is",
    body: html`<p><strong>${spread.message}</strong></p>
<p>${howItWasMade(spread)}</p>
${plot}${wordsTable(spread)}${quantilesTable(spread)}${inputsTable(spread)}`,
  };
}

function howItWasMade({ samples, asked, seed }: SpreadResult): Html {
  const cut = samples < asked ? ` of ${asked}, then interrupted` : "";
  return html`The build-up was worked out ${samples} times${cut}, each time to a judgement, with every value of the last table somewhere within its spread: a Latin hypercube, seed ${seed}, the stated value the likeliest and the ends the least likely. The widths are this project’s own judgement where the file gives none. Thicknesses, climate and set points stay as stated. A material in several layers varies as one.`;
}

function wordsTable({ verdicts, judgements, samples }: SpreadResult): Html {
  const row = (kind: string, word: Html, probability: number, error: number, count: number) => [
    kind,
    word,
    percent(probability, 1),
    `± ${percent(error, 2)}`,
    fixed(count, 0),
  ];
  return tableMarkup({
    caption: `How often each answer came out of ${samples} samples`,
    columns: [
      { head: "Of the", kind: "words" },
      { head: "Answer", kind: "words" },
      { head: "Probability", kind: "figures" },
      { head: "Standard error", kind: "figures" },
      { head: "Samples", kind: "figures" },
    ],
    rows: [
      ...verdicts.map((entry) =>
        row("verdict", verdictCell(entry.word), entry.probability, entry.standardError, entry.count),
      ),
      ...judgements.map((entry) =>
        row("judgement", judgementCell(entry.word), entry.probability, entry.standardError, entry.count),
      ),
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
    caption: "How the figures spread: under which value they stay in so many of a hundred samples",
    columns: [
      { head: "Figure", kind: "words" },
      ...["in 1", "in 5", "in 50", "in 95", "in 99"].map((head) => ({ head, kind: "figures" as const })),
    ],
    rows: [
      row("U [W/(m²·K)]", transmittance, (value) => fixed(value, 3)),
      row("most water [g/m²]", peak, grams),
      row("carried over [g/m²]", carriedOver, grams),
    ],
  });
}

/** A value from here on is told with so many figures: its width is never known better. */
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
      { head: "Input", kind: "words" },
      { head: "Stated", kind: "figures" },
      { head: "From", kind: "figures" },
      { head: "To", kind: "figures" },
      { head: "Width", kind: "words" },
      { head: "Judgement", kind: "figures" },
      { head: "Water", kind: "figures" },
      { head: "U", kind: "figures" },
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
