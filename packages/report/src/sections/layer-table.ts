import type { BuildUpResult, LayerResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, millimetres, SQUARE_MILLIMETRES, trimmed } from "../numbers.ts";
import { tableMarkup } from "../table.ts";

/**
 * The layer schedule from the room outwards, with the values used and where each comes from.
 *
 * @param buildUp - a build-up of the result
 * @returns the table and a line on its symbols
 */
export function layerTable(buildUp: BuildUpResult): Html {
  const table = tableMarkup({
    caption: "Layers from the room outwards, with the values used",
    columns: [
      { head: "Layer", kind: "words" },
      { head: "Thickness", unit: "mm", kind: "figures" },
      { head: "λ", unit: "W/(m·K)", kind: "figures" },
      { head: "R", unit: "m²·K/W", kind: "figures" },
      { head: "μ", kind: "figures" },
      { head: "sd", unit: "m", kind: "figures" },
      { head: "Source of the values", kind: "words" },
    ],
    rows: buildUp.layers.map((layer) => [
      html`<span class="number">${layer.number}</span> ${layer.name}${remarks(layer)}`,
      layer.thickness > 0 ? millimetres(layer.thickness) : "–",
      layer.conductivity === null ? "–" : fixed(layer.conductivity, 3),
      fixed(layer.resistance, 3),
      layer.vapourResistanceFactor === null ? "–" : trimmed(layer.vapourResistanceFactor, 1),
      sdText(layer.sd),
      html`${layer.source} <strong class="basis">${layer.basis}</strong>`,
    ]),
  });
  return html`${table}<p class="aside">λ conductivity, R resistance, μ vapour resistance factor (dry value), sd equivalent air layer thickness. <em>Declared</em>: by the maker; <em>tabulated</em>: from a table; <em>assumed</em>: neither, to be confirmed.</p>`;
}

function sdText(sd: number): string {
  return trimmed(sd, 3);
}

function remarks(layer: LayerResult): Html | null {
  const words = [
    layer.framing ? `bridged by ${layer.framing}` : null,
    layer.purpose,
    layer.fit && layer.fit !== "continuous" ? `insulation with ${layer.fit}` : null,
    layer.counted ? null : "outside the ventilated layer, not counted",
    layer.sdParts ? `sd with its facings: ${sdSum(layer.sdParts)} m` : null,
    Math.abs(layer.sdUnfavourable - layer.sd) > SMALLEST_SHOWN
      ? `sd ${sdText(layer.sdUnfavourable)} m in the unfavourable run`
      : null,
  ].filter((word) => word !== null);
  return words.length === 0 ? null : html`<span class="remark">${words.join("; ")}</span>`;
}

/** Facing, core and facing, from the room outwards; a face without facing adds nothing. */
function sdSum({ innerFacing, core, outerFacing }: NonNullable<LayerResult["sdParts"]>): string {
  return [innerFacing, core, outerFacing]
    .filter((sd) => sd > 0)
    .map(sdText)
    .join(" + ");
}

const SMALLEST_SHOWN = 0.0005;

/**
 * What is declared of every air layer and void, with the rule used.
 *
 * @param buildUp - a build-up of the result
 * @returns a list, or that there is none
 */
export function airLayers(buildUp: BuildUpResult): Html {
  const air = buildUp.layers.filter(({ type }) => type === "air");
  if (air.length === 0) return html`<p>No air layer or void.</p>`;
  const entries = air.map(
    (layer) =>
      html`<li>Layer ${layer.number}, ${millimetres(layer.thickness)} mm: ${VENTILATION_WORDS[layer.ventilation ?? "none"]}${openings(layer)}. ${layer.airRule ? `Rule: ${layer.airRule}.` : null}</li>`,
  );
  return html`<h4>Air layers and voids</h4><ul>${entries}</ul>`;
}

const VENTILATION_WORDS = {
  none: "declared not ventilated",
  slight: "declared slightly ventilated",
  well: "declared well ventilated",
} as const;

function openings({ ventilationArea, open }: LayerResult): string {
  const area =
    ventilationArea === null
      ? ""
      : `, openings ${fixed(ventilationArea * SQUARE_MILLIMETRES, 0)} mm² a metre (upright) or a square metre (level)`;
  return `${area}${open === null ? "" : open === "closed" ? ", closed at both ends" : `, open at ${open}`}`;
}
