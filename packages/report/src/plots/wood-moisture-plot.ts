import { WOOD_MOISTURE_LIMIT, type WoodResult } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { shorten } from "../escape.ts";
import { PER_CENT } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { FIT, PLOT_CONFIG, PLOT_HEIGHT, PLOT_SCHEMA, PLOT_WIDTH, type Plot } from "./plot.ts";

/**
 * Moisture content that wood would come to at its wetter face, month by month, against the 20 % limit; of many layers
 * the eight that come to most.
 *
 * @param wood - wooden layers of one section
 * @returns the plot
 */
export function woodMoisturePlot(wood: readonly WoodResult[]): Plot {
  const wettest = new Set(byMoisture(wood).slice(0, MOST_LINES));
  const drawn = wood.filter((layer) => wettest.has(layer));
  const months = wood[0]?.months.map(({ month }) => month.slice(0, 3)) ?? [];
  const rows = drawn.flatMap((layer) =>
    layer.months.map(({ month, inner, outer }) => ({
      month: month.slice(0, 3),
      layer: nameOf(layer, drawn),
      moisture: Math.max(inner, outer) * PER_CENT,
    })),
  );
  const highest = Math.max(LIMIT + 4, ...rows.map(({ moisture }) => moisture));
  const names = drawn.map((layer) => nameOf(layer, drawn));
  const scale = (range: readonly unknown[]): object => ({
    domain: names,
    range: names.map((_, index) => range[index % range.length]),
  });
  const spec = {
    $schema: PLOT_SCHEMA,
    width: PLOT_WIDTH,
    height: PLOT_HEIGHT * 0.8,
    autosize: FIT,
    padding: 4,
    config: PLOT_CONFIG,
    layer: [
      {
        data: { values: [{ moisture: LIMIT, words: "20 %: decay can begin above", month: "Jan" }] },
        layer: [
          {
            mark: { type: "rule", color: PALETTE.ink.light, strokeWidth: 1.5 },
            encoding: { y: { field: "moisture", type: "quantitative" } },
          },
          {
            mark: { type: "text", align: "left", dx: 4, dy: -8 },
            encoding: { x: { value: 0 }, y: { field: "moisture", type: "quantitative" }, text: { field: "words" } },
          },
        ],
      },
      {
        data: { values: rows },
        mark: { type: "line", strokeWidth: 2.5, point: { filled: true, size: 45 } },
        encoding: {
          x: {
            field: "month",
            type: "ordinal",
            sort: months,
            scale: { type: "point", padding: 0.4 },
            axis: { title: null, labelAngle: 0 },
          },
          y: {
            field: "moisture",
            type: "quantitative",
            scale: { domain: [0, highest], nice: true },
            axis: { title: "% of dry mass" },
          },
          color: {
            field: "layer",
            type: "nominal",
            scale: scale(COLOURS),
            legend: { columns: 1, symbolType: "stroke", symbolSize: 420 },
          },
          strokeDash: { field: "layer", type: "nominal", scale: scale(DASHES), legend: { symbolType: "stroke" } },
        },
      },
    ],
  } as unknown as TopLevelSpec;
  return {
    title: "Moisture content of the wood, month by month",
    description: `One line for ${drawn.length < wood.length ? `the ${MOST_LINES} wettest wooden layers, each` : "each wooden layer"} at its wetter face, with the limit of 20 %. Highest: ${Math.max(
      0,
      ...rows.map(({ moisture }) => moisture),
    ).toFixed(1)} %.`,
    spec,
  };
}

/** Lines that can be told apart in one plot. */
const MOST_LINES = 8;

/** Wooden layers, the one that comes to most first. */
export function byMoisture(wood: readonly WoodResult[]): WoodResult[] {
  const most = ({ months }: WoodResult): number =>
    Math.max(...months.map(({ inner, outer }) => Math.max(inner, outer)));
  return [...wood].sort((one, other) => most(other) - most(one));
}
/** Moisture content above which decay can begin, % of dry mass. */
const LIMIT = WOOD_MOISTURE_LIMIT * PER_CENT;
const COLOURS = [
  PALETTE.temperature.light,
  PALETTE.vapour.light,
  PALETTE.waterThird.light,
  PALETTE.faintInk.light,
  PALETTE.waterFourth.light,
];
const DASHES = [
  [1, 0],
  [7, 4],
  [2, 3],
  [10, 3, 2, 3],
  [4, 2],
];
const LONGEST_NAME = 40;

/** A layer by number and name; with its way through where another line has both. */
function nameOf(wood: WoodResult, drawn: readonly WoodResult[]): string {
  const { layer, name, section } = wood;
  const isTwice = drawn.some((other) => other !== wood && other.layer === layer && other.name === name);
  return `${layer + 1} ${shorten(name, LONGEST_NAME)}${isTwice ? ` (${shorten(section, LONGEST_NAME)})` : ""}`;
}
