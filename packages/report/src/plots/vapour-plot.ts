import { inSpeech, saturationPressure } from "@warmside/core";
import { keptApart } from "../label-spacing.ts";
import { fixed, trimmed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { placeOf } from "../places.ts";
import type { SectionView } from "../section-view.ts";
import {
  layout,
  nominal,
  PLOT_TEXT,
  type Plot,
  type PlotKind,
  type Row,
  SOLID_AND_DASHED,
  type X,
  type Y,
} from "./plot.ts";
import { type StretchedSd, stretchedSd } from "./stretched-sd.ts";

/**
 * Vapour pressure and saturation pressure in the critical month, against equivalent air layer thickness:
 * there the vapour line is straight between places with water.
 *
 * @param view - the section
 * @param title - what the plot shows, as a sentence
 * @returns the plot
 */
export function vapourPlot(view: SectionView, title: string): Plot {
  const { month, indoor, outdoor, nodes, planes } = view.deciding;
  const stretched = stretchedSd(view);
  const at = (sd: number): number => stretched.at(sd);
  const saturation = (temperature: number): number => saturationPressure(temperature);
  const points = [
    { at: 0, value: saturation(indoor.temperature), line: SATURATION },
    ...nodes.map((node) => ({ at: at(node.sd), value: node.saturationPressure, line: SATURATION })),
    { at: 1, value: saturation(outdoor.temperature), line: SATURATION },
    { at: 0, value: indoor.vapourPressure, line: VAPOUR },
    ...nodes.map((node) => ({ at: at(node.sd), value: node.vapourPressure, line: VAPOUR })),
    { at: 1, value: outdoor.vapourPressure, line: VAPOUR },
  ];
  const wet = planes.filter(({ change, held }) => change !== 0 || held > 0);
  return {
    title,
    description: `${month}. From the room on the left, ${fixed(indoor.vapourPressure, 0)} Pa, to the other side on the right, ${fixed(
      outdoor.vapourPressure,
      0,
    )} Pa, each layer as wide as its resistance to vapour${brokenWords(stretched)}. The unbroken line is the most the air can hold, the dashed line the vapour there is. ${
      wet.length > 0
        ? `They meet ${inSpeech(
            wet.map(({ node }) => placeOf(view, node)),
            "and",
          )}.`
        : "They do not meet."
    }`,
    kind: VAPOUR_KIND,
    data: {
      points,
      bands: stretched.bands.map(({ from, to }, index) => ({ from, to, shade: index % 2 === 0 })),
      numbers: numbers(stretched),
      ticks: ticks(stretched),
      breaks: stretched.bands.filter(({ broken }) => broken).map(({ from, to }) => ({ at: (from + to) / 2 })),
      wet: wet.map(({ node }) => ({ at: at(nodes[node]!.sd), value: nodes[node]!.vapourPressure })),
    },
  };
}

/**
 * Which layers are drawn narrower than their sd.
 *
 * @param stretched - layers over sd
 * @returns such as "; the axis is broken in layer 2"; empty where none is
 */
export function brokenWords({ bands }: StretchedSd): string {
  const broken = bands.filter((band) => band.broken).map(({ number }) => number);
  return broken.length === 0
    ? ""
    : `; the axis is broken in layer${broken.length > 1 ? "s" : ""} ${inSpeech(broken, "and")}`;
}

const SATURATION = "saturation";
const VAPOUR = "vapour";
const FIELD = 434;
/** Least distances between layer numbers and between figures of the axis [px]. */
const NUMBER_DISTANCE = 15;
const FIGURE_DISTANCE = 34;

function numbers({ bands }: StretchedSd): Row[] {
  const places = keptApart(
    bands.map(({ from, to }) => ((from + to) / 2) * FIELD),
    NUMBER_DISTANCE,
    0,
    FIELD,
  );
  return bands.map(({ number }, index) => ({ at: places[index]! / FIELD, number }));
}

/** Faces of layers, with the sd up to there where a figure has room. */
function ticks({ bands, at }: StretchedSd): Row[] {
  let sd = 0;
  const faces = [0, ...bands.map((band) => (sd += band.sd))];
  let last = Number.NEGATIVE_INFINITY;
  const end = at(sd) * FIELD;
  return faces.map((face, index) => {
    const along = at(face) * FIELD;
    const isLast = index === faces.length - 1;
    const hasRoom = along - last >= FIGURE_DISTANCE && (isLast || end - along >= FIGURE_DISTANCE);
    if (hasRoom) last = along;
    return { at: along / FIELD, words: hasRoom || isLast ? trimmed(face, face < 10 ? 2 : face < 100 ? 1 : 0) : "" };
  });
}

const x: X = { field: "at", type: "quantitative", scale: { domain: [0, 1], nice: false }, axis: null };
const y: Y = {
  field: "value",
  type: "quantitative",
  scale: { zero: true, nice: 5 },
  axis: { title: "Pa", grid: true },
};

/** A drop of water as a path for vega, one unit high. */
const DROP = "M0,-0.6C0.1,-0.35,0.36,-0.1,0.36,0.18A0.36,0.36,0,1,1,-0.36,0.18C-0.36,-0.1,-0.1,-0.35,0,-0.6Z";

const VAPOUR_KIND: PlotKind = {
  spec: {
    ...layout({ left: 52, right: 14, top: 32, bottom: 40 }),
    width: FIELD,
    height: 168,
    layer: [
      {
        data: { name: "bands" },
        mark: { type: "rect", color: PALETTE.tint.light },
        transform: [{ filter: { field: "shade", equal: true } }],
        encoding: { x: { field: "from", type: "quantitative", axis: null }, x2: { field: "to" } },
      },
      {
        data: { name: "ticks" },
        mark: { type: "rule", color: PALETTE.rule.light },
        encoding: { x },
      },
      {
        data: { name: "ticks" },
        mark: { type: "text", baseline: "top", dy: 5 },
        encoding: { x, y: { value: "height" }, text: { field: "words", type: "nominal" } },
      },
      {
        data: { values: [{ at: 0.5, words: "sd from the room surface, m" }] },
        mark: { type: "text", baseline: "top", dy: 22 },
        encoding: { x, y: { value: "height" }, text: { field: "words", type: "nominal" } },
      },
      {
        data: { name: "breaks" },
        mark: { type: "text", text: "≈", fontSize: 20, fontWeight: "bold", baseline: "middle", angle: 90 },
        encoding: { x, y: { value: "height" } },
      },
      {
        data: { name: "numbers" },
        mark: { type: "text", baseline: "bottom", dy: -3, color: PALETTE.faintInk.light, fontSize: PLOT_TEXT },
        encoding: { x, y: { value: 0 }, text: { field: "number", type: "nominal" } },
      },
      {
        data: { name: "points" },
        mark: { type: "line", strokeWidth: 2.5, strokeCap: "butt" },
        encoding: {
          x,
          y,
          order: { field: "at", type: "quantitative" },
          color: nominal("line", [SATURATION, VAPOUR], [PALETTE.temperature.light, PALETTE.vapour.light]),
          strokeDash: nominal("line", [SATURATION, VAPOUR], SOLID_AND_DASHED),
        },
      },
      {
        data: { name: "wet" },
        mark: {
          type: "point",
          shape: DROP,
          size: 800,
          filled: true,
          color: PALETTE.water.light,
          opacity: 1,
          stroke: PALETTE.paper.light,
          strokeWidth: 1,
        },
        encoding: { x, y },
      },
    ],
  },
};
