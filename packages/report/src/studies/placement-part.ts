import type { BuildUpResult, PlacementCell, PlacementOfBuildUp, PlacementRow } from "@warmside/core";
import { COVERED_BY_TABLE, judgementCell, verdictCell } from "../coverage.ts";
import { type Html, html } from "../html.ts";
import { CLASSES, judgementIcon } from "../judgement-icons.ts";
import { fixed, grams, gramsPerArea, NO_BREAK_SPACE, trimmed } from "../numbers.ts";
import { tableMarkup, wordsUnder } from "../table.ts";
import { sideWords } from "../words.ts";

/**
 * The vapour layer of a build-up in each sensible position, in several climates, heated and cooled: signs at a glance,
 * then the table.
 *
 * @param study - the placement study of the build-up
 * @param buildUp - the build-up
 * @returns grid of signs, table and rules
 */
export function placementPart(study: PlacementOfBuildUp, buildUp: BuildUpResult): Html {
  if (study.layer === null) return html`<p>${study.leftOut}</p>`;
  const { name, sd, added } = study.layer;
  const moved = added
    ? `No sheet of its own can be moved: ${name}, sd ${trimmed(sd, 2)} m, is added.`
    : `Moved: the project’s own ${name}, sd ${trimmed(sd, 2)} m.`;
  const leftOut = study.rows.filter((row) => row.leftOut !== null);
  return html`${glance(study)}<p>${moved} Each case is calculated in full; all other layers stay, and water stated to be trapped is left out.</p>
${table(study, buildUp)}${leftOut.map((row) => html`<p class="aside">${rowWords(row)}: ${row.leftOut}</p>`)}
${rules(study)}`;
}

/**
 * Pages of a build-up's placement.
 *
 * @param study - the placement study of the build-up
 * @returns one; null where the grid and the table may not fit on it
 */
export function placementPages({ rows }: PlacementOfBuildUp): number | null {
  return rows.length <= MOST_ROWS ? 1 : null;
}

/** Climates and uses whose grid and table fit on a page. */
const MOST_ROWS = 8;

/** The grid of judgements as signs: positions across, climates down. */
function glance({ rows, positions }: PlacementOfBuildUp): Html {
  const shown = rows.filter((row) => row.leftOut === null);
  const used = new Set(shown.flatMap(({ cells }) => cells.map(({ judgement }) => judgement)));
  const keys = [...used].map((word) => html`<span class="${CLASSES[word]}">${judgementIcon(word)} ${word}</span>`);
  return html`<figure class="wide"><p class="plot-title"><strong>The judgement in each position and climate</strong></p><div class="scroll" tabindex="0" role="group" aria-label="Judgements by position and climate"><table class="glance"><thead><tr><th scope="col">Climate and use</th>${positions.map(
    ({ words, isDrawn }) =>
      html`<th scope="col" class="w">${words}${isDrawn ? html`<span class="unit">as drawn</span>` : null}</th>`,
  )}</tr></thead><tbody>${shown.map(
    (row) =>
      html`<tr><th scope="row">${rowWords(row)}</th>${row.cells.map(({ judgement }) => html`<td class="${CLASSES[judgement]}">${judgementIcon(judgement)}<span class="hidden">${judgement}</span></td>`)}</tr>`,
  )}</tbody></table></div><figcaption><span class="mark-key">${keys}</span></figcaption></figure>`;
}

function table(study: PlacementOfBuildUp, buildUp: BuildUpResult): Html {
  const rows = study.rows.filter((row) => row.leftOut === null);
  return tableMarkup({
    caption: "The vapour layer in each position; “as drawn” marks the project’s own",
    columns: [
      wordsUnder("Climate and use"),
      wordsUnder("Warm side"),
      ...study.positions.map(({ words, isDrawn }) =>
        wordsUnder(html`${words}${isDrawn ? html` <span class="unit">as drawn</span>` : null}`),
      ),
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

function warmSideWords({ warmSide, warmSideName }: PlacementRow, buildUp: BuildUpResult): string {
  return warmSide === "inside" ? sideWords(buildUp).room : (warmSideName ?? "neither");
}

/** What "heated" and "cooled" stand for, once each. */
function rules(study: PlacementOfBuildUp): Html {
  const uses = new Map(study.rows.map((row) => [row.use, row]));
  return html`<ul>${[...uses.values()].map(
    ({ use, temperatureRule, humidityRule }) => html`<li>${use}: ${temperatureRule}; ${humidityRule}.</li>`,
  )}</ul>`;
}
