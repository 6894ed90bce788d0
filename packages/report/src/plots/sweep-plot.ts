import { fromThickness, type SweepStudy } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { fixed, GRAMS_PER_KILOGRAM, MILLIMETRES_PER_METRE, trimmed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { evenScale } from "./even-scale.ts";
import { judgementChannels } from "./judgement-marks.ts";
import { placeLabels } from "./place-labels.ts";
import { LABEL_HEIGHT, LABEL_SIZE, type PlacedWords, wordsLayers } from "./placed-words.ts";
import { PLOT_CONFIG, PLOT_SCHEMA, type Plot } from "./plot.ts";
import { textWidth } from "./text-width.ts";

/**
 * U, and below it the most water of a year, against the thickness of one layer, with the places where the judgement turns.
 *
 * @param sweep - the study
 * @returns the plot; null where U is known at no thickness
 */
export function sweepPlot(sweep: SweepStudy): Plot | null {
  const points = sweep.points.flatMap(({ thickness, transmittance, judgement, peak }) =>
    transmittance === null
      ? []
      : [
          {
            thickness: thickness * MILLIMETRES_PER_METRE,
            u: transmittance,
            judgement,
            grams: (peak?.amount ?? 0) * GRAMS_PER_KILOGRAM,
          },
        ],
  );
  if (points.length === 0) return null;
  const isWet = points.some(({ grams }) => grams > 0);
  const spec = {
    $schema: PLOT_SCHEMA,
    padding: 4,
    config: PLOT_CONFIG,
    spacing: 26,
    vconcat: [curve(sweep, points), ...(isWet ? [water(points)] : [])],
  } as unknown as TopLevelSpec;
  const turns = sweep.turns.map(({ thickness, to }) => `“${to}” from ${fromThickness(thickness)}`);
  return {
    title: `U against the thickness of ${sweep.layer.name}`,
    description: `A line from ${fixed(points[0]!.u, 2)} W/(m²·K) at ${trimmed(points[0]!.thickness, 1)} mm to ${fixed(points[points.length - 1]!.u, 2)} at ${trimmed(points[points.length - 1]!.thickness, 1)} mm, each point marked by its judgement. ${turns.length > 0 ? `The judgement turns: ${turns.join(", ")}.` : `The judgement is “${points[0]!.judgement}” everywhere.`}`,
    spec,
  };
}

const WIDTH = 440;
const HEIGHT = 250;
const WATER_HEIGHT = 110;
const MARK_HALF = 4;
/** The words of the target end this far from the right [px]. */
const TARGET_WORDS = 40;

interface Point {
  thickness: number;
  u: number;
  judgement: SweepStudy["points"][number]["judgement"];
  grams: number;
}

function thicknessAxis(points: readonly Point[], title: string | null): object {
  const { domain, ticks } = scaleOf(points);
  return {
    field: "thickness",
    type: "quantitative",
    scale: { domain, nice: false, zero: false },
    axis: { title, values: ticks },
  };
}

function scaleOf(points: readonly Point[]): ReturnType<typeof evenScale> {
  return evenScale(
    points.map(({ thickness }) => thickness),
    WIDTH,
    { margin: 0 },
  );
}

function curve(sweep: SweepStudy, points: readonly Point[]): object {
  const { target } = sweep;
  const heights = evenScale([...points.map(({ u }) => u), ...(target === null ? [] : [target])], HEIGHT, {
    isUpright: true,
  });
  const x = thicknessAxis(points, "thickness, mm");
  const y = {
    field: "u",
    type: "quantitative",
    scale: { domain: heights.domain, nice: false, zero: false },
    axis: { title: "U, W/(m²·K)", values: heights.ticks, grid: true },
  };
  return {
    width: WIDTH,
    height: HEIGHT,
    layer: [
      ...(target === null ? [] : [targetRule(target, y)]),
      {
        data: { values: sweep.turns.map(({ thickness }) => ({ thickness: thickness * MILLIMETRES_PER_METRE })) },
        mark: { type: "rule", stroke: PALETTE.ink.light, strokeDash: [4, 3] },
        encoding: { x },
      },
      {
        data: { values: points },
        mark: { type: "line", stroke: PALETTE.ink.light, strokeWidth: 1.5 },
        encoding: { x, y },
      },
      {
        data: { values: points },
        mark: { type: "point", filled: true, size: 70, stroke: PALETTE.ink.light, strokeWidth: 0.6, opacity: 1 },
        encoding: { x, y, ...judgementChannels(points.map(({ judgement }) => judgement)) },
      },
      ...wordsLayers(placedWords(sweep, points, heights)),
    ],
  };
}

function targetRule(target: number, y: object): object {
  return {
    data: { values: [{ u: target }] },
    mark: { type: "rule", stroke: PALETTE.faintInk.light },
    encoding: { y },
  };
}

/** The target and the turns in words, where nothing is covered. */
function placedWords(
  { target, turns }: SweepStudy,
  points: readonly Point[],
  heights: ReturnType<typeof evenScale>,
): PlacedWords[] {
  const across = scaleOf(points);
  const said = [
    ...(target === null
      ? []
      : [{ x: WIDTH - TARGET_WORDS, y: heights.at(target), words: `target ${fixed(target, 2)}` }]),
    ...turns.map(({ thickness, to }) => ({
      x: across.at(thickness * MILLIMETRES_PER_METRE),
      y: LABEL_HEIGHT,
      words: `“${to}” from ${fromThickness(thickness)}`,
    })),
  ];
  const marks = [
    ...said.map((one) => ({ ...one, width: textWidth(one.words, LABEL_SIZE, false) + 2, height: LABEL_HEIGHT })),
    ...points.map(({ thickness, u }) => ({ x: across.at(thickness), y: heights.at(u), width: 0, height: 0 })),
  ];
  const placed = placeLabels(marks, { width: WIDTH, height: HEIGHT, mark: MARK_HALF });
  return said.flatMap(({ words }, index) => {
    const place = placed[index];
    return place ? [{ left: place.left, middle: place.middle, words }] : [];
  });
}

function water(points: readonly Point[]): object {
  const { domain, ticks } = evenScale([0, ...points.map(({ grams }) => grams)], WATER_HEIGHT, { isUpright: true });
  return {
    width: WIDTH,
    height: WATER_HEIGHT,
    data: { values: points },
    mark: {
      type: "line",
      stroke: PALETTE.water.light,
      strokeWidth: 2,
      point: { filled: true, size: 30, fill: PALETTE.water.light },
    },
    encoding: {
      x: thicknessAxis(points, "thickness, mm"),
      y: {
        field: "grams",
        type: "quantitative",
        scale: { domain, nice: false },
        axis: { title: "most water in a year, g/m²", values: ticks, grid: true },
      },
    },
  };
}
