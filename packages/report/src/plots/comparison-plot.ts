import type { ComparisonOfBuildUp, ComparisonRow } from "@warmside/core";
import { fixed, MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { judgementChannels } from "./judgement-marks.ts";
import { layout, type Plot, type PlotKind, type Row, type X, type Y } from "./plot.ts";

/**
 * The choice at a glance: U of a build-up and its variants against cost, or against thickness if any has no cost. Each
 * mark has its number; the table beside it has the names.
 *
 * @param comparison - a build-up with its variants
 * @returns the plot; null where U is known of none, or all marks would lie on one another
 */
export function comparisonPlot(comparison: ComparisonOfBuildUp): Plot | null {
  const shown = comparison.rows.flatMap((row, number) =>
    row.transmittance === null ? [] : [{ row, number, u: row.transmittance }],
  );
  const againstCost = shown.every(({ row }) => row.cost !== null && row.cost.unpriced.length === 0);
  const across = (row: ComparisonRow): number =>
    againstCost ? row.cost!.perArea : row.thickness * MILLIMETRES_PER_METRE;
  const marks = shown.map(({ row, number, u }) => ({ across: across(row), u, number, judgement: row.judgement }));
  const places = new Set(marks.map(placeKey));
  if (marks.length === 0 || places.size === 1) return null;
  const best = shown.reduce((least, one) => (one.u < least.u ? one : least));
  return {
    title: `U against ${againstCost ? "cost" : "thickness"}`,
    description: `${marks.length} marks, 0 for the build-up as drawn and a number for each variant. The least U is ${fixed(best.u, 2)}: number ${best.number}.`,
    kind: againstCost ? AGAINST_COST : AGAINST_THICKNESS,
    data: { marks, numbers: numbersOf(marks) },
  };
}

interface Mark {
  across: number;
  u: number;
  number: number;
}

/** Marks count as overlapping if their places agree to this many figures. */
const FIGURES_OF_PLACE = 3;

function placeKey({ across, u }: Mark): string {
  return `${across.toPrecision(FIGURES_OF_PLACE)} ${u.toPrecision(FIGURES_OF_PLACE)}`;
}

/** Marks on one another share a label. */
function numbersOf(marks: readonly Mark[]): Row[] {
  const groups = new Map<string, Mark[]>();
  for (const mark of marks) groups.set(placeKey(mark), [...(groups.get(placeKey(mark)) ?? []), mark]);
  return [...groups.values()].map((group) => ({
    across: group[0]!.across,
    u: group[0]!.u,
    words: group.map(({ number }) => number).join(", "),
  }));
}

function against(title: string): PlotKind {
  const x: X = {
    field: "across",
    type: "quantitative",
    scale: { zero: false, nice: 5, padding: 16 },
    axis: { title },
  };
  const y: Y = {
    field: "u",
    type: "quantitative",
    scale: { zero: false, nice: 5, padding: 16 },
    axis: { title: "U, W/(m²·K)", grid: true },
  };
  return {
    spec: {
      ...layout(),
      width: 434,
      height: 230,
      layer: [
        {
          data: { name: "marks" },
          mark: { type: "point", filled: true, size: 110, stroke: PALETTE.ink.light, strokeWidth: 0.8, opacity: 1 },
          encoding: { x, y, ...judgementChannels() },
        },
        {
          data: { name: "numbers" },
          mark: { type: "text", align: "left", dx: 9, dy: -7 },
          encoding: { x, y, text: { field: "words", type: "nominal" } },
        },
      ],
    },
  };
}

const AGAINST_COST = against("cost for a square metre");
const AGAINST_THICKNESS = against("thickness, mm");
