import { type ComparisonOfBuildUp, type ComparisonRow, type ComparisonStudy, meetsTarget } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, grams, millimetres, orDash, signed, trimmed } from "../numbers.ts";
import { comparisonPlot } from "../plots/comparison-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { tableMarkup } from "../table.ts";
import { costTable } from "./comparison/cost-table.ts";
import { goodsTables } from "./comparison/goods-tables.ts";
import { rowName } from "./comparison/row-name.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "./coverage.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The variants beside the build-up as drawn: a short table, or everything where the comparison was asked for. */
export async function comparisonPart({ result, buildUp, id, comparison: detail }: BuildUpPage): Promise<Part | null> {
  const study = result.comparison;
  const comparison = study?.buildUps.find(({ slug }) => slug === buildUp.slug);
  if (study === undefined || comparison === undefined) return null;
  const body =
    detail === "whole"
      ? await whole(study, comparison, buildUp.target, id)
      : html`${answers(comparison, buildUp.target)}${sentences(comparison)}`;
  return { key: "variants", heading: "Variants", body };
}

async function whole(
  study: ComparisonStudy,
  comparison: ComparisonOfBuildUp,
  target: number | null,
  id: string,
): Promise<Html> {
  const plot = comparisonPlot(comparison, study.currency);
  const drawn =
    plot === null
      ? html`<p class="remark">No plot: all have the same U and thickness, or none has a U by this method.</p>`
      : await figure(
          toSvg(plot, `${id}-plot-variants`),
          html`${plot.title}: the lower, the warmer; the further left, the ${plot.title.endsWith("cost") ? "cheaper" : "thinner"}. Marks that would lie on one another stand side by side. The tables have the figures.`,
          "wide",
        );
  const notes = study.notes.map((note) => html`<p class="remark">${note}</p>`);
  return html`${answers(comparison, target)}${sentences(comparison)}${drawn}${continuityTable(comparison)}${costTable(study, comparison)}${notes}${goodsTables(study, comparison)}
<h4>What these figures rest on</h4><ul>${study.assumptions.map((sentence) => html`<li>${sentence}</li>`)}</ul>`;
}

function answers({ rows, length }: ComparisonOfBuildUp, target: number | null): Html {
  const hasFloor = rows.some(({ floorArea }) => floorArea !== null);
  const metres = length === null ? "" : ` of ${trimmed(length, 2)} m`;
  return tableMarkup({
    caption: "The build-up as drawn and its variants, each worked out in full",
    columns: [
      { head: "Variant", kind: "words" },
      { head: "Judgement", kind: "words" },
      { head: "Verdict", kind: "words" },
      { head: "Most water", unit: "g/m²", kind: "figures" },
      { head: "U", unit: "W/(m²·K)", kind: "figures" },
      ...(target === null ? [] : [{ head: `Target ${fixed(target, 2)}`, kind: "words" as const }]),
      { head: "U between framing", unit: "W/(m²·K)", kind: "figures" },
      { head: "Temperature factor", kind: "figures" },
      { head: "Thickness", unit: "mm", kind: "figures" },
      ...(hasFloor ? [{ head: `Floor under the wall${metres}`, unit: "m²", kind: "figures" as const }] : []),
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
  return html`<ul>${said.map(({ row, number, sentence }) => html`<li><strong>${rowName(row, number)}.</strong> ${sentence} <span class="remark">${row.reason}</span></li>`)}</ul>`;
}

/** The ways to make the vapour layer, and how much each rests on being continuous. */
function continuityTable({ rows }: ComparisonOfBuildUp): Html {
  const water = (run: ComparisonRow["whenOpened"]): Html | string =>
    run === null ? "–" : html`${verdictCell(run.verdict)}, ${grams(run.peak)} g/m²`;
  return tableMarkup({
    caption: "The vapour layer, and what rests on its being continuous",
    columns: [
      { head: "Variant", kind: "words" },
      { head: "Vapour layer", kind: "words" },
      { head: "sd", unit: "m", kind: "figures" },
      { head: "The build-up", kind: "words" },
      { head: "Ten times more open", kind: "words" },
      { head: "Left out", kind: "words" },
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
