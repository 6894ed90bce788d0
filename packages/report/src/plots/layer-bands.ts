import { MILLIMETRES_PER_METRE } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { spread } from "../spread.ts";

/** Which way a plot measures the way from the room outwards. */
export type Axis = "depth" | "sd";

/** A layer's stretch on that axis. */
export interface Band {
  number: string;
  from: number;
  to: number;
  /** Where its number is written. */
  label: number;
  shaded: boolean;
}

/** The stretch of a section with a margin for the air of the room and of the far side. */
export interface Stretch {
  bands: Band[];
  /** Ends of the axis, in its unit. */
  from: number;
  to: number;
  /** End of the last layer. */
  end: number;
}

/**
 * The layers of a section along an axis, with room for the air on both sides.
 *
 * @param view - the section
 * @param axis - depth [mm] or equivalent air layer thickness [m]
 * @returns bands from the room outwards
 */
export function layerBands(view: SectionView, axis: Axis): Stretch {
  const nodes = view.deciding.nodes;
  const end = along(nodes.at(-1)!, axis);
  const margin = end * MARGIN_SHARE;
  const edges = new Map<number, { from: number; to: number }>();
  nodes.forEach((node, index) => {
    if (node.layer === null) return;
    const from = edges.get(node.layer)?.from ?? along(nodes[index - 1]!, axis);
    edges.set(node.layer, { from, to: along(node, axis) });
  });
  const entries = [...edges].sort(([one], [other]) => one - other);
  const unit = (end + 2 * margin) / FIELD_WIDTH;
  const labels = spread(
    entries.map(([, { from, to }]) => (from + to) / 2),
    NUMBER_DISTANCE * unit,
    -margin,
    end + margin,
  );
  const bands = entries.map(([layer, { from, to }], index) => ({
    number: String(layer + 1),
    from,
    to,
    label: labels[index]!,
    shaded: index % 2 === 0,
  }));
  return { bands, from: -margin, to: end + margin, end };
}

/**
 * A node's place on an axis.
 *
 * @param node - with depth [m] and sd [m]
 * @param axis - which of the two
 * @returns depth [mm] or sd [m]
 */
export function along(node: { depth: number; sd: number }, axis: Axis): number {
  return axis === "depth" ? node.depth * MILLIMETRES_PER_METRE : node.sd;
}

/**
 * Marks of the layers behind the lines of a plot: tinted stretches, their edges, their numbers.
 *
 * @param stretch - what `layerBands` gave
 * @param numbered - whether the layers' numbers are written above
 * @returns vega-lite layers
 */
export function bandMarks(stretch: Stretch, numbered: boolean): object[] {
  const tint = {
    data: { values: stretch.bands.filter(({ shaded }) => shaded) },
    mark: { type: "rect", color: PALETTE.tint.light },
    encoding: { x: { field: "from", type: "quantitative" }, x2: { field: "to" } },
  };
  const edges = {
    data: { values: [...stretch.bands.map(({ from }) => ({ at: from })), { at: stretch.end }] },
    mark: { type: "rule", color: PALETTE.rule.light },
    encoding: { x: { field: "at", type: "quantitative" } },
  };
  const numbers = {
    data: { values: stretch.bands },
    mark: { type: "text", baseline: "bottom", dy: -3, color: PALETTE.faintInk.light, fontSize: 12 },
    encoding: { x: { field: "label", type: "quantitative" }, y: { value: 0 }, text: { field: "number" } },
  };
  return numbered ? [tint, edges, numbers] : [tint, edges];
}

/** Width of the field of a plot, about [px]. */
const FIELD_WIDTH = 430;
const MARGIN_SHARE = 0.11;
/** Least distance between two layer numbers [px]. */
const NUMBER_DISTANCE = 15;
