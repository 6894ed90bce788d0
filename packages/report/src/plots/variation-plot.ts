import { fromThickness, type VariationStudy } from "@warmside/core";
import { fixed, GRAMS_PER_KILOGRAM, MILLIMETRES_PER_METRE, trimmed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { judgementChannels } from "./judgement-marks.ts";
import { layout, type Part, type Plot, type PlotKind, type X, type Y } from "./plot.ts";

/**
 * U, and below it the most water of a year, against the thickness of one layer. The places where the judgement turns are
 * lettered; the list beside it says what turns.
 *
 * @param variation - the study
 * @returns the plot; null where U is known at no thickness
 */
export function variationPlot(variation: VariationStudy): Plot | null {
  const points = variation.points.flatMap(({ thickness, transmittance, judgement, peak }) =>
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
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return null;
  const turns = variation.turns.map(({ thickness, to }) => `“${to}” from ${fromThickness(thickness)}`);
  return {
    title: `U against the thickness of ${variation.layer.name}`,
    description: `A line from ${fixed(first.u, 2)} W/(m²·K) at ${trimmed(first.thickness, 1)} mm to ${fixed(last.u, 2)} at ${trimmed(last.thickness, 1)} mm, each point marked by its judgement. ${turns.length > 0 ? `The judgement turns: ${turns.join(", ")}.` : `The judgement is “${first.judgement}” everywhere.`}`,
    kind: points.some(({ grams }) => grams > 0) ? WITH_WATER : DRY,
    data: {
      points,
      target: variation.target === null ? [] : [{ u: variation.target, thickness: first.thickness }],
      turns: variation.turns.map(({ thickness }, index) => ({
        thickness: thickness * MILLIMETRES_PER_METRE,
        letter: turnLetter(index),
      })),
    },
  };
}

/**
 * The letter of a place where the judgement turns.
 *
 * @param index - from 0
 * @returns "A" for the first
 */
export function turnLetter(index: number): string {
  return String.fromCharCode("A".charCodeAt(0) + index);
}

const x: X = {
  field: "thickness",
  type: "quantitative",
  scale: { nice: 5, zero: false },
  axis: { title: "thickness, mm" },
};
const y: Y = {
  field: "u",
  type: "quantitative",
  scale: { nice: 5, zero: false },
  axis: { title: "U, W/(m²·K)", grid: true },
};
const grams: Y = {
  field: "grams",
  type: "quantitative",
  scale: { nice: 5, zero: true },
  axis: { title: "most water in a year, g/m²", grid: true, tickCount: 3 },
};

const CURVE: Part = {
  width: 434,
  height: 220,
  layer: [
    {
      data: { name: "target" },
      mark: { type: "rule", stroke: PALETTE.faintInk.light, strokeDash: [2, 3], strokeWidth: 2 },
      encoding: { y },
    },
    {
      data: { name: "turns" },
      mark: { type: "rule", stroke: PALETTE.ink.light, strokeDash: [4, 3] },
      encoding: { x },
    },
    {
      data: { name: "turns" },
      mark: { type: "text", baseline: "bottom", dy: -3, fontWeight: "bold" },
      encoding: { x, y: { value: 0 }, text: { field: "letter", type: "nominal" } },
    },
    {
      data: { name: "points" },
      mark: { type: "line", stroke: PALETTE.ink.light, strokeWidth: 1.5 },
      encoding: { x, y },
    },
    {
      data: { name: "points" },
      mark: { type: "point", filled: true, size: 70, stroke: PALETTE.ink.light, strokeWidth: 0.6, opacity: 1 },
      encoding: { x, y, ...judgementChannels() },
    },
  ],
};

const WATER: Part = {
  width: 434,
  height: 100,
  data: { name: "points" },
  layer: [
    { mark: { type: "line", stroke: PALETTE.water.light, strokeWidth: 2 }, encoding: { x, y: grams } },
    {
      mark: { type: "point", filled: true, size: 30, color: PALETTE.water.light, opacity: 1 },
      encoding: { x, y: grams },
    },
  ],
};

const PADDING = { left: 52, right: 14, top: 44, bottom: 42 };
const DRY: PlotKind = { size: { width: 434, height: 220 }, spec: { ...layout(PADDING), vconcat: [CURVE] } };
const WITH_WATER: PlotKind = {
  size: { width: 434, height: 394 },
  spec: { ...layout(PADDING), bounds: "flush", spacing: 74, vconcat: [CURVE, WATER] },
};
