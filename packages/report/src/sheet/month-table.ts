import type { BuildUpResult, SectionMonth, WoodResult } from "@warmside/core";
import { type Html, html, markup } from "../html.ts";
import { fixed, GRAMS_PER_KILOGRAM, PER_CENT, signed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { placeOf } from "../places.ts";
import { type SectionView, woodOfPath } from "../section-view.ts";
import { type Column, figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { symbolColumn } from "../terms/terms.ts";
import { shortMonth } from "../words.ts";

/**
 * The twelve months from the start month at the governing interface: temperature, saturation and vapour pressure,
 * condensation rate gc and accumulated moisture Ma with a bar, the factor required of the inside surface, and the
 * moisture content of the wettest wood.
 *
 * @param view - the governing path
 * @returns the table
 */
export function monthTable(view: SectionView): Html {
  const { buildUp } = view;
  const node = governingNode(view);
  const wood = wettestWood(buildUp, view);
  const wet = view.wetNodes.length > 0;
  const most = Math.max(0, ...view.waterYear.map(total));
  const several = view.wetNodes.length > 1;
  const columns: Column[] = [
    wordsUnder("Month"),
    figuresUnder("θ", "°C"),
    symbolColumn("saturation pressure"),
    symbolColumn("vapour pressure"),
    ...(wet
      ? [
          symbolColumn("condensation rate", "g/m²"),
          figuresUnder(several ? "Ma, all" : "Ma", "g/m²"),
          wordsUnder(html`<span class="hidden">bar of Ma</span>`),
        ]
      : []),
    figuresUnder("fRsi required"),
    ...(wood === null ? [] : [figuresUnder(`Wood, layer ${wood.layer + 1}`, "%")]),
  ];
  return tableMarkup({
    caption: `Month by month ${placeOf(view, node)}${view.section.name === "whole" ? "" : `, ${view.section.name}`}`,
    columns,
    rows: view.waterYear.map((month) => {
      const state = month.nodes[node]!;
      const plane = month.planes.find((entry) => entry.node === node);
      const required = buildUp.surface?.required.find((entry) => entry.month === month.month)?.mould ?? null;
      const ofWood = wood?.months.find((entry) => entry.month === month.month);
      return [
        shortMonth(month.month),
        fixed(state.temperature, 2),
        fixed(state.saturationPressure, 1),
        fixed(state.vapourPressure, 1),
        ...(wet
          ? [
              signed((plane?.change ?? 0) * GRAMS_PER_KILOGRAM, 1),
              fixed(total(month) * GRAMS_PER_KILOGRAM, 1),
              bar(total(month), most),
            ]
          : []),
        required === null ? "–" : fixed(required, 3),
        ...(ofWood === undefined ? [] : [fixed(Math.max(ofWood.inner, ofWood.outer) * PER_CENT, 1)]),
      ];
    }),
    marked: view.waterYear.flatMap(({ month }, index) => (month === view.deciding.month ? [index] : [])),
    note: html`<p class="aside">${wet ? `gc condensation rate${several ? ` at that interface` : ""}, Ma accumulated moisture at the month’s end. ` : "No condensation in any month: the interface nearest to it. "}The critical month, ${view.deciding.month}, is marked.${wood === null ? null : " Wood: equilibrium moisture content at its wetter face."}</p>`,
  });
}

function total({ planes }: SectionMonth): number {
  return planes.reduce((sum, { held }) => sum + held, 0);
}

/**
 * The node shown in the month table: the one with most water, or nearest to saturation.
 *
 * @param view - the governing path
 * @returns the node's number
 */
export function governingNode(view: SectionView): number {
  const fullest = new Map<number, number>();
  for (const { planes } of view.section.months)
    for (const { node, held } of planes) fullest.set(node, Math.max(held, fullest.get(node) ?? 0));
  const [first] = [...fullest].sort(([, one], [, other]) => other - one);
  return first?.[0] ?? view.section.leastMargin?.node ?? 0;
}

/** The wooden layer with the highest moisture content on this path, or in the build-up. */
function wettestWood({ wood }: BuildUpResult, view: SectionView): WoodResult | null {
  const own = woodOfPath(view);
  const most = ({ months }: WoodResult): number =>
    Math.max(...months.map(({ inner, outer }) => Math.max(inner, outer)));
  return (own.length > 0 ? own : wood).reduce<WoodResult | null>(
    (wettest, one) => (wettest === null || most(one) > most(wettest) ? one : wettest),
    null,
  );
}

/** A small bar for the water held; decorative, since the figure is beside it. */
function bar(amount: number, most: number): Html {
  const width = most > 0 ? Math.round((amount / most) * BAR_WIDTH) : 0;
  return markup(
    `<svg class="bar" viewBox="0 0 ${BAR_WIDTH} 8" width="${BAR_WIDTH}" height="8" aria-hidden="true"><rect width="${width}" height="8" fill="${PALETTE.water.light}"/></svg>`,
  );
}

const BAR_WIDTH = 44;
