import { fromThickness, type VariationStudy } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "../coverage.ts";
import { figure } from "../figure.ts";
import { type Html, html, pageClass } from "../html.ts";
import { fixed, grams, MILLIMETRES_PER_METRE, orDash, trimmed } from "../numbers.ts";
import { toSvg } from "../plots/to-svg.ts";
import { turnLetter, variationPlot } from "../plots/variation-plot.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn, wordColumn } from "../terms/terms.ts";
import { sentence } from "../words.ts";
import { judgementKey } from "./judgement-key.ts";

/**
 * One layer in many thicknesses.
 *
 * @param variation - the study
 * @returns plot, the places where the judgement turns, and the table
 */
export async function variationPart(variation: VariationStudy): Promise<Html> {
  const plot = variationPlot(variation);
  const drawn =
    plot === null
      ? null
      : await figure(
          plot.title,
          toSvg(plot, "variation"),
          html`${judgementKey(variation.points.map(({ judgement }) => judgement))}${variation.target === null ? null : ` Dotted: the target, ${fixed(variation.target, 2)}.`}${variation.turns.length > 0 ? " Letters: where the judgement turns." : null}`,
        );
  return html`${drawn}${turns(variation)}<div${pageClass(variationPages(variation) !== 1)}>${table(variation)}
<p class="aside">Every thickness is calculated in full${variation.points.some(({ thickness }) => thickness === 0) ? "; 0 mm is the build-up without the layer" : null}. The thickness at which the judgement turns is found by halving and rounded up to whole millimetres; a judgement that turns and turns back within ${millimetres(variation.step)} mm is not seen.</p></div>`;
}

/**
 * Pages of the study: a long table begins one of its own.
 *
 * @param variation - the study
 * @returns how many; null where the table may not fit on a page
 */
export function variationPages({ points, turns }: VariationStudy): number | null {
  if (points.length > MOST_ROWS) return null;
  return points.length + 3 * turns.length > MOST_BELOW_PLOT ? 2 : 1;
}

/** Rows that fit on a page, and rows below title and plot, three for each turn of the judgement. */
const MOST_ROWS = 45;
const MOST_BELOW_PLOT = 15;

function turns({ turns: found }: VariationStudy): Html | null {
  if (found.length === 0) return null;
  return html`<ul>${found.map(
    ({ thickness, from, to, reason }, index) =>
      html`<li><strong>${turnLetter(index)}</strong> From ${fromThickness(thickness)}: <strong>“${to}”</strong>, below it “${from}”. ${backticksAsCode(sentence(reason))}</li>`,
  )}</ul>`;
}

function table({ points, layer }: VariationStudy): Html {
  return tableMarkup({
    caption: `${sentence(layer.name)} in each thickness; the row as drawn is marked`,
    columns: [
      figuresUnder("Thickness", "mm"),
      wordsUnder("Judgement"),
      wordsUnder("Verdict"),
      figuresUnder("Most water", "g/m²"),
      figuresUnder("Carried over", "g/m²"),
      symbolColumn("U-value"),
      wordColumn("temperature factor", null),
      figuresUnder("Heat over the year", "kWh/m²"),
    ],
    rows: points.map((point) => [
      millimetres(point.thickness),
      judgementCell(point.judgement),
      point.verdict === null ? "not told" : verdictCell(point.verdict),
      point.peak === null ? "–" : grams(point.peak.amount),
      point.carriedOver === null ? "–" : grams(point.carriedOver),
      orDash(point.transmittance, 3),
      orDash(point.temperatureFactor, 2),
      orDash(point.heatPerYear, 1),
    ]),
    marked: points.flatMap(({ isDrawn }, index) => (isDrawn ? [index] : [])),
    note: COVERED_BY_TABLE,
  });
}

function millimetres(thickness: number): string {
  return trimmed(thickness * MILLIMETRES_PER_METRE, 1);
}
