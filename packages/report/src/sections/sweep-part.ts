import { fromThickness, type SweepStudy } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { grams, MILLIMETRES_PER_METRE, orDash, trimmed } from "../numbers.ts";
import { sweepPlot } from "../plots/sweep-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { tableMarkup } from "../table.ts";
import { sentence } from "../words.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "./coverage.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** One layer in many thicknesses; only for the build-up of which it was asked. */
export async function sweepPart({ result, buildUp, id }: BuildUpPage): Promise<Part | null> {
  const { sweep } = result;
  if (sweep === undefined || sweep.buildUp.slug !== buildUp.slug) return null;
  const plot = sweepPlot(sweep);
  const drawn =
    plot === null
      ? null
      : await figure(toSvg(plot, `${id}-plot-sweep`), html`${plot.title}. The table has the figures.`, "wide");
  return {
    key: "sweep",
    heading: `Layer ${sweep.layer.number} in other thicknesses`,
    body: html`<p><strong>${sentence(sweep.message)}</strong></p>
<p>Every thickness was worked out in full${sweep.points.some(({ thickness }) => thickness === 0) ? "; 0 mm is the build-up without the layer" : null}. Where the judgement turns was found by halving, and is rounded up to whole millimetres; a judgement that turns and turns back within ${millimetres(sweep.step)} mm is not seen.</p>
${drawn}${turns(sweep)}${table(sweep)}`,
  };
}

function turns({ turns: found }: SweepStudy): Html | null {
  if (found.length === 0) return null;
  return html`<ul>${found.map(
    ({ thickness, from, to, reason }) =>
      html`<li>From ${fromThickness(thickness)}: <strong>“${to}”</strong> in place of “${from}”. ${sentence(reason)}</li>`,
  )}</ul>`;
}

function table({ points, layer }: SweepStudy): Html {
  return tableMarkup({
    caption: `${sentence(layer.name)} in each thickness; the row as drawn is marked`,
    columns: [
      { head: "Thickness", unit: "mm", kind: "figures" },
      { head: "Judgement", kind: "words" },
      { head: "Verdict", kind: "words" },
      { head: "Most water", unit: "g/m²", kind: "figures" },
      { head: "Carried over", unit: "g/m²", kind: "figures" },
      { head: "U", unit: "W/(m²·K)", kind: "figures" },
      { head: "Temperature factor", kind: "figures" },
      { head: "Heat over the year", unit: "kWh/m²", kind: "figures" },
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
