import { type ComparisonOfBuildUp, type ComparisonRow, type ComparisonStudy, meetsTarget } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "../coverage.ts";
import { figure } from "../figure.ts";
import { type Html, html, pageClass } from "../html.ts";
import { fixed, grams, millimetres, orDash, signed, trimmed } from "../numbers.ts";
import { comparisonPlot } from "../plots/comparison-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn, wordColumn } from "../terms/terms.ts";
import { costTable } from "./comparison/cost-table.ts";
import { goodsTables } from "./comparison/goods-tables.ts";
import { rowName } from "./comparison/row-name.ts";
import { judgementKey } from "./judgement-key.ts";

/**
 * The variants of a build-up beside it: the effect of each, the plot and the table.
 *
 * @param comparison - one build-up of the comparison
 * @param target - its target [W/(m²·K)]; null without
 * @param id - prefix of its names
 * @returns sentences, plot and tables
 */
export async function comparisonPart(
  comparison: ComparisonOfBuildUp,
  target: number | null,
  id: string,
): Promise<Html> {
  const plot = comparisonPlot(comparison);
  const drawn =
    plot === null
      ? html`<p class="aside">No plot: all have the same U and thickness, or none has a U by this method.</p>`
      : await figure(
          `${plot.title}: lower is warmer, further left is ${plot.title.endsWith("cost") ? "cheaper" : "thinner"}`,
          toSvg(plot, `${id}-variants`),
          html`The numbers are those of the table; 0 is the build-up as drawn. ${judgementKey(comparison.rows.map(({ judgement }) => judgement))}`,
        );
  return html`${sentences(comparison)}${drawn}<div${pageClass(plot !== null)}><div class="variants">${variantsTable(comparison, target)}</div></div>`;
}

/**
 * Pages of a build-up's comparison: with a plot, its table begins a page.
 *
 * @param comparison - one build-up of the comparison
 * @returns how many; null where the variants may not fit on them
 */
export function comparisonPages(comparison: ComparisonOfBuildUp): number | null {
  const hasPlot = comparisonPlot(comparison) !== null;
  if (comparison.rows.length > (hasPlot ? MOST_ROWS : MOST_WITHOUT_PLOT)) return null;
  return hasPlot ? 2 : 1;
}

/** The build-up as drawn and variants whose sentences and plot fit on a page, and whose sentences and table do. */
const MOST_ROWS = 7;
const MOST_WITHOUT_PLOT = 6;

/**
 * Continuity, cost and quantities of a build-up's variants.
 *
 * @param study - the comparison, with currency and prices
 * @param comparison - one build-up of it
 * @returns tables, and what their figures rest on
 */
export function comparisonDetails(study: ComparisonStudy, comparison: ComparisonOfBuildUp): Html {
  return html`${continuityTable(comparison)}${costTable(study, comparison)}${study.notes.map((note) => html`<p class="aside">${note}</p>`)}${goodsTables(study, comparison)}`;
}

/**
 * The build-up as drawn and its variants, a row each.
 *
 * @param comparison - a build-up with its variants
 * @param target - its target [W/(m²·K)]; null without
 * @returns the table
 */
export function variantsTable({ rows, length }: ComparisonOfBuildUp, target: number | null): Html {
  const hasFloor = rows.some(({ floorArea }) => floorArea !== null);
  const metres = length === null ? "" : ` of ${trimmed(length, 2)} m`;
  return tableMarkup({
    caption: "The build-up as drawn and its variants, each calculated in full",
    columns: [
      wordsUnder("Variant"),
      wordsUnder("Judgement"),
      wordsUnder("Verdict"),
      figuresUnder("Ma at most", "g/m²"),
      symbolColumn("U-value"),
      ...(target === null ? [] : [wordsUnder(`Target ${fixed(target, 2)}`)]),
      figuresUnder("U between framing", "W/(m²·K)"),
      wordColumn("temperature factor", null),
      figuresUnder("Thickness", "mm"),
      ...(hasFloor ? [figuresUnder(`Floor under the wall${metres}`, "m²")] : []),
    ],
    rows: rows.map((row, number) => [
      html`${rowName(row, number)}${row.changes.map((change) => html`<span class="remark">${change}</span>`)}`,
      judgementCell(row.judgement),
      row.verdict === null ? "not told" : verdictCell(row.verdict),
      row.peak === null ? "–" : grams(row.peak.amount),
      orDash(row.transmittance, 2),
      ...(target === null ? [] : [targetCell(row, target)]),
      orDash(row.clearTransmittance, 2),
      orDash(row.temperatureFactor, 2),
      millimetres(row.thickness),
      ...(hasFloor ? [floorWords(row)] : []),
    ]),
    marked: [0],
    note: COVERED_BY_TABLE,
  });
}

function targetCell({ transmittance }: ComparisonRow, target: number): Html | string {
  if (transmittance === null) return "–";
  return meetsTarget(transmittance, target) ? "met" : html`<strong>missed</strong>`;
}

function floorWords({ floorArea, againstBase }: ComparisonRow): string {
  if (floorArea === null) return "–";
  const more = againstBase?.floorArea ?? null;
  return more === null ? fixed(floorArea, 2) : `${fixed(floorArea, 2)} (${signed(more, 2)})`;
}

function sentences({ rows }: ComparisonOfBuildUp): Html {
  const said = rows.flatMap((row, number) => (row.sentence === null ? [] : [{ row, number, sentence: row.sentence }]));
  return html`<ul>${said.map(({ row, number, sentence }) => html`<li><strong>${rowName(row, number)}.</strong> ${sentence} <span class="remark">${backticksAsCode(row.reason)}</span></li>`)}</ul>`;
}

/** The ways to make the vapour layer, and how much each depends on being continuous. */
function continuityTable({ rows }: ComparisonOfBuildUp): Html {
  const water = (run: ComparisonRow["whenOpened"]): Html | string =>
    run === null ? "–" : html`${verdictCell(run.verdict)}, ${grams(run.peak)} g/m²`;
  return tableMarkup({
    caption: "The vapour layer, and what depends on it",
    columns: [
      wordsUnder("Variant"),
      wordsUnder("Vapour layer"),
      symbolColumn("sd"),
      wordsUnder("The build-up"),
      wordsUnder("Ten times more open"),
      wordsUnder("Left out"),
    ],
    rows: rows.map((row, number) => [
      rowName(row, number),
      row.vapourLayer?.name ?? "none",
      row.vapourLayer === null ? "–" : trimmed(row.vapourLayer.sd, 2),
      row.dependence ?? "–",
      water(row.whenOpened),
      water(row.whenLeftOut),
    ]),
    note: COVERED_BY_TABLE,
  });
}
