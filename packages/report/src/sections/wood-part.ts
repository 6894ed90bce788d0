import type { WoodResult } from "@warmside/core";
import { html } from "../html.ts";
import { fixed } from "../numbers.ts";
import { toSvg } from "../plots/to-svg.ts";
import { byMoisture, woodMoisturePlot } from "../plots/wood-moisture-plot.ts";
import { tableMarkup } from "../table.ts";
import { shortMonth } from "../words.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Moisture content that the wooden layers come to, month by month. */
export async function woodPart({ buildUp, view, id }: BuildUpPage): Promise<Part | null> {
  const shown = buildUp.wood.filter(({ section }) => section === (view?.section.name ?? section));
  const wood = shown.length > 0 ? shown : ofWettestSection(buildUp.wood);
  if (wood.length === 0) return null;
  const plot = await figure(
    toSvg(woodMoisturePlot(wood), `${id}-plot-wood`),
    "Moisture content at the wetter face of each wooden layer. The table below has the figures.",
    "plain",
  );
  const table = tableMarkup({
    caption: "Moisture content of the wood, % of dry mass, at its inner and outer face",
    columns: [
      { head: "Month", kind: "words" },
      ...wood.flatMap(({ layer }) => [
        { head: `layer ${layer + 1} inner`, kind: "figures" as const },
        { head: `layer ${layer + 1} outer`, kind: "figures" as const },
      ]),
    ],
    rows: wood[0]!.months.map(({ month }, index) => [
      shortMonth(month),
      ...wood.flatMap(({ months }) => [percentOf(months[index]!.inner), percentOf(months[index]!.outer)]),
    ]),
  });
  const over = buildUp.wood.filter(({ monthsOverLimit }) => monthsOverLimit > 0);
  const words =
    over.length === 0
      ? "By vapour alone no wood passes 20 % in any month; water that is built in is told apart."
      : over
          .map(
            ({ layer, name, section, monthsOverLimit }) =>
              `Layer ${layer + 1}, ${name}${section === "whole" ? "" : ` (${section})`}: over 20 % in ${monthsOverLimit} ${monthsOverLimit === 1 ? "month" : "months"}.`,
          )
          .join(" ");
  return {
    key: "wood",
    heading: "Moisture of the wood",
    body: html`<p>${words} What the wood would come to if the month lasted: an equilibrium overstates short wet spells.</p><div class="pair">${plot}${table}</div>`,
  };
}

/** Where the governing way through has no wood: the way through whose wood comes to most. */
function ofWettestSection(wood: readonly WoodResult[]): WoodResult[] {
  const [wettest] = byMoisture(wood);
  return wood.filter(({ section }) => section === wettest?.section);
}

const PER_CENT = 100;

function percentOf(fraction: number): string {
  return fixed(fraction * PER_CENT, 1);
}
