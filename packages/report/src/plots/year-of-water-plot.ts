import type { TopLevelSpec } from "vega-lite";
import { GRAMS_PER_KILOGRAM, grams, gramsPerArea } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { shortPlaceOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import { FIT, PLOT_CONFIG, PLOT_HEIGHT, PLOT_SCHEMA, PLOT_WIDTH, type Plot } from "./plot.ts";

/**
 * Water held at the end of each month of the water year, by interface.
 *
 * @param view - a section in which some month is wet
 * @returns the plot
 */
export function yearOfWaterPlot(view: SectionView): Plot {
  const months = view.waterYear.map(({ month }) => month);
  const shown = mostHeld(view);
  const names = [
    ...shown.map((node) => placeName(view, node)),
    ...(view.wetNodes.length > shown.length ? [OTHERS] : []),
  ];
  const bars = view.waterYear.flatMap(({ month, planes }) =>
    planes
      .filter(({ held }) => held > 0)
      .map(({ node, held }) => ({
        month: monthStart(month),
        place: shown.includes(node) ? placeName(view, node) : OTHERS,
        rank: shown.includes(node) ? shown.indexOf(node) : shown.length,
        grams: held * GRAMS_PER_KILOGRAM,
      })),
  );
  const totals = view.waterYear.map(({ month, planes }) => {
    const held = planes.reduce((sum, plane) => sum + plane.held, 0);
    return {
      month: monthStart(month),
      grams: held * GRAMS_PER_KILOGRAM,
      words: held * GRAMS_PER_KILOGRAM < 0.05 ? "" : grams(held),
    };
  });
  const x = { field: "month", type: "ordinal", sort: months.map(monthStart), axis: { title: null, labelAngle: 0 } };
  const y = { field: "grams", type: "quantitative", axis: { title: "g/m²" } };
  const top = Math.max(1, ...totals.map((total) => total.grams)) * HEADROOM;
  const spec = {
    $schema: PLOT_SCHEMA,
    width: PLOT_WIDTH,
    height: PLOT_HEIGHT * 0.8,
    autosize: FIT,
    padding: 4,
    config: PLOT_CONFIG,
    layer: [
      {
        data: { values: bars },
        mark: { type: "bar", stroke: PALETTE.ink.light, strokeWidth: 0.7 },
        encoding: {
          x,
          y: { ...y, aggregate: "sum", scale: { domain: [0, top], nice: false } },
          color: {
            field: "place",
            type: "nominal",
            scale: { domain: names, range: COLOURS.slice(0, names.length) },
            legend: { symbolType: "square", symbolSize: 140, columns: 2 },
          },
          order: { field: "rank", type: "quantitative" },
        },
      },
      {
        data: { values: totals },
        mark: { type: "text", dy: -8, fontSize: 12 },
        encoding: { x, y, text: { field: "words" } },
      },
    ],
  } as unknown as TopLevelSpec;
  const { peak } = view.section;
  return {
    title: "Water held at the end of each month",
    description: `Twelve bars from ${months[0]} to ${months.at(-1)}. Most is held in ${peak.month ?? "no month"}: ${gramsPerArea(
      peak.amount,
    )}. ${view.section.dryBy ? `Dry by ${view.section.dryBy}.` : "It does not dry within the year."}`,
    spec,
  };
}

const HEADROOM = 1.12;
const MOST_PLACES = 3;
const OTHERS = "other places";
const COLOURS = [PALETTE.water.light, PALETTE.waterSecond.light, PALETTE.waterThird.light, PALETTE.waterFourth.light];

function placeName(view: SectionView, node: number): string {
  const place = shortPlaceOf(view, node).replace(" | ", " and ");
  return place.startsWith("in") ? place.replace("in ", "in layer ") : `between ${place}`;
}

function monthStart(month: string): string {
  return month.slice(0, 3);
}

/** The nodes that hold most at their fullest, from the room outwards. */
function mostHeld(view: SectionView): number[] {
  const fullest = (node: number): number =>
    Math.max(0, ...view.section.months.map(({ planes }) => planes.find((plane) => plane.node === node)?.held ?? 0));
  return [...view.wetNodes]
    .sort((one, other) => fullest(other) - fullest(one))
    .slice(0, MOST_PLACES)
    .sort((one, other) => one - other);
}
