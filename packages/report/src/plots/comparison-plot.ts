import type { ComparisonOfBuildUp, ComparisonRow } from "@warmside/core";
import type { TopLevelSpec } from "vega-lite";
import { shorten } from "../escape.ts";
import { fixed, MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { areOne, evenScale } from "./even-scale.ts";
import { judgementChannels } from "./judgement-marks.ts";
import { marksApart } from "./marks-apart.ts";
import { type Labelled, nearestOnLabel, type PlacedLabel, placeLabels } from "./place-labels.ts";
import { LABEL_HEIGHT, LABEL_SIZE, wordsLayers } from "./placed-words.ts";
import { PLOT_CONFIG, PLOT_SCHEMA, type Plot } from "./plot.ts";
import { textWidth } from "./text-width.ts";

/**
 * The choice at a glance: U of a build-up and its variants against their cost, or against their thickness where not all
 * of them have a cost; each marked by its judgement and named beside its mark.
 *
 * @param comparison - a build-up with its variants
 * @param currency - as the file has it
 * @returns the plot; null where U is known of none, or all marks would lie on one another
 */
export function comparisonPlot(comparison: ComparisonOfBuildUp, currency: string): Plot | null {
  const shown = comparison.rows.flatMap((row, number) =>
    row.transmittance === null ? [] : [{ row, number, transmittance: row.transmittance }],
  );
  const againstCost = shown.every(({ row }) => row.cost !== null && row.cost.unpriced.length === 0);
  const across = (row: ComparisonRow): number =>
    againstCost ? row.cost!.perArea : row.thickness * MILLIMETRES_PER_METRE;
  const isOneMark = areOne(shown.map(({ row }) => across(row))) && areOne(shown.map((one) => one.transmittance));
  if (shown.length === 0 || isOneMark) return null;
  const x = evenScale(
    shown.map(({ row }) => across(row)),
    WIDTH,
  );
  const y = evenScale(
    shown.map(({ transmittance }) => transmittance),
    HEIGHT,
    { isUpright: true },
  );
  const places = marksApart(
    shown.map(({ row, transmittance }) => ({ x: x.at(across(row)), y: y.at(transmittance) })),
    MARK_DISTANCE,
    WIDTH,
  );
  const marks = shown.map(({ row, number }, index) => ({
    ...places[index]!,
    name: nameOf(row, number),
    judgement: row.judgement,
  }));
  const labels = labelsOf(marks);
  const axis = againstCost ? `cost, ${currency === "" ? "money" : currency} for a square metre` : "thickness, mm";
  const point = { type: "quantitative", scale: null, axis: null };
  const leaders = labels.filter(({ isApart }) => isApart);
  const spec = {
    $schema: PLOT_SCHEMA,
    width: WIDTH,
    height: HEIGHT,
    padding: 4,
    config: PLOT_CONFIG,
    layer: [
      {
        data: { values: [{ across: x.domain[0], u: y.domain[0] }] },
        mark: { type: "point", opacity: 0 },
        encoding: {
          x: {
            field: "across",
            type: "quantitative",
            scale: { domain: x.domain, nice: false, zero: false },
            axis: { title: axis, values: x.ticks },
          },
          y: {
            field: "u",
            type: "quantitative",
            scale: { domain: y.domain, nice: false, zero: false },
            axis: { title: "U, W/(m²·K)", values: y.ticks, grid: true },
          },
        },
      },
      {
        data: { values: leaders },
        mark: { type: "rule", stroke: PALETTE.faintInk.light, strokeWidth: 0.8 },
        encoding: {
          x: { field: "x", ...point },
          y: { field: "y", ...point },
          x2: { field: "endX" },
          y2: { field: "endY" },
        },
      },
      {
        data: { values: marks },
        mark: { type: "point", filled: true, size: 110, stroke: PALETTE.ink.light, strokeWidth: 0.8, opacity: 1 },
        encoding: {
          x: { field: "x", ...point },
          y: { field: "y", ...point },
          ...judgementChannels(shown.map(({ row }) => row.judgement)),
        },
      },
      ...wordsLayers(labels),
    ],
    resolve: { scale: { x: "independent", y: "independent" } },
  } as unknown as TopLevelSpec;
  const best = shown.reduce((least, one) => (one.transmittance < least.transmittance ? one : least));
  return {
    title: `U against ${againstCost ? "cost" : "thickness"}`,
    description: `${shown.length} marks, one for the build-up as drawn and one for each variant. The least U is ${fixed(best.transmittance, 2)}: ${nameOf(best.row, best.number)}.`,
    spec,
  };
}

const WIDTH = 440;
const HEIGHT = 300;
const MARK_HALF = 6;
/** Marks nearer than this are put apart [px]. */
const MARK_DISTANCE = 2 * MARK_HALF + 1;
/** Lengths of a name that are tried, longest first; the number alone comes last [characters]. */
const LENGTHS = [34, 22, 14];

interface Mark {
  x: number;
  y: number;
  name: string;
}

interface DrawnLabel extends PlacedLabel {
  x: number;
  y: number;
  /** Where the thin line ends [px]. */
  endX: number;
  endY: number;
  words: string;
}

/** Names as long as there is room for all of them; where there is none the number stands alone. */
function labelsOf(marks: readonly Mark[]): DrawnLabel[] {
  const worded = LENGTHS.map((longest) => marks.map(({ name }) => shorten(name, longest)));
  const numbers = marks.map(({ name }) => name.split(" ")[0]!);
  let placed: (PlacedLabel | null)[] = [];
  let words: readonly string[] = numbers;
  for (const tried of [...worded, numbers]) {
    words = tried;
    placed = placeLabels(
      marks.map((mark, index) => labelled(mark, tried[index]!)),
      { width: WIDTH, height: HEIGHT, mark: MARK_HALF },
    );
    if (placed.every((place) => place !== null)) break;
  }
  return placed.flatMap((place, index) => {
    if (place === null) return [];
    const mark = marks[index]!;
    const end = nearestOnLabel(labelled(mark, words[index]!), place);
    return [{ ...place, x: mark.x, y: mark.y, endX: end.x, endY: end.y, words: words[index]! }];
  });
}

function labelled({ x, y }: Mark, words: string): Labelled {
  return { x, y, width: textWidth(words, LABEL_SIZE, false) + 2, height: LABEL_HEIGHT };
}

function nameOf({ variant }: ComparisonRow, number: number): string {
  return variant === null ? "0 as drawn" : `${number} ${variant}`;
}
