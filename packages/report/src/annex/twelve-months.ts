import { dewPoint } from "@warmside/core";
import { figure } from "../figure.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { shortPlaceOf } from "../places.ts";
import { toSvg } from "../plots/to-svg.ts";
import { twelveMonthsPlot } from "../plots/twelve-months-plot.ts";
import { faceNodes, type SectionView } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { pathWords, shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** The twelve months of the governing section in one plot, its figures folded away beside it. */
export async function twelveMonthsPart({ view, id }: AnnexOf): Promise<Part | null> {
  if (!view) return null;
  const plot = await figure(
    "Temperature and dew point, month by month",
    toSvg(twelveMonthsPlot(view), `${id}-months`),
    `Temperature solid, dew point dashed, ${pathWords(view.section.id)}, room on the left, other side on the right; a dot marks water.`,
  );
  return {
    heading: "Twelve months",
    body: html`${plot}${figures(view, "temperature")}${figures(view, "dew point")}<p class="aside">“2 | 3” is where layers 2 and 3 meet; the numbers are those of the drawing.</p>`,
  };
}

function figures(view: SectionView, what: "temperature" | "dew point"): Html {
  const months = view.section.months;
  const faces = faceNodes(months[0]!).map(({ node }) => node);
  return tableMarkup({
    caption: what === "temperature" ? "Temperature, °C" : "Dew point of the vapour there, °C",
    columns: [wordsUnder("Month"), ...faces.map((node) => figuresUnder(shortPlaceOf(view, node)))],
    rows: months.map(({ month, nodes }) => [
      shortMonth(month),
      ...faces.map((node) => {
        const state = nodes[node]!;
        return fixed(what === "temperature" ? state.temperature : dewPoint(state.vapourPressure), 1);
      }),
    ]),
  });
}
