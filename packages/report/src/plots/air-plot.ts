import type { MonthOfAir } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { fixed, PER_CENT } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { PLOT_CONFIG, PLOT_SCHEMA, type Plot } from "./plot.ts";

/** Twelve months of one air, under the name it has in the key. */
export interface NamedAir {
  name: string;
  months: readonly MonthOfAir[];
}

/**
 * Temperature and relative humidity of the outdoor air, and of a room beside it, over the twelve months.
 *
 * @param airs - one or two airs, outdoors first
 * @param title - what the plot is called
 * @returns the plot, two small fields
 */
export function airPlot(airs: readonly NamedAir[], title: string): Plot {
  const rows = airs.flatMap(({ name, months }) =>
    months.map(({ month, temperature, relativeHumidity }) => ({
      air: name,
      month: month.slice(0, 3),
      temperature,
      humidity: relativeHumidity * PER_CENT,
    })),
  );
  const months = airs[0]?.months.map(({ month }) => month.slice(0, 3)) ?? [];
  const names = airs.map(({ name }) => name);
  const scale = (range: readonly unknown[]): object => ({ domain: names, range: range.slice(0, names.length) });
  const legend = airs.length > 1 ? { orient: "bottom", title: null } : null;
  const field = (name: string, unit: string, domain: number[] | null): object => ({
    width: 330,
    height: 120,
    mark: { type: "line", strokeWidth: 2.5 },
    encoding: {
      x: {
        field: "month",
        type: "ordinal",
        sort: months,
        scale: { type: "point", padding: 0.3 },
        axis: { title: null, labelAngle: 0, values: months.filter((_, index) => index % 2 === 0) },
      },
      y: {
        field: name,
        type: "quantitative",
        scale: domain ? { domain } : { zero: false, nice: true },
        axis: { title: unit, tickCount: 4 },
      },
      color: { field: "air", type: "nominal", scale: scale([PALETTE.vapour.light, PALETTE.temperature.light]), legend },
      strokeDash: {
        field: "air",
        type: "nominal",
        scale: scale([
          [6, 4],
          [1, 0],
        ]),
        legend,
      },
    },
  });
  const spec = {
    $schema: PLOT_SCHEMA,
    padding: 4,
    config: PLOT_CONFIG,
    data: { values: rows },
    spacing: 14,
    vconcat: [field("temperature", "°C", null), field("humidity", "% RH", [0, 100])],
  } as unknown as TopLevelSpec;
  return { title, description: airs.map(rangeWords).join(" "), spec };
}

function rangeWords({ name, months }: NamedAir): string {
  const temperatures = months.map(({ temperature }) => temperature);
  const humidities = months.map(({ relativeHumidity }) => relativeHumidity * PER_CENT);
  return `${name}: ${fixed(Math.min(...temperatures), 1)} to ${fixed(Math.max(...temperatures), 1)} °C, ${fixed(
    Math.min(...humidities),
    0,
  )} to ${fixed(Math.max(...humidities), 0)} % relative humidity.`;
}
