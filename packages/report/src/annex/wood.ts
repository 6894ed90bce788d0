import { type BuildUpResult, TRACE, type WoodResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, gramsPerArea, PER_CENT } from "../numbers.ts";
import { woodOfPath } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { pathWords, shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** Moisture content of the wooden layers, month by month. */
export function woodPart({ buildUp, view }: AnnexOf): Part | null {
  const shown = view === null ? buildUp.wood : woodOfPath(view);
  const wood = shown.length > 0 ? shown : ofWettestSection(buildUp.wood);
  if (wood.length === 0) return null;
  const table = tableMarkup({
    caption: "Moisture content of the wood, % of dry mass, at its inner and outer face",
    columns: [
      wordsUnder("Month"),
      ...wood.flatMap((layer) => [
        figuresUnder(`${headOf(layer, wood)} inner`),
        figuresUnder(`${headOf(layer, wood)} outer`),
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
      ? `No wood exceeds 20 % in any month; construction moisture is treated separately.${besideWater(buildUp)}`
      : over
          .map(
            ({ layer, name, sectionId, monthsOverLimit }) =>
              `Layer ${layer + 1}, ${name}${sectionId.kind === "whole" ? "" : ` (${pathWords(sectionId)})`}: over 20 % in ${monthsOverLimit} ${monthsOverLimit === 1 ? "month" : "months"}.`,
          )
          .join(" ");
  return {
    heading: "Wood moisture",
    body: html`<p>${words} Equilibrium moisture content overstates short wet spells.</p><p class="aside">u = 18 / W × (K·φ / (1 − K·φ) + (K1·K·φ + 2·K1·K2·K²·φ²) / (1 + K1·K·φ + K1·K2·K²·φ²)) with W = 349 + 1.29 θ + 0.0135 θ², K = 0.805 + 0.000736 θ − 0.00000273 θ², K1 = 6.27 − 0.00938 θ − 0.000303 θ², K2 = 1.91 + 0.0407 θ − 0.000293 θ²; θ in °C, at least −1.1; φ as a fraction.</p>${table}${others(buildUp.wood, wood)}`,
  };
}

/** Water that condenses beside the wood, which the equilibrium with the air does not include. */
function besideWater({ moisture }: BuildUpResult): string {
  const most = Math.max(0, ...(moisture?.sections ?? []).map(({ withinMonth }) => withinMonth.peak.amount));
  return most > TRACE ? ` Up to ${gramsPerArea(most)} of condensate lies beside it, which this does not count.` : "";
}

/** A layer by its number, with its path if another column has the same number. */
function headOf(layer: WoodResult, shown: readonly WoodResult[]): string {
  const isTwice = shown.some((other) => other !== layer && other.layer === layer.layer);
  return `layer ${layer.layer + 1}${isTwice ? ` ${pathWords(layer.sectionId)}` : ""}`;
}

/** Wood on the other paths: the month in which each is wettest. */
function others(all: readonly WoodResult[], shown: readonly WoodResult[]): Html | null {
  const rest = all.filter((wood) => !shown.includes(wood));
  if (rest.length === 0) return null;
  return tableMarkup({
    caption: "Wood along the other paths: its wettest month",
    columns: [
      wordsUnder("Wood"),
      wordsUnder("Path"),
      wordsUnder("Wettest month"),
      figuresUnder("Moisture then", "% of dry mass"),
      figuresUnder("Months over 20 %"),
    ],
    rows: rest.map((wood) => {
      const wettest = wettestMonth(wood);
      return [
        `${wood.layer + 1} ${wood.name}`,
        pathWords(wood.sectionId),
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

/** If the governing path has no wood: the path with the wettest wood. */
function ofWettestSection(wood: readonly WoodResult[]): WoodResult[] {
  const [wettest] = byMoisture(wood);
  return wood.filter(({ sectionIndex }) => sectionIndex === wettest?.sectionIndex);
}

function percentOf(fraction: number): string {
  return fixed(fraction * PER_CENT, 1);
}

/** Wooden layers, the wettest first. */
function byMoisture(wood: readonly WoodResult[]): WoodResult[] {
  const most = ({ months }: WoodResult): number =>
    Math.max(...months.map(({ inner, outer }) => Math.max(inner, outer)));
  return [...wood].sort((one, other) => most(other) - most(one));
}
