import type { BuildUpResult, FramingResult, LayerResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { type Html, html } from "../html.ts";
import { fixed, millimetres, percent, SQUARE_MILLIMETRES, trimmed } from "../numbers.ts";
import { type Cell, figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";

/**
 * The layers from the room outwards and the framing that bridges them, with the values used and where each comes from.
 *
 * @param buildUp - a build-up of the result
 * @returns the table
 */
export function layerTable(buildUp: BuildUpResult): Html {
  const bases = new Set([...buildUp.layers, ...buildUp.framings].map(({ basis }) => basis));
  return tableMarkup({
    caption: "Layers from the room outwards",
    columns: [
      wordsUnder("Layer"),
      figuresUnder("d", "mm"),
      symbolColumn("conductivity"),
      symbolColumn("R"),
      symbolColumn("μ", null),
      symbolColumn("sd"),
      wordsUnder("Source"),
    ],
    rows: [...buildUp.layers.map(layerRow), ...buildUp.framings.map((framing) => framingRow(framing, buildUp))],
    ...(bases.has("assumed") ? { note: html`<p class="aside">Assumed values are to be confirmed.</p>` } : {}),
  });
}

function layerRow(layer: LayerResult): Cell[] {
  return [
    html`<span class="number">${layer.number}</span> ${layer.name}${remarks(layer)}`,
    layer.thickness > 0 ? millimetres(layer.thickness) : "–",
    layer.conductivity === null ? "–" : trimmed(layer.conductivity, 4),
    layer.counted ? fixed(layer.resistance, 3) : "–",
    layer.vapourResistanceFactor === null ? "–" : trimmed(layer.vapourResistanceFactor, 1),
    layer.counted ? trimmed(layer.sd, 3) : "–",
    sourceWords(layer.type === "air" && layer.airRule ? layer.airRule : layer.source, layer.basis),
  ];
}

/** Framing has no sd of its own: its μ times the depth of each layer it runs through. */
function framingRow(framing: FramingResult, { layers }: BuildUpResult): Cell[] {
  const through = framing.layers.map((index) => layers[index]).filter((layer) => layer !== undefined);
  const depth = through.reduce((sum, { thickness }) => sum + thickness, 0);
  const size =
    framing.width && framing.spacing ? `${millimetres(framing.width)} mm at ${millimetres(framing.spacing)} mm, ` : "";
  return [
    html`${framing.name} <span class="remark">${framing.material} in ${through.length > 1 ? "layers" : "layer"} ${framing.layers.map((index) => index + 1).join(", ")}: ${size}${percent(framing.share, 1)} of the area (${framing.origin})</span>`,
    millimetres(depth),
    trimmed(framing.conductivity, 4),
    fixed(depth / framing.conductivity, 3),
    framing.vapourResistanceFactor === null ? "–" : trimmed(framing.vapourResistanceFactor, 1),
    framing.vapourResistanceFactor === null ? "–" : trimmed(framing.vapourResistanceFactor * depth, 3),
    sourceWords(framing.source, framing.basis),
  ];
}

/** The source of a value; whether a clause is cited from memory is said among the sources. */
function sourceWords(source: string, basis: string): string {
  return `${shorten(source.replaceAll(" (from memory)", ""), LONGEST_SOURCE)}, ${basis}`;
}

/** A longer source is cut here and given in full among the sources. */
const LONGEST_SOURCE = 60;

function remarks(layer: LayerResult): Html | null {
  const words = [
    layer.framing ? `with ${layer.framing}` : null,
    layer.purpose,
    layer.fit && layer.fit !== "continuous" ? `fitted with ${layer.fit}` : null,
    layer.counted ? null : "outside the ventilated layer, not counted",
    layer.type === "air" ? airWords(layer) : null,
    layer.sdParts ? `sd ${sdSum(layer.sdParts)} m, with its facings` : null,
    Math.abs(layer.sdUnfavourable - layer.sd) > SMALLEST_SHOWN
      ? `unfavourable sd ${trimmed(layer.sdUnfavourable, 3)} m`
      : null,
  ].filter((word) => word !== null);
  return words.length === 0 ? null : html`<span class="remark">${words.join("; ")}</span>`;
}

function airWords({ ventilation, ventilationArea, open }: LayerResult): string {
  const area =
    ventilationArea === null ? "" : `, openings ${fixed(ventilationArea * SQUARE_MILLIMETRES, 0)} mm² per m or m²`;
  const ends = open === null ? "" : open === "closed" ? ", closed at both ends" : `, open at ${open}`;
  return `${VENTILATION_WORDS[ventilation ?? "none"]}${area}${ends}`;
}

const VENTILATION_WORDS = { none: "not ventilated", slight: "slightly ventilated", well: "well ventilated" } as const;

/** Facing, core and facing, from the room outwards; a face without facing adds nothing. */
function sdSum({ innerFacing, core, outerFacing }: NonNullable<LayerResult["sdParts"]>): string {
  return [innerFacing, core, outerFacing]
    .filter((sd) => sd > 0)
    .map((sd) => trimmed(sd, 3))
    .join(" + ");
}

const SMALLEST_SHOWN = 0.0005;
