import { dewPoint } from "@warmside/core";
import { html } from "../html.ts";
import { fixed, gramsPerArea, millimetres, NO_BREAK_SPACE, PER_CENT, percent, trimmed } from "../numbers.ts";
import { isCut, placeOf } from "../places.ts";
import { temperaturePlot } from "../plots/temperature-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { vapourPlot } from "../plots/vapour-plot.ts";
import type { SectionView } from "../section-view.ts";
import { tableMarkup } from "../table.ts";
import { sentence, wayWords } from "../words.ts";
import { figure } from "./figure.ts";
import { moistureByHandPart } from "./moisture-by-hand-part.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Temperature and vapour through the governing section in the month that decides, its figures, and the sum by hand. */
export async function decidingMonthPart(page: BuildUpPage): Promise<Part | null> {
  const { view, id, buildUp } = page;
  if (!view) return null;
  const { month } = view.deciding;
  const table = "The table below has the figures.";
  const temperature = figure(
    toSvg(temperaturePlot(view), `${id}-plot-temperature`),
    `${month}: temperature (whole line) and dew point (dashed) through ${wayWords(view.section.name)}. Where they touch, vapour turns to water. The numbers above are the layers. ${table}`,
    "plain",
  );
  const vapour = figure(
    toSvg(vapourPlot(view), `${id}-plot-vapour`),
    `${month}: the most vapour the air can hold (whole line) and the vapour there is (dashed). Each layer is as wide as its resistance to vapour. ${table}`,
    "plain",
  );
  const body = html`<p>${why(view)}</p><div class="pair">${await temperature}${await vapour}</div>${nodeTable(view)}${moistureByHandPart(view, buildUp)}`;
  return { key: "deciding-month", heading: `The month that decides: ${month}`, body };
}

function why(view: SectionView): string {
  const { section, deciding } = view;
  const total = deciding.planes.reduce((sum, { change }) => sum + change, 0);
  const where =
    section.name === "whole"
      ? "One way through."
      : `${sentence(wayWords(section.name))} governs (${view.share}${NO_BREAK_SPACE}% of the area).`;
  if (deciding.planes.length > 0) {
    return `${where} ${deciding.month} has the greatest change: ${gramsPerArea(Math.abs(total))} ${total >= 0 ? "condense" : "dry"}, ${placeOf(view, deciding.planes[0]!.node)}${deciding.planes.length > 1 ? " and nearby" : ""}.`;
  }
  const margin = section.leastMargin;
  return margin
    ? `${where} No month condenses. Nearest to it is ${margin.month}, ${placeOf(view, margin.node)}: ${fixed(margin.margin, 0)} Pa below saturation, ${percent(margin.relativeHumidity, 0)} relative humidity.`
    : `${where} No month condenses.`;
}

function nodeTable(view: SectionView) {
  const { deciding } = view;
  const wet = new Set(deciding.planes.map(({ node }) => node));
  return tableMarkup({
    caption: `${deciding.month}: every node from the room surface outwards, ${wayWords(view.section.name)}`,
    columns: [
      { head: "Place", kind: "words" },
      { head: "Depth", unit: "mm", kind: "figures" },
      { head: "sd", unit: "m", kind: "figures" },
      { head: "Temperature", unit: "°C", kind: "figures" },
      { head: "Saturation", unit: "Pa", kind: "figures" },
      { head: "Vapour", unit: "Pa", kind: "figures" },
      { head: "Humidity", unit: "%", kind: "figures" },
      { head: "Dew point", unit: "°C", kind: "figures" },
    ],
    rows: deciding.nodes.map((node) => [
      html`${nodePlace(view, node.node)}${wet.has(node.node) ? html` <strong class="wet">(water)</strong>` : null}`,
      millimetres(node.depth),
      trimmed(node.sd, 3),
      fixed(node.temperature, 2),
      fixed(node.saturationPressure, 1),
      fixed(node.vapourPressure, 1),
      fixed((node.vapourPressure / node.saturationPressure) * PER_CENT, 1),
      fixed(dewPoint(node.vapourPressure), 2),
    ]),
    marked: deciding.nodes.flatMap(({ node }, index) => (wet.has(node) ? [index] : [])),
  });
}

/** A face in full words, a cut inside a layer by its layer alone: the depth stands beside it. */
function nodePlace(view: SectionView, node: number): string {
  return isCut(view, node) ? `inside layer ${view.deciding.nodes[node]!.layer! + 1}` : placeOf(view, node);
}
