import type { BuildUpResult } from "@warmside/core";
import { COVERED_BY_TABLE, verdictCell } from "../coverage.ts";
import { type Html, html } from "../html.ts";
import {
  fixed,
  GRAMS_PER_KILOGRAM,
  grams,
  gramsPerArea,
  PER_CENT,
  percent,
  SQUARE_MILLIMETRES,
  trimmed,
} from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";
import { shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** Checks beside the method: gaps, air leakage, humidity-dependent resistance, the two-season check. */
export function otherChecksPart({ buildUp }: AnnexOf): Part | null {
  const bodies = [gaps(buildUp), leak(buildUp), variableResistance(buildUp), twoSeasons(buildUp)].filter(
    (body) => body !== null,
  );
  return bodies.length === 0 ? null : { heading: "Further checks", body: html`${bodies}` };
}

function gaps({ gaps: found }: BuildUpResult): Html | null {
  if (found.length === 0) return null;
  const table = tableMarkup({
    caption: "Gaps in a sheet",
    columns: [
      wordsUnder("Layer"),
      figuresUnder("Share missing"),
      figuresUnder("sd whole", "m"),
      figuresUnder("sd with gaps", "m"),
      wordsUnder("Verdict"),
      figuresUnder("Peak", "g/m²"),
      wordsUnder("Result"),
    ],
    rows: found.map(({ layer, name, share, sdWhole, sdEffective, verdict, peak, message }) => [
      `${layer + 1} ${name}`,
      percent(share, 2),
      trimmed(sdWhole, 3),
      trimmed(sdEffective, 3),
      verdictCell(verdict),
      grams(peak.amount),
      message,
    ]),
    note: COVERED_BY_TABLE,
  });
  return html`${table}<p class="aside">1 / sd with gaps = (1 − share) / sd + share / 0.01 m, the sd of the air in them.</p>`;
}

function leak({ leak: found }: BuildUpResult): Html | null {
  if (!found) return null;
  const table = tableMarkup({
    caption: "Water carried in by leaking air, beside diffusion",
    columns: [wordsUnder("Month"), figuresUnder("By leaking air", "g/m²")],
    rows: found.months.map(({ month, amount }) => [shortMonth(month), fixed(amount * GRAMS_PER_KILOGRAM, 1)]),
  });
  return html`<h5>Air leakage</h5><p>${found.message} Gap ${fixed(found.area * SQUARE_MILLIMETRES, 0)} mm² a square metre at ${fixed(found.pressure, 1)} Pa; in all ${gramsPerArea(found.total)} beside ${grams(found.diffusion)} by diffusion.</p>${table}`;
}

function variableResistance({ variableResistance: found }: BuildUpResult): Html | null {
  if (!found) return null;
  const lists = found.layers.map(({ layer, name, months }) =>
    tableMarkup({
      caption: `Layer ${layer + 1}, ${name}: resistance by its own humidity`,
      columns: [wordsUnder("Month"), figuresUnder("Mean humidity", "%"), symbolColumn("sd")],
      rows: months.map(({ month, relativeHumidity, sd }) => [
        shortMonth(month),
        fixed(relativeHumidity * PER_CENT, 0),
        trimmed(sd, 3),
      ]),
    }),
  );
  return html`<h5>Resistance by humidity</h5><p>${found.converged ? `Settled after ${found.rounds} rounds` : `Not settled after ${found.rounds} rounds`}: ${verdictCell(found.verdict)}, peak ${gramsPerArea(found.peak.amount)}.</p>${lists}`;
}

function twoSeasons({ twoSeasonCheck: found }: BuildUpResult): Html | null {
  if (!found) return null;
  if (!found.applies)
    return html`<h5>Two-season check</h5><p>Does not apply${found.reason ? `: ${found.reason}` : null}.</p>`;
  const outcome = found.passes === null ? "no answer" : found.passes ? "passes" : "does not pass";
  return html`<h5>Two-season check</h5><p>${found.edition}, Rsi ${fixed(found.surfaceResistanceInside, 2)} m²·K/W: winter ${gramsPerArea(found.condensate)}${found.plane ? ` ${found.plane}` : null}, limit ${grams(found.limit)}; summer can dry ${gramsPerArea(found.summerCapacity)}: <strong>${outcome}</strong>.</p>`;
}
