import type { TrappedWaterResult } from "@warmside/core";
import { GRAMS_PER_KILOGRAM, gramsPerArea } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { layout, nominal, type Plot, type PlotKind, type Row, SOLID_AND_DASHED } from "./plot.ts";

/**
 * Water that was put into a layer, and how much of it is held there and elsewhere at the end of each month.
 *
 * @param water - a layer that starts wet
 * @returns the plot
 */
export function trappedWaterPlot(water: TrappedWaterResult): Plot {
  const inLayer = [water.amount, ...water.held].map((held, month) => point(month, held, IN_LAYER));
  const elsewhere = [0, ...water.heldElsewhere].map((held, month) => point(month, held, ELSEWHERE));
  const end = water.daysToDry === null ? "Not dry within ten years." : `Dry in month ${water.held.length}.`;
  return {
    title: `Water in layer ${water.layer + 1}, month by month`,
    description: `Falls from ${gramsPerArea(water.amount)} at the beginning of ${water.startMonth}. ${end}`,
    kind: TRAPPED_WATER,
    data: { points: water.mostHeldElsewhere > 0 ? [...inLayer, ...elsewhere] : inLayer },
  };
}

const IN_LAYER = "in the layer";
const ELSEWHERE = "elsewhere";

function point(month: number, held: number, place: string): Row {
  return { month, grams: held * GRAMS_PER_KILOGRAM, place };
}

const TRAPPED_WATER: PlotKind = {
  spec: {
    ...layout(),
    width: 434,
    height: 150,
    data: { name: "points" },
    mark: { type: "line", strokeWidth: 2.5 },
    encoding: {
      x: {
        field: "month",
        type: "quantitative",
        scale: { nice: false, zero: true },
        axis: { title: "months from the start", tickCount: 8 },
      },
      y: {
        field: "grams",
        type: "quantitative",
        scale: { zero: true, nice: 5 },
        axis: { title: "water held, g/m²", grid: true },
      },
      color: nominal("place", [IN_LAYER, ELSEWHERE], [PALETTE.water.light, PALETTE.temperature.light]),
      strokeDash: nominal("place", [IN_LAYER, ELSEWHERE], SOLID_AND_DASHED),
    },
  },
};
