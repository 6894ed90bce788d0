import { type BuildUpResult, TRACE, type WoodResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, gramsPerArea, PER_CENT } from "../numbers.ts";
import { toSvg } from "../plots/to-svg.ts";
import { byMoisture, woodMoisturePlot } from "../plots/wood-moisture-plot.ts";
import { tableMarkup } from "../table.ts";
import { shortMonth } from "../words.ts";
import { figure } from "./figure.ts";
import type { BuildUpPage, Part } from "./part.ts";

/** Moisture content that the wooden layers come to, month by month. */
export async function woodPart({ buildUp, view, id }: BuildUpPage): Promise<Part | null> {
  const governing = view === null ? null : buildUp.moisture?.governing;
  const shown = buildUp.wood.filter(({ sectionIndex }) => sectionIndex === (governing ?? sectionIndex));
  const wood = shown.length > 0 ? shown : ofWettestSection(buildUp.wood);
  if (wood.length === 0) return null;
  const plot = await figure(
    toSvg(woodMoisturePlot(wood), `${id}-plot-wood`),
    "Moisture content at the wetter face of each wooden layer. Its table has the figures.",
    "plain",
  );
  const table = tableMarkup({
    caption: "Moisture content of the wood, % of dry mass, at its inner and outer face",
    columns: [
      { head: "Month", kind: "words" },
      ...wood.flatMap((layer) => [
        { head: `${headOf(layer, wood)} inner`, kind: "figures" as const },
        { head: `${headOf(layer, wood)} outer`, kind: "figures" as const },
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
      ? `By vapour alone no wood passes 20 % in any month; water that is built in is told apart.${besideWater(buildUp)}`
      : over
          .map(
            ({ layer, name, section, monthsOverLimit }) =>
              `Layer ${layer + 1}, ${name}${section === "whole" ? "" : ` (${section})`}: over 20 % in ${monthsOverLimit} ${monthsOverLimit === 1 ? "month" : "months"}.`,
          )
          .join(" ");
  return {
    key: "wood",
    heading: "Moisture of the wood",
    body: html`<p>${words} What the wood would come to if the month lasted: an equilibrium overstates short wet spells.</p><div class="pair">${plot}${table}</div>${others(buildUp.wood, wood)}`,
  };
}

/** Water that condenses beside the wood, which its equilibrium with the air does not count. */
function besideWater({ moisture }: BuildUpResult): string {
  const most = Math.max(0, ...(moisture?.sections ?? []).map(({ withinMonth }) => withinMonth.peak.amount));
  return most > TRACE
    ? ` Up to ${gramsPerArea(most)} of water stands beside it in the section, which this does not count.`
    : "";
}

/** A layer by its number, with its way through where another column has the same number. */
function headOf(layer: WoodResult, shown: readonly WoodResult[]): string {
  const isTwice = shown.some((other) => other !== layer && other.layer === layer.layer);
  return `layer ${layer.layer + 1}${isTwice ? ` ${layer.section}` : ""}`;
}

/** Wood of the other ways through: the month in which each comes to most. */
function others(all: readonly WoodResult[], shown: readonly WoodResult[]): Html | null {
  const rest = all.filter((wood) => !shown.includes(wood));
  if (rest.length === 0) return null;
  return tableMarkup({
    caption: "Wood along the other ways through: its wettest month",
    columns: [
      { head: "Wood", kind: "words" },
      { head: "Way through", kind: "words" },
      { head: "Wettest month", kind: "words" },
      { head: "Moisture then", unit: "% of dry mass", kind: "figures" },
      { head: "Months over 20 %", kind: "figures" },
    ],
    rows: rest.map((wood) => {
      const wettest = wettestMonth(wood);
      return [
        `${wood.layer + 1} ${wood.name}`,
        wood.section,
        wettest.month,
        percentOf(Math.max(wettest.inner, wettest.outer)),
        fixed(wood.monthsOverLimit, 0),
      ];
    }),
  });
}

function wettestMonth({ months }: WoodResult): WoodResult["months"][number] {
  return months.reduce((most, month) =>
    Math.max(month.inner, month.outer) > Math.max(most.inner, most.outer) ? month : most,
  );
}

/** Where the governing way through has no wood: the way through whose wood comes to most. */
function ofWettestSection(wood: readonly WoodResult[]): WoodResult[] {
  const [wettest] = byMoisture(wood);
  return wood.filter(({ sectionIndex }) => sectionIndex === wettest?.sectionIndex);
}

function percentOf(fraction: number): string {
  return fixed(fraction * PER_CENT, 1);
}
