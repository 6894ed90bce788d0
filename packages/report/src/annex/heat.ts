import { type HeatResult, LARGEST_LIMITS_RATIO } from "@warmside/core";
import { type HeatByHand, heatByHand } from "../by-hand/heat-by-hand.ts";
import { targetWords } from "../heat-target.ts";
import { type Html, html } from "../html.ts";
import { fixed, percent } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";
import { floorPart } from "./floor.ts";
import type { AnnexOf, Part } from "./part.ts";

/** Transmittance with framing and corrections against its target, worked by hand. */
export function heatPart(page: AnnexOf): Part | null {
  const { buildUp } = page;
  const heat = buildUp.heat;
  if (!heat) return null;
  const steps = heatByHand(heat);
  const framing =
    heat.framingShare > 0
      ? `; ${fixed(heat.clearTransmittance, 3)} between framing. Framing takes ${percent(heat.framingShare, 1)} of the area.`
      : ". No framing.";
  const body = html`<p><strong>U ${fixed(heat.transmittance, 3)} W/(m²·K)</strong> with framing and corrections${targetWords(buildUp)}${framing}</p>
<p>Heat flow ${heat.direction}: Rsi ${fixed(heat.surfaceResistanceInside, 2)}, Rse ${fixed(heat.surfaceResistanceOutside, 2)} m²·K/W for U; ${heat.groundResistance === null ? "Rse" : "below the slab the ground, Rg"} ${fixed(heat.surfaceResistanceOutsideMoisture, 2)}${heat.groundResistance === null ? null : " m²·K/W,"} for temperatures and vapour.</p>
${heat.heatPerYear === null ? null : html`<p>Heat over the year: ${fixed(heat.heatPerYear, 1)} kWh/m²${heat.heatPerYearNote ? ` (${heat.heatPerYearNote})` : null}.</p>`}
${framings(buildUp)}<p class="aside">Heat over the year: U × Σ max(0, θi − θe) × 24 h × days / 1000. fRsi = 1 − 0.25 / (0.25 + R of the layers + Rse), the lowest of the paths and of the combined method.</p>
${corrections(heat)}
${buildUp.plane?.channel ? html`<p>Metal channels: U is worked out in the plane (ISO 10211), which no hand check retraces.</p>` : byHand(heat, steps)}
${floorPart(page, steps.resistance)}`;
  return { heading: "U-value", body };
}

/** The origin of each framing share, and the usual share. */
function framings({ framings: all }: AnnexOf["buildUp"]): Html | null {
  if (all.length === 0) return null;
  return html`<ul>${all.map(({ name, share, origin, usual }) => html`<li>${name}: ${percent(share, 1)} of the area, ${origin}; ${usual}</li>`)}</ul>`;
}

function corrections(heat: HeatResult): Html {
  if (heat.corrections.length === 0) return html`<p>Corrections (ISO 6946 Annex F): none stated.</p>`;
  const entries = heat.corrections.map(
    ({ name, layer, value, formula }) =>
      html`<li>Layer ${layer + 1}, ${name}: ΔU ${fixed(value, 5)} W/(m²·K) = ${formula}</li>`,
  );
  const end = heat.correctionsLeftOut
    ? "Together under 3 % of U, so left out."
    : `Added: ${fixed(heat.correction, 4)} W/(m²·K).`;
  return html`<h5>Corrections, ISO 6946 Annex F</h5><ul>${entries}</ul><p>${end}</p>`;
}

function byHand(heat: HeatResult, steps: HeatByHand): Html {
  const upper = tableMarkup({
    caption: "Upper limit: heat-flow paths in parallel",
    columns: [
      wordsUnder("Heat-flow path"),
      figuresUnder("Share f"),
      symbolColumn("R"),
      figuresUnder("f / R", "W/(m²·K)"),
    ],
    rows: steps.paths.map(({ name, share, resistance, conductance }) => [
      name,
      share.text,
      resistance.text,
      conductance.text,
    ]),
    sums: [["Sum", "", "", steps.sumOfConductances.text]],
  });
  const lower = tableMarkup({
    caption: "Lower limit: layer by layer, framing in parallel within each",
    columns: [wordsUnder("Layer"), symbolColumn("R")],
    rows: steps.layers.map(({ number, name, resistance }) => [
      number === null ? name : html`<span class="number">${number + 1}</span> ${name}`,
      resistance.text,
    ]),
    sums: [["Sum: lower limit R″", steps.lowerLimit.text]],
  });
  return html`<section class="by-hand" data-by-hand="heat"><h5>Hand check: the U-value</h5>
<div class="pair"><div>${upper}<ol class="steps">
<li>Upper limit R′ = 1 / ${steps.sumOfConductances.text} = <b>${steps.upperLimit.text}</b> m²·K/W</li>
<li>R = (R′ + R″) / 2 = (${steps.upperLimit.text} + ${steps.lowerLimit.text}) / 2 = <b>${steps.mean.text}</b> m²·K/W${steps.slight ? " with the air layer closed" : null}</li>
${
  steps.slight
    ? html`<li>The air layer is slightly ventilated: R = (1 − ${steps.slight.openShare.text}) × ${steps.mean.text} + ${steps.slight.openShare.text} × ${steps.slight.openResistance.text} (well ventilated) = <b>${steps.resistance.text}</b> m²·K/W</li>`
    : null
}
<li>U = 1 / R + corrections = 1 / ${steps.resistance.text} + ${steps.correction.text} = <b>${steps.transmittance.text}</b> W/(m²·K)${heat.ground ? " (of the floor alone, without the ground)" : null}</li>
</ol></div>${lower}</div>
<p class="aside">R′ / R″ = ${fixed(heat.limitsRatio, 3)}; possible error of R ${percent(heat.possibleError, 1)}. ${heat.limitsRatio > LARGEST_LIMITS_RATIO ? "Over 1.5: the method’s own bound is passed." : null}${heat.ground ? html`This R, its surfaces taken off, is the Rf of the sum with the ground below.` : html` Calculated without rounding: U ${fixed(heat.transmittance, 4)}.`}</p></section>`;
}
