import { MONTH_NAMES, type TrappedWaterResult } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { GRAMS_PER_KILOGRAM, gramsPerArea } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { FIT, PLOT_CONFIG, PLOT_HEIGHT, PLOT_SCHEMA, PLOT_WIDTH, type Plot } from "./plot.ts";

/**
 * Water that was put into a layer, and how much of it is held there and elsewhere at the end of each month.
 *
 * @param water - a layer that starts wet
 * @returns the plot
 */
export function trappedWaterPlot(water: TrappedWaterResult): Plot {
  const inLayer = [water.amount, ...water.held].map((held, month) => point(month, held, IN_LAYER));
  const elsewhere = [0, ...water.heldElsewhere].map((held, month) => point(month, held, ELSEWHERE));
  const names = water.mostHeldElsewhere > 0 ? [IN_LAYER, ELSEWHERE] : [IN_LAYER];
  const scale = (range: readonly unknown[]): object => ({ domain: names, range: range.slice(0, names.length) });
  const legend = names.length > 1 ? { orient: "bottom", title: null } : null;
  const last = water.held.length;
  const spec = {
    $schema: PLOT_SCHEMA,
    width: PLOT_WIDTH,
    height: PLOT_HEIGHT * LOW,
    autosize: FIT,
    padding: 4,
    config: PLOT_CONFIG,
    data: { values: names.length > 1 ? [...inLayer, ...elsewhere] : inLayer },
    mark: { type: "line", strokeWidth: 2.5 },
    encoding: {
      x: {
        field: "month",
        type: "quantitative",
        scale: { domain: [0, last], nice: false },
        axis: { title: `months after the beginning of ${water.startMonth}`, values: ticks(last) },
      },
      y: { field: "grams", type: "quantitative", scale: { zero: true, nice: true }, axis: { title: "g/m²" } },
      color: {
        field: "place",
        type: "nominal",
        scale: scale([PALETTE.water.light, PALETTE.temperature.light]),
        legend,
      },
      strokeDash: { field: "place", type: "nominal", scale: scale([SOLID, DASHED]), legend },
    },
  } as unknown as TopLevelSpec;
  const end = water.daysToDry === null ? "Not dry within ten years." : `Dry in month ${last}.`;
  return {
    title: `Water held in layer ${water.layer + 1}, month by month`,
    description: `Falls from ${gramsPerArea(water.amount)} at the beginning of ${water.startMonth}. ${end}`,
    spec,
  };
}

const LOW = 0.7;
const IN_LAYER = "in the layer";
const ELSEWHERE = "elsewhere";
const SOLID = [1, 0];
const DASHED = [6, 4];

function point(month: number, held: number, place: string): { month: number; grams: number; place: string } {
  return { month, grams: held * GRAMS_PER_KILOGRAM, place };
}

/** Ticks at whole years, at quarters where the time is short. */
function ticks(last: number): number[] {
  const year = MONTH_NAMES.length;
  const step = last > 2 * year ? year : 3;
  return Array.from({ length: Math.floor(last / step) + 1 }, (_, index) => index * step);
}
