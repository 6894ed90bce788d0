import type { BuildUpResult } from "@warmside/core";
import { buildUpDrawing } from "../drawing/build-up-drawing.ts";
import { HATCH_WORDS, hatchOf } from "../drawing/patterns.ts";
import { type Html, html } from "../html.ts";
import { fixed, millimetres, percent } from "../numbers.ts";
import { type VapourLayerStanding, vapourLayerStanding } from "../vapour-layer-standing.ts";
import { waterHeadline } from "../water-headline.ts";
import { fromRoomToFarSide, sentence } from "../words.ts";
import { figure } from "./figure.ts";
import { airLayers, layerTable } from "./layer-table.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The drawing to scale, the layers with where their values come from, and the framing. */
export async function drawingPart(page: BuildUpPage): Promise<Part> {
  const { buildUp, view, id } = page;
  const list = buildUp.layers.map(
    ({ name, thickness }, index) =>
      html`<li>${name}${thickness > 0 && !name.endsWith(" mm") ? `, ${millimetres(thickness)} mm` : null} <span class="aside">${HATCH_WORDS[hatchOf(buildUp.layers[index]!)]}</span></li>`,
  );
  const crossing =
    buildUp.framings.length > 1 ? " Framing that runs across the first is dashed; both are shown in one plane." : "";
  const byStandard = buildUp.moisture ? waterHeadline(buildUp.moisture).byStandard : null;
  const drops = byStandard === null ? "" : " The drops are those of the standard’s month-end rule.";
  const dashed = DASHED_LINE[vapourLayerStanding(buildUp.vapourLayer)];
  const caption = `Cut through, to scale, ${fromRoomToFarSide(buildUp)}.${dashed}${crossing}${drops}`;
  const drawing = await figure(buildUpDrawing(buildUp, view, `${id}-plot-drawing`), caption, "plain");
  return {
    key: "drawing",
    heading: "Drawing and layers",
    body: html`<div class="beside">${drawing}<div><ol class="key">${list}</ol>${airLayers(buildUp)}${framings(page)}${farSide(buildUp)}</div></div>${layerTable(buildUp)}`,
  };
}

/** What the heavy dashed line of the drawing is; none is drawn for the rest. */
const DASHED_LINE: Readonly<Record<VapourLayerStanding, string>> = {
  "vapour layer": " The heavy dashed line is the vapour layer.",
  "on the cold side": " The heavy dashed line is a tight layer on the cold side: no vapour layer.",
  "nothing drives vapour": "",
  none: "",
};

function farSide({ farSide: { name, rule } }: BuildUpResult): Html {
  return html`<h4>The far side</h4><p>${sentence(name)}: ${rule}.</p>`;
}

function framings({ buildUp }: BuildUpPage): Html {
  if (buildUp.framings.length === 0) return html`<p>No framing runs through these layers.</p>`;
  const entries = buildUp.framings.map(
    ({ name, material, share, origin, usual, layers, conductivity }) =>
      html`<li><strong>${name}</strong>: ${material}, λ ${fixed(conductivity, 3)} W/(m·K), ${percent(share, 1)} of the area through layer${layers.length > 1 ? "s" : null} ${layers.join(", ")}. Share from: ${origin}. For comparison, ${usual}.</li>`,
  );
  return html`<h4>Framing</h4><ul>${entries}</ul>`;
}
