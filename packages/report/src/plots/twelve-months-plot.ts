import { dewPoint, type NodeState, type SectionMonth } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { grams } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { shortMonth } from "../words.ts";
import { along, layerBands } from "./layer-bands.ts";
import { PLOT_CONFIG, PLOT_SCHEMA, type Plot } from "./plot.ts";
import { thinLine } from "./thin-line.ts";

/**
 * Temperature and dew point through the governing section in each of the twelve months.
 *
 * @param view - the section
 * @returns one plot of twelve small ones, January to December
 */
export function twelveMonthsPlot(view: SectionView): Plot {
  const stretch = layerBands(view, "depth");
  const rows = view.section.months.flatMap((month) => rowsOf(month, stretch.from, stretch.to));
  const values = rows.flatMap(({ value }) => (value === undefined ? [] : [value]));
  const y = {
    field: "value",
    type: "quantitative",
    scale: { domain: [Math.min(...values), Math.max(...values)], nice: true, zero: false },
    axis: { title: null, tickCount: 4 },
  };
  const x = {
    field: "at",
    type: "quantitative",
    scale: { domain: [stretch.from, stretch.to], nice: false, zero: false },
    axis: { title: null, values: [0, Math.round(stretch.end)] },
  };
  const line = (kind: string, colour: string, dash: number[]): object => ({
    transform: [{ filter: `datum.kind === '${kind}'` }],
    mark: { type: "line", strokeWidth: 2, color: colour, strokeDash: dash },
    encoding: { x, y },
  });
  const spec = {
    $schema: PLOT_SCHEMA,
    padding: 4,
    config: PLOT_CONFIG,
    data: { values: rows },
    facet: { field: "month", type: "nominal", sort: view.section.months.map(heading), title: null },
    columns: 3,
    spacing: { row: 14, column: 16 },
    spec: {
      width: 132,
      height: 92,
      layer: [
        ...["from", "end"].map((edge) => ({
          transform: [{ filter: `datum.kind === 'edge-${edge}'` }],
          mark: { type: "rule", color: PALETTE.rule.light },
          encoding: { x },
        })),
        line("temperature", PALETTE.temperature.light, [1, 0]),
        line("dew point", PALETTE.vapour.light, [5, 3]),
        {
          transform: [{ filter: "datum.kind === 'water'" }],
          mark: {
            type: "point",
            filled: true,
            size: 60,
            opacity: 1,
            color: PALETTE.water.light,
            stroke: PALETTE.paper.light,
            strokeWidth: 1,
          },
          encoding: { x, y },
        },
      ],
    },
  } as unknown as TopLevelSpec;
  return {
    title: "Temperature and dew point through the section in each month",
    description: `Twelve small plots, January to December, room on the left, outside on the right. The whole line is the temperature, the dashed line the dew point. ${wetMonths(view)}`,
    spec,
  };
}

interface Row {
  month: string;
  kind: string;
  at: number;
  value?: number;
}

function rowsOf(month: SectionMonth, from: number, to: number): Row[] {
  const { nodes, indoor, outdoor, planes } = month;
  const name = heading(month);
  const line = (kind: string, inside: number, ofNode: (node: NodeState) => number, outside: number): Row[] =>
    thinLine(
      [
        { at: from, value: inside },
        ...nodes.map((node) => ({ at: along(node, "depth"), value: ofNode(node) })),
        { at: to, value: outside },
      ],
      SMALLEST_BEND,
    ).map((point) => ({ month: name, kind, ...point }));
  const dew = ({ vapourPressure }: { vapourPressure: number }): number => dewPoint(vapourPressure);
  const water = planes.filter((plane) => plane.change !== 0 || plane.held > 0);
  return [
    { month: name, kind: "edge-from", at: 0 },
    { month: name, kind: "edge-end", at: along(nodes.at(-1)!, "depth") },
    ...line("temperature", indoor.temperature, ({ temperature }) => temperature, outdoor.temperature),
    ...line("dew point", dew(indoor), dew, dew(outdoor)),
    ...water.map(({ node }) => ({
      month: name,
      kind: "water",
      at: along(nodes[node]!, "depth"),
      value: nodes[node]!.temperature,
    })),
  ];
}

/** Bends smaller than this cannot be seen in a plot this small [K]. */
const SMALLEST_BEND = 0.05;

/** A month's name, and what its water does. */
function heading({ month, planes }: SectionMonth): string {
  const name = shortMonth(month);
  if (planes.length === 0) return name;
  const change = planes.reduce((sum, plane) => sum + plane.change, 0);
  return change >= 0 ? `${name}: ${grams(change)} g condense` : `${name}: ${grams(-change)} g dry`;
}

function wetMonths(view: SectionView): string {
  const wet = view.section.months
    .filter(({ planes }) => planes.some(({ change }) => change > 0))
    .map(({ month }) => month);
  return wet.length === 0
    ? "The lines do not meet in any month."
    : `They meet, and water is added, in ${wet.join(", ")}.`;
}
