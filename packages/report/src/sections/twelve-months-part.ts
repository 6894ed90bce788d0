import { dewPoint } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { placeOf } from "../places.ts";
import { toSvg } from "../plots/to-svg.ts";
import { twelveMonthsPlot } from "../plots/twelve-months-plot.ts";
import { faceNodes, type SectionView } from "../section-view.ts";
import { tableMarkup } from "../table.ts";
import { shortMonth, wayWords } from "../words.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** The twelve months of the governing section in one plot, its figures folded away below. */
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
    body: html`${plot}<details><summary>Figures of the twelve months at the faces of the layers</summary>${figures(view, "temperature")}${figures(view, "dew point")}</details>`,
  };
}

function figures(view: SectionView, what: "temperature" | "dew point"): Html {
  const months = view.section.months;
  const faces = faceNodes(months[0]!).map(({ node }) => node);
  return tableMarkup({
    caption: what === "temperature" ? "Temperature, °C" : "Dew point of the vapour there, °C",
    columns: [
      { head: "Place", kind: "words" },
      ...months.map(({ month }) => ({ head: shortMonth(month), kind: "figures" as const })),
    ],
    rows: faces.map((node) => [
      placeOf(view, node),
      ...months.map(({ nodes }) => {
        const state = nodes[node]!;
        return fixed(what === "temperature" ? state.temperature : dewPoint(state.vapourPressure), 1);
      }),
    ]),
  });
}
