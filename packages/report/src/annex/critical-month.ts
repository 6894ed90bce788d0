import { dewPoint } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, millimetres, PER_CENT, trimmed } from "../numbers.ts";
import { isCut, placeOf, resistanceTo } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";
import { pathWords, shortMonth } from "../words.ts";
import { moistureByHandPart } from "./moisture-by-hand.ts";
import type { AnnexOf, Part } from "./part.ts";

/** The critical month: every node of the governing path, and the hand check. */
export function criticalMonthPart({ view, buildUp, result }: AnnexOf): Part | null {
  if (!view) return null;
  return {
    heading: `Critical month: ${view.deciding.month}`,
    body: html`${nodeTable(view)}${farSide(buildUp, result)}${moistureByHandPart(view, buildUp)}`,
  };
}

function nodeTable(view: SectionView): Html {
  const { deciding } = view;
  const wet = new Set(deciding.planes.map(({ node }) => node));
  return tableMarkup({
    caption: `${deciding.month}: every node from the room surface outwards, ${pathWords(view.section.id)}`,
    columns: [
      wordsUnder("Place"),
      figuresUnder("Depth", "mm"),
      figuresUnder("R to there", "m²·K/W"),
      symbolColumn("sd"),
      figuresUnder("Temperature", "°C"),
      figuresUnder("Saturation", "Pa"),
      figuresUnder("Vapour", "Pa"),
      figuresUnder("Humidity", "%"),
      figuresUnder("Dew point", "°C"),
    ],
    rows: deciding.nodes.map((node) => [
      html`${nodePlace(view, node.node)}${wet.has(node.node) ? html` <strong class="wet">(water)</strong>` : null}`,
      millimetres(node.depth),
      fixed(resistanceTo(view, node.node), 4),
      trimmed(node.sd, 6),
      fixed(node.temperature, 2),
      fixed(node.saturationPressure, 1),
      fixed(node.vapourPressure, 1),
      fixed((node.vapourPressure / node.saturationPressure) * PER_CENT, 1),
      fixed(dewPoint(node.vapourPressure), 2),
    ]),
    marked: deciding.nodes.flatMap(({ node }, index) => (wet.has(node) ? [index] : [])),
  });
}

/** A face in full words, a cut inside a layer by its layer alone: the depth is in the next column. */
function nodePlace(view: SectionView, node: number): string {
  return isCut(view, node) ? `inside layer ${view.deciding.nodes[node]!.layer! + 1}` : placeOf(view, node);
}

/** The air of a void, or what lies below a slab: the design conditions have outdoors and the rooms. */
function farSide({ farSide: { name, months }, faces }: AnnexOf["buildUp"], { rooms }: AnnexOf["result"]): Html | null {
  if (faces === "outdoors" || rooms.some((room) => room.name === faces)) return null;
  return tableMarkup({
    caption: `Other side, month by month: ${name}`,
    columns: [
      wordsUnder("Month"),
      figuresUnder("θ", "°C"),
      symbolColumn("relative humidity"),
      symbolColumn("vapour pressure"),
    ],
    rows: months.map(({ month, temperature, relativeHumidity, vapourPressure }) => [
      shortMonth(month),
      fixed(temperature, 2),
      fixed(relativeHumidity * PER_CENT, 1),
      fixed(vapourPressure, 2),
    ]),
  });
}
