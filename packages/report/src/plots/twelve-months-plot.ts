import { dewPoint, type NodeState, type SectionMonth } from "@warmside/core";
import { MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { shortMonth } from "../words.ts";
import { layout, type Plot, type PlotKind, type Row, type X, type Y } from "./plot.ts";
import { thinLine } from "./thin-line.ts";

/**
 * Temperature and dew point through the governing path in each of the twelve months.
 *
 * @param view - the section
 * @returns one plot of twelve small ones, January to December
 */
export function twelveMonthsPlot(view: SectionView): Plot {
  const end = (view.deciding.nodes.at(-1)?.depth ?? 0) * MILLIMETRES_PER_METRE;
  return {
    title: "Temperature and dew point through the section in each month",
    description: `Twelve small plots, January to December, room on the left, the other side on the right. The solid line is the temperature, the dashed line the dew point. ${wetMonths(view)}`,
    kind: TWELVE_MONTHS,
    data: { rows: view.section.months.flatMap((month) => rowsOf(month, end)) },
  };
}

function rowsOf(month: SectionMonth, end: number): Row[] {
  const { nodes, indoor, outdoor, planes } = month;
  const name = shortMonth(month.month);
  const margin = end * AIR_SHARE;
  const depth = (node: NodeState): number => node.depth * MILLIMETRES_PER_METRE;
  const line = (kind: string, inside: number, ofNode: (node: NodeState) => number, outside: number): Row[] =>
    thinLine(
      [
        { at: -margin, value: inside },
        ...nodes.map((node) => ({ at: depth(node), value: ofNode(node) })),
        { at: end + margin, value: outside },
      ],
      SMALLEST_BEND,
    ).map((point) => ({ month: name, kind, ...point }));
  const dew = ({ vapourPressure }: { vapourPressure: number }): number => dewPoint(vapourPressure);
  const water = planes.filter((plane) => plane.change !== 0 || plane.held > 0);
  return [
    { month: name, kind: "edge", at: 0, value: null },
    { month: name, kind: "edge", at: end, value: null },
    ...line("temperature", indoor.temperature, ({ temperature }) => temperature, outdoor.temperature),
    ...line("dew point", dew(indoor), dew, dew(outdoor)),
    ...water.map(({ node }) => ({
      month: name,
      kind: "water",
      at: depth(nodes[node]!),
      value: nodes[node]!.temperature,
    })),
  ];
}

const AIR_SHARE = 0.11;
/** Bends smaller than this cannot be seen in a plot this small [K]. */
const SMALLEST_BEND = 0.05;

function wetMonths(view: SectionView): string {
  const wet = view.section.months
    .filter(({ planes }) => planes.some(({ change }) => change > 0))
    .map(({ month }) => month);
  return wet.length === 0
    ? "The lines do not meet in any month."
    : `They meet, and water condenses, in ${wet.join(", ")}.`;
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

const x: X = {
  field: "at",
  type: "quantitative",
  scale: { nice: false, zero: false },
  axis: { title: "mm", tickCount: 3 },
};
const y: Y = {
  field: "value",
  type: "quantitative",
  scale: { nice: 5, zero: false },
  axis: { title: "°C", tickCount: 4, grid: true },
};

function ofKind(kind: string): { transform: [{ filter: { field: string; equal: string } }] } {
  return { transform: [{ filter: { field: "kind", equal: kind } }] };
}

const TWELVE_MONTHS: PlotKind = {
  size: { width: 442, height: 498 },
  spec: {
    ...layout({ left: 40, right: 12, top: 34, bottom: 40 }),
    data: { name: "rows" },
    facet: {
      field: "month",
      type: "nominal",
      sort: MONTHS,
      header: {
        title: null,
        labelFontSize: 13,
        labelFontWeight: "bold",
        labelPadding: 4,
        labelColor: PALETTE.ink.light,
      },
    },
    columns: 3,
    bounds: "flush",
    spacing: { row: 62, column: 44 },
    spec: {
      width: 118,
      height: 78,
      layer: [
        { ...ofKind("edge"), mark: { type: "rule", color: PALETTE.rule.light }, encoding: { x } },
        {
          ...ofKind("temperature"),
          mark: { type: "line", strokeWidth: 2, color: PALETTE.temperature.light },
          encoding: { x, y },
        },
        {
          ...ofKind("dew point"),
          mark: { type: "line", strokeWidth: 2, color: PALETTE.vapour.light, strokeDash: [5, 3] },
          encoding: { x, y },
        },
        {
          ...ofKind("water"),
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
  },
};
