import type { ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { governingSection } from "../section-view.ts";
import { tableMarkup } from "../table.ts";

/**
 * Method and edition, surface resistances, how layers were cut, the month each water year starts in.
 *
 * @param result - the project's result
 * @returns the section
 */
export function method(result: ProjectResult): Html {
  const table = tableMarkup({
    caption: "Surface resistances, cuts and start of the water year",
    columns: [
      { head: "Build-up", kind: "words" },
      { head: "Rsi", unit: "m²·K/W", kind: "figures" },
      { head: "Rse for U", unit: "m²·K/W", kind: "figures" },
      { head: "Rse for vapour", unit: "m²·K/W", kind: "figures" },
      { head: "Nodes", kind: "figures" },
      { head: "Start month", kind: "words" },
    ],
    rows: result.buildUps.map(({ name, heat, moisture }, index) => {
      const section = governingSection(moisture);
      return [
        `${index + 1} ${shorten(name, 60)}`,
        heat ? fixed(heat.surfaceResistanceInside, 2) : "–",
        heat ? fixed(heat.surfaceResistanceOutside, 2) : "–",
        heat ? fixed(heat.surfaceResistanceOutsideMoisture, 2) : "–",
        section ? String(section.months[0]?.nodes.length ?? 0) : "–",
        section ? (section.startMonth ?? "none: no wet month") : "–",
      ];
    }),
  });
  return html`<section id="method"><h2>Method and edition</h2><ul>
<li>Condensation between the layers: ${result.method}, month by month, ${result.climate.severity}. Temperatures fall in proportion to resistance; vapour pressure falls in a straight line over sd between places with water, where it is the saturation pressure.</li>
<li>Every layer but air is cut into equal parts of at most 0.25 m²·K/W, so that water inside a thick layer is found.</li>
<li>The water year starts in a wet month that follows a dry one. What a month-end rule writes off is told; drying inside the month is worked out beside it, beyond the standard.</li>
<li>Every straight way through a framed build-up is worked out; the worst governs.</li>
<li>Transmittance: ISO 6946:2017, combined method, with the corrections of its Annex F. Floors on ground or over a void: ISO 13370:2017.</li>
<li>Inside surface: ISO 13788:2012 clause 5, Rsi 0.25 m²·K/W, 80 % humidity at the surface against mould, 100 % against drops, 60 % against corrosion.</li>
<li>Room humidity by class: ISO 13788:2012 Annex A. By outdoor temperature: EN 15026 Annex C.</li>
<li>Vapour permeability of still air: 2·10⁻¹⁰ kg/(m·s·Pa); an air layer has an sd of 0.01 m.</li>
</ul><p>Clauses are cited from memory of the standards where the project’s own documentation says so.</p>${table}</section>`;
}
