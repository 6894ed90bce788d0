import type { BuildUpResult, ProjectResult } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { box } from "../decision/conditions.ts";
import { marksOf, worstOf } from "../decision/marks.ts";
import { sectionDrawing } from "../drawing/section-drawing.ts";
import { type Html, html } from "../html.ts";
import { MARK_CLASSES } from "../judgement-icons.ts";
import { stretchedSd } from "../plots/stretched-sd.ts";
import { toSvg } from "../plots/to-svg.ts";
import { brokenWords, vapourPlot } from "../plots/vapour-plot.ts";
import { governingView, type SectionView } from "../section-view.ts";
import { vapourLayerKind } from "../vapour-layer-kind.ts";
import { ELEMENT_WORDS, fromRoomToFarSide, sentence } from "../words.ts";
import { findingsList } from "./findings-list.ts";
import { heatLines } from "./heat-lines.ts";
import { layerTable } from "./layer-table.ts";
import { monthTable } from "./month-table.ts";
import { MOST_REMEDIES, remedyTable } from "./remedy-table.ts";
import { sensitivityTable } from "./sensitivity-table.ts";
import { evaporationStatement, plotMessage } from "./statements.ts";
import { vapourLayerLines } from "./vapour-layer-lines.ts";

/**
 * The sheet of a build-up, two pages in print. Front: the section to scale beside its layers, the U-value, the vapour
 * plot of the critical month. Back: the months, what evaporates, sensitivity, findings, conditions, remedies and the
 * vapour layer.
 *
 * @param result - the project's result
 * @param buildUp - one of its build-ups
 * @param number - which one, from 1
 * @param hasAnnex - whether the document has an annex to lead to
 * @returns the section
 */
export async function sheet(
  result: ProjectResult,
  buildUp: BuildUpResult,
  number: number,
  hasAnnex: boolean,
): Promise<Html> {
  const id = `build-up-${number}`;
  const view = governingView(buildUp);
  const drawings = result.query?.drawings ?? [];
  const kicker = [
    `${ELEMENT_WORDS[buildUp.element]}, ${fromRoomToFarSide(buildUp)}`,
    ...(drawings.length > 0 ? [`drawings ${drawings.join("; ")}`] : []),
  ].join(" · ");
  return html`<section class="sheet page ${MARK_CLASSES[worstOf(marksOf(buildUp))]}" id="${id}">
<div class="front"><h2>${number} ${buildUp.name}</h2><p class="kicker">${kicker}</p>
${beyond(buildUp)}
<div class="section-and-heat ${isLying(buildUp) ? "lying" : "upright"}">${drawing(buildUp, view, `${id}-section`, hasAnnex ? inThePlane(buildUp, number) : null)}${heatLines(buildUp)}</div>
${layerTable(buildUp)}
${view === null ? null : await plot(view, `${id}-vapour`)}</div>
<div class="back page"><p class="kicker running">${number} ${buildUp.name}, continued</p>
${view === null ? null : html`<div class="months${view.wetNodes.length > 0 ? " wet" : null}">${monthTable(view)}<div class="statement">${evaporationStatement(view).map((words) => html`<p>${words}</p>`)}</div></div>`}
${sensitivityTable(buildUp)}
${findingsList(buildUp)}
${conditions(buildUp)}
${remedyTable(buildUp, MOST_REMEDIES)}
${vapourLayerLines(buildUp)}
${hasAnnex ? html`<p class="aside screen-only"><a href="#annex-${number}">Annex ${number}: every figure and the hand checks</a></p>` : null}</div>
</section>`;
}

function isLying({ element }: BuildUpResult): boolean {
  return element !== "wall" && element !== "partition";
}

function beyond({ beyond: reason }: BuildUpResult): Html | null {
  return reason === null
    ? null
    : html`<p class="beyond-words"><strong>Beyond this method.</strong> ${backticksAsCode(`${sentence(reason.reason)} ${sentence(reason.askFor)}`)}</p>`;
}

/** Links to the picture, which needs more width than the sheet has. */
function inThePlane({ plane }: BuildUpResult, number: number): Html | null {
  return plane === null ? null : html` Across the ${plane.framing}: <a href="#annex-${number}">annex ${number}</a>.`;
}

function drawing(buildUp: BuildUpResult, view: SectionView | null, id: string, plane: Html | null): Html {
  const curves =
    view === null
      ? ""
      : `${view.deciding.month}: temperature unbroken, dew point dashed${view.wetNodes.length > 0 ? "; drops where water lies" : ""}. `;
  const layer = vapourLayerKind(buildUp.vapourLayer) === "vapour layer" ? "Heavy dashes: vapour layer. " : "";
  return html`<figure>${sectionDrawing(buildUp, view, id)}<figcaption>Section to scale, mm. ${curves}${layer}${plane}</figcaption></figure>`;
}

async function plot(view: SectionView, id: string): Promise<Html> {
  const message = plotMessage(view);
  const broken = brokenWords(stretchedSd(view));
  const path = view.section.name === "whole" ? "" : `, ${view.section.name}`;
  return html`<figure class="wide"><p class="plot-title"><strong>${message}</strong></p>${await toSvg(vapourPlot(view, message), id)}<figcaption>${view.deciding.month}${path}: saturation pressure unbroken, vapour pressure dashed${view.deciding.planes.length > 0 ? ", a drop where they meet" : ""}. Layers are numbered above and as wide as their sd${broken}.</figcaption></figure>`;
}

function conditions({ judgement }: BuildUpResult): Html | null {
  if (judgement.conditions.length === 0) return null;
  return html`<h3>Conditions</h3><ul class="boxes">${judgement.conditions.map((condition) => html`<li>${box()}${backticksAsCode(condition)}</li>`)}</ul>`;
}
