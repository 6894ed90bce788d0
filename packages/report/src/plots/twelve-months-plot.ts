import { dewPoint, type NodeState, type SectionMonth } from "@warmside/core";
import { scale } from "vega";
import { fixed, MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { shortMonth } from "../words.ts";
import { layout, nominal, type Plot, type PlotKind, type Row, type X, type Y } from "./plot.ts";
import { thinLine } from "./thin-line.ts";

/**
 * Temperature and dew point through the governing path in each of the twelve months: twelve fields of one plot, which
 * share their axes. Their places are known beforehand, so that one set of marks draws them all.
 *
 * @param view - the section
 * @returns one plot of twelve small fields, January to December
 */
export function twelveMonthsPlot(view: SectionView): Plot {
  const end = (view.deciding.nodes.at(-1)?.depth ?? 0) * MILLIMETRES_PER_METRE;
  const months = view.section.months.map((month) => linesOf(month, end));
  const values = months.flatMap(({ lines }) => lines.flatMap(({ points }) => points.map(({ value }) => value)));
  const degrees = scale("linear")()
    .domain([Math.min(...values), Math.max(...values)])
    .nice(DEGREE_TICKS)
    .range([FIELD.height, 0]);
  const depth = scale("linear")()
    .domain([-end * AIR_SHARE, end * (1 + AIR_SHARE)])
    .range([0, FIELD.width]);
  const degreeTicks = degrees.ticks(DEGREE_TICKS) as number[];
  const depthTicks = (depth.ticks(DEPTH_TICKS) as number[]).filter((at) => at >= 0 && at <= end);
  const fields = months.map((month, index) => ({ ...month, ...cornerOf(index) }));
  return {
    title: "Temperature and dew point through the section in each month",
    description: `Twelve small plots, January to December, room on the left, the other side on the right. The solid line is the temperature, the dashed line the dew point. ${wetMonths(view)}`,
    kind: TWELVE_MONTHS,
    data: {
      fields: fields.map(({ left, top }) => ({ x: left, y: top, x2: left + FIELD.width, y2: top + FIELD.height })),
      rules: fields.flatMap(({ left, top }) => [
        ...degreeTicks.map((at) => ({ x: left, y: top + degrees(at), x2: left + FIELD.width, y2: top + degrees(at) })),
        ...[0, end].map((at) => ({ x: left + depth(at), y: top, x2: left + depth(at), y2: top + FIELD.height })),
      ]),
      words: fields.flatMap(({ name, left, top }) => [
        { x: left + FIELD.width / 2, y: top - 6, words: name },
        { x: left - 16, y: top - 10, words: "°C" },
        { x: left + FIELD.width / 2, y: top + FIELD.height + 30, words: "mm" },
        ...depthTicks.map((at) => ({ x: left + depth(at), y: top + FIELD.height + 15, words: fixed(at, 0) })),
      ]),
      degrees: fields.flatMap(({ left, top }) =>
        degreeTicks.map((at) => ({ x: left - 5, y: top + degrees(at) + 4, words: fixed(at, 0) })),
      ),
      lines: fields.flatMap(({ name, lines, left, top }) =>
        lines.flatMap(({ line, points }) =>
          points.map(({ at, value }) => ({
            x: left + depth(at),
            y: top + degrees(value),
            at,
            line,
            path: `${name} ${line}`,
          })),
        ),
      ),
      water: fields.flatMap(({ water, left, top }) =>
        water.map(({ at, value }): Row => ({ x: left + depth(at), y: top + degrees(value) })),
      ),
    },
  };
}

const FIELD = { width: 116, height: 78 };
const COLUMNS = 3;
const DEGREE_TICKS = 4;
const DEPTH_TICKS = 4;
const AIR_SHARE = 0.11;
/** Bends smaller than this cannot be seen in a plot this small [K]. */
const SMALLEST_BEND = 0.05;
const TEMPERATURE = "temperature";
const DEW_POINT = "dew point";

function cornerOf(index: number): { left: number; top: number } {
  return { left: (index % COLUMNS) * (FIELD.width + 44), top: Math.floor(index / COLUMNS) * (FIELD.height + 62) };
}

interface Point {
  at: number;
  value: number;
}

function linesOf(
  { month, nodes, indoor, outdoor, planes }: SectionMonth,
  end: number,
): { name: string; lines: { line: string; points: Point[] }[]; water: Point[] } {
  const depth = (node: NodeState): number => node.depth * MILLIMETRES_PER_METRE;
  const line = (inside: number, ofNode: (node: NodeState) => number, outside: number): Point[] =>
    thinLine(
      [
        { at: -end * AIR_SHARE, value: inside },
        ...nodes.map((node) => ({ at: depth(node), value: ofNode(node) })),
        { at: end * (1 + AIR_SHARE), value: outside },
      ],
      SMALLEST_BEND,
    );
  const dew = ({ vapourPressure }: { vapourPressure: number }): number => dewPoint(vapourPressure);
  const wet = planes.filter((plane) => plane.change !== 0 || plane.held > 0);
  return {
    name: shortMonth(month),
    lines: [
      { line: TEMPERATURE, points: line(indoor.temperature, ({ temperature }) => temperature, outdoor.temperature) },
      { line: DEW_POINT, points: line(dew(indoor), dew, dew(outdoor)) },
    ],
    water: wet.map(({ node }) => ({ at: depth(nodes[node]!), value: nodes[node]!.temperature })),
  };
}

function wetMonths(view: SectionView): string {
  const wet = view.section.months
    .filter(({ planes }) => planes.some(({ change }) => change > 0))
    .map(({ month }) => month);
  return wet.length === 0
    ? "The lines do not meet in any month."
    : `They meet, and water condenses, in ${wet.join(", ")}.`;
}

const x: X = { field: "x", type: "quantitative", scale: null, axis: null };
const y: Y = { field: "y", type: "quantitative", scale: null, axis: null };
const lines = [TEMPERATURE, DEW_POINT];

const TWELVE_MONTHS: PlotKind = {
  spec: {
    ...layout({ left: 40, right: 12, top: 24, bottom: 36 }),
    width: 436,
    height: 498,
    view: { stroke: null },
    layer: [
      {
        data: { name: "rules" },
        mark: { type: "rule", color: PALETTE.rule.light },
        encoding: { x, y, x2: { field: "x2" }, y2: { field: "y2" } },
      },
      {
        data: { name: "fields" },
        mark: { type: "rect", fillOpacity: 0, stroke: PALETTE.faintInk.light, strokeWidth: 0.8 },
        encoding: { x, y, x2: { field: "x2" }, y2: { field: "y2" } },
      },
      {
        data: { name: "words" },
        mark: { type: "text", align: "center", baseline: "alphabetic" },
        encoding: { x, y, text: { field: "words", type: "nominal" } },
      },
      {
        data: { name: "degrees" },
        mark: { type: "text", align: "right", baseline: "alphabetic" },
        encoding: { x, y, text: { field: "words", type: "nominal" } },
      },
      {
        data: { name: "lines" },
        mark: { type: "line", strokeWidth: 2 },
        encoding: {
          x,
          y,
          detail: { field: "path", type: "nominal" },
          order: { field: "at", type: "quantitative" },
          color: nominal("line", lines, [PALETTE.temperature.light, PALETTE.vapour.light]),
          strokeDash: nominal("line", lines, [
            [1, 0],
            [5, 3],
          ]),
        },
      },
      {
        data: { name: "water" },
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
};
