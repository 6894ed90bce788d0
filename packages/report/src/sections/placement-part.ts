import type { PlacementCell, PlacementOfBuildUp, PlacementRow } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, grams, gramsPerArea, NO_BREAK_SPACE, trimmed } from "../numbers.ts";
import { tableMarkup } from "../table.ts";
import { sideWords } from "../words.ts";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "./coverage.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The vapour layer in each sensible position, in several climates, heated and cooled; only when the study was made. */
export function placementPart({ result, buildUp }: BuildUpPage): Part | null {
  const study = result.placement?.buildUps.find(({ slug }) => slug === buildUp.slug);
  if (!study) return null;
  const body = study.layer === null ? html`<p>${study.leftOut}</p>` : grid(study, study.layer, buildUp);
  return { key: "placement", heading: "The vapour layer in other places and climates", body };
}

function grid(
  study: PlacementOfBuildUp,
  layer: NonNullable<PlacementOfBuildUp["layer"]>,
  buildUp: BuildUpPage["buildUp"],
): Html {
  const moved = layer.added
    ? `It has no sheet of its own that could be moved: ${layer.name}, sd ${trimmed(layer.sd, 2)} m, is added.`
    : `The project’s own ${layer.name}, sd ${trimmed(layer.sd, 2)} m, is moved.`;
  const leftOut = study.rows.filter((row) => row.leftOut !== null);
  return html`<p><strong>${study.message}</strong></p>
<p>${moved} Every cell is worked out in full, with judgement, verdict, the most water, what is carried over after twelve months, and the least margin of the layer above the dew point of the air on the warm side. All other layers stay; water stated to be trapped is left out.</p>
${table(study, buildUp)}${leftOut.map((row) => html`<p class="remark">${rowWords(row)}: ${row.leftOut}</p>`)}
${rules(study)}`;
}

function table(study: PlacementOfBuildUp, buildUp: BuildUpPage["buildUp"]): Html {
  const rows = study.rows.filter((row) => row.leftOut === null);
  return tableMarkup({
    caption: "The vapour layer in each position; “as drawn” marks the project’s own",
    columns: [
      { head: "Climate and use", kind: "words" },
      { head: "Warm side", kind: "words" },
      ...study.positions.map(({ words, isDrawn }) => ({
        head: html`${words}${isDrawn ? html` <span class="unit">as drawn</span>` : null}`,
        kind: "words" as const,
      })),
    ],
    rows: rows.map((row) => [rowWords(row), warmSideWords(row, buildUp), ...row.cells.map(cell)]),
    note: COVERED_BY_TABLE,
  });
}

function cell({ judgement, verdict, peak, carriedOver, dewPointMargin }: PlacementCell): Html {
  if (verdict === null || peak === null || carriedOver === null) return judgementCell(judgement);
  const left = verdict === "stays wet" ? grams(carriedOver) : "none";
  const water = peak.amount === 0 ? null : `${gramsPerArea(peak.amount)} at most, ${left} carried over`;
  const margin = dewPointMargin === null ? null : `margin ${fixed(dewPointMargin, 1)}${NO_BREAK_SPACE}K`;
  const figures = [water, margin].filter((figure) => figure !== null);
  return html`<strong>${judgement}</strong><span class="remark">${verdictCell(verdict)}${figures.map((figure) => `; ${figure}`)}</span>`;
}

function rowWords({ climate, use }: PlacementRow): string {
  return `${climate}, ${use}`;
}

function warmSideWords({ warmSide, warmSideName }: PlacementRow, buildUp: BuildUpPage["buildUp"]): string {
  return warmSide === "inside" ? sideWords(buildUp).room : (warmSideName ?? "neither");
}

/** What "heated" and "cooled" stand for, once each. */
function rules(study: PlacementOfBuildUp): Html {
  const uses = new Map(study.rows.map((row) => [row.use, row]));
  return html`<ul>${[...uses.values()].map(
    ({ use, temperatureRule, humidityRule }) => html`<li>${use}: ${temperatureRule}; ${humidityRule}.</li>`,
  )}</ul>`;
}
