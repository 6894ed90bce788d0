import { dewPoint } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { shortPlaceOf } from "../places.ts";
import { toSvg } from "../plots/to-svg.ts";
import { twelveMonthsPlot } from "../plots/twelve-months-plot.ts";
import { faceNodes, type SectionView } from "../section-view.ts";
import { tableMarkup } from "../table.ts";
import { shortMonth, wayWords } from "../words.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The twelve months of the governing section in one plot, its figures folded away beside it. */
export async function twelveMonthsPart({ view, id }: BuildUpPage): Promise<Part | null> {
  if (!view) return null;
  const plot = await figure(
    toSvg(twelveMonthsPlot(view), `${id}-plot-months`),
    `Temperature (whole line, °C) and dew point (dashed) in each month, ${wayWords(view.section.name)}, room on the left, outside on the right; depth in mm. A dot marks water.`,
    "wide",
  );
  return {
    key: "twelve-months",
    heading: "The twelve months",
    body: html`<div class="months">${plot}<details><summary>Figures of the twelve months at the faces of the layers</summary>${figures(view, "temperature")}${figures(view, "dew point")}<p class="aside">“2 | 3” is where layers 2 and 3 meet; the numbers are those of the drawing.</p></details></div>`,
  };
}

function figures(view: SectionView, what: "temperature" | "dew point"): Html {
  const months = view.section.months;
  const faces = faceNodes(months[0]!).map(({ node }) => node);
  return tableMarkup({
    caption: what === "temperature" ? "Temperature, °C" : "Dew point of the vapour there, °C",
    columns: [
      { head: "Month", kind: "words" },
      ...faces.map((node) => ({ head: shortPlaceOf(view, node), kind: "figures" as const })),
    ],
    rows: months.map(({ month, nodes }) => [
      shortMonth(month),
      ...faces.map((node) => {
        const state = nodes[node]!;
        return fixed(what === "temperature" ? state.temperature : dewPoint(state.vapourPressure), 1);
      }),
    ]),
  });
}
