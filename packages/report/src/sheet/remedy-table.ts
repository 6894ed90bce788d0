import { type BuildUpResult, meetsTarget, type Remedy } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { type Html, html } from "../html.ts";
import { fixed, grams, MILLIMETRES_PER_METRE, signed, trimmed } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";
import { sentence } from "../words.ts";

/** More remedies than this stand in the annex. */
export const MOST_REMEDIES = 2;

/**
 * Changes that were calculated to change the judgement or to meet the target, with their effect on thickness and U.
 *
 * @param buildUp - a build-up of the result
 * @param most - how many are shown; the conditions of each are told where there are more than on a sheet
 * @returns the table; the sentence of the search where none was found; null where none was looked for
 */
export function remedyTable({ remedies, remedySearch, target }: BuildUpResult, most: number): Html | null {
  const isWhole = most > MOST_REMEDIES;
  if (remedies.length === 0)
    return remedySearch === null ? null : html`<h3>Remedies</h3><p>${backticksAsCode(remedySearch)}</p>`;
  const shown = remedies.slice(0, most);
  const table = tableMarkup({
    caption: "Remedies",
    columns: [
      wordsUnder("Change"),
      wordsUnder("Then"),
      figuresUnder("Ma at most", "g/m²"),
      symbolColumn("U-value"),
      figuresUnder("Thicker", "mm"),
    ],
    rows: shown.map((remedy) => [
      html`${sentence(remedy.change)}${values(remedy)}`,
      remedy.judgement,
      grams(remedy.peak.amount),
      html`${fixed(remedy.transmittance, 2)}${target !== null && !meetsTarget(remedy.transmittance, target) ? html` <span class="remark">over the target</span>` : null}`,
      signed((remedy.thicknessInside + remedy.thicknessOutside) * MILLIMETRES_PER_METRE, 0),
    ]),
    ...(remedySearch === null
      ? {}
      : {
          note: html`<p class="aside">${remedySearch}${remedies.length > most ? ` ${remedies.length - most} more in the annex.` : null}</p>`,
        }),
  });
  return html`${table}${isWhole ? conditionsOf(remedies) : null}`;
}

/** The conditions of each remedy that is sound with conditions. */
function conditionsOf(remedies: readonly Remedy[]): Html | null {
  const some = remedies.filter(({ conditionFindings }) => conditionFindings.length > 0);
  if (some.length === 0) return null;
  return html`<ul>${some.map(({ change, conditionFindings }) => html`<li>${sentence(change)}: ${conditionFindings.map(({ short }) => sentence(short)).join(" ")}</li>`)}</ul>`;
}

/** λ, μ and sd of the materials that a remedy adds: the layer table has only the present ones. */
function values({ materials }: Remedy): Html | null {
  if (materials.length === 0) return null;
  const words = materials.map(({ conductivity, vapourResistanceFactor, sd }) =>
    [
      conductivity === null ? null : `λ ${trimmed(conductivity, 3)} W/(m·K)`,
      vapourResistanceFactor === null ? null : `μ ${trimmed(vapourResistanceFactor, 1)}`,
      sd === null ? null : `sd ${trimmed(sd, 2)} m`,
    ]
      .filter((value) => value !== null)
      .join(", "),
  );
  return html`<span class="remark">${words.join("; ")}</span>`;
}
