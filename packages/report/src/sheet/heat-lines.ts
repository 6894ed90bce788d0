import type { BuildUpResult } from "@warmside/core";
import { marksOf, surfaceWord } from "../decision/marks.ts";
import { type Html, html } from "../html.ts";
import { markIcon } from "../judgement-icons.ts";
import { fixed, percent } from "../numbers.ts";
import { pathWords } from "../words.ts";

/**
 * The U-value in five lines, limits, error, corrections and result against target, and the inside surface in one.
 *
 * @param buildUp - a build-up of the result
 * @returns a list of terms; null where heat was not worked out
 */
export function heatLines(buildUp: BuildUpResult): Html | null {
  const { heat, target } = buildUp;
  if (heat === null) return null;
  const marks = marksOf(buildUp);
  const required = heat.requiredTemperatureFactor;
  const surface = surfaceWord(marks.surface, required);
  const corrections =
    heat.corrections.length === 0
      ? "none asked for"
      : `${heat.correctionsLeftOut ? "together under 3 % of U, left out" : `ΔU ${fixed(heat.correction, 4)} W/(m²·K)`}: ${heat.corrections.map(({ name }) => name).join(", ")}`;
  const lines: [string, Html | string][] = [
    [
      "Limits of R",
      `upper ${fixed(heat.upperLimit, 3)}, lower ${fixed(heat.lowerLimit, 3)} m²·K/W; mean ${fixed(heat.resistance, 3)}${heat.slightVentilation ? " with the slightly ventilated layer" : ""}; Rsi ${fixed(heat.surfaceResistanceInside, 2)}, Rse ${fixed(heat.surfaceResistanceOutside, 2)}`,
    ],
    [
      "Error",
      `R′/R″ ${fixed(heat.limitsRatio, 3)}, at most ${percent(heat.possibleError, 1)}${heat.framingShare > 0 ? `; framing ${percent(heat.framingShare, 1)} of the area, U between it ${fixed(heat.clearTransmittance, 3)}` : "; no framing"}`,
    ],
    ["Corrections", corrections],
    [
      "U-value",
      html`<strong>${fixed(heat.transmittance, 3)} W/(m²·K)</strong>${target === null ? ", no target stated" : `, target ${fixed(target, 2)}`}${heat.ground ? ", with the ground (ISO 13370)" : null} ${marks.heat === null ? null : html`<span class="mark">${markIcon(marks.heat)}${marks.heat === "pass" ? "met" : "missed"}</span>`}`,
    ],
    [
      "Heat over the year",
      heat.heatPerYear === null
        ? "the room is never the warmer side"
        : `${fixed(heat.heatPerYear, 1)} kWh/m²${heat.heatPerYearNote ? `, ${heat.heatPerYearNote}` : ""}`,
    ],
    [
      "Inside surface",
      html`fRsi <strong>${fixed(heat.temperatureFactor, 3)}</strong>${coldestPath(buildUp)}${required === null ? ", none required" : ` against ${fixed(required, 3)} required in ${heat.criticalMonth} (80 % at the surface, Rsi 0.25)`} ${surface === null ? null : html`<span class="mark">${markIcon(marks.surface)}${surface}</span>`}`,
    ],
  ];
  return html`<dl class="lines">${lines.map(([label, words]) => html`<div><dt>${label}</dt><dd>${words}</dd></div>`)}</dl>`;
}

/** The path with the coldest surface, to which the factor refers; empty if there is only one path. */
function coldestPath({ heat, surface }: BuildUpResult): string | null {
  const at = surface?.temperatureFactors.find(({ factor }) => factor === heat?.temperatureFactor)?.sectionId;
  return at && at.kind !== "whole" ? ` ${pathWords(at)}` : null;
}
