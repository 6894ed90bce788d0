import { requireNumber } from "../require.ts";
import { requireField, requireOfNodes } from "./given.ts";
import type { HeatField } from "./plane-heat.ts";
import { widthsOf } from "./plane-vapour.ts";

/** Width of the strip over which the worst water is averaged [m] (this project's rule). */
export const STRIP_WIDTH = 0.05;

/** Number of steps tried for the strip across a cell [–]. */
const STEPS = 100;

/** The strip of a cell that holds most water. */
export interface WorstStrip {
  /** Water per area of the strip [kg/m²]. */
  amount: number;
  /** Its middle [m]. */
  middle: number;
}

/**
 * The strip of 50 mm with most water, over the whole depth. Beyond its ends, a cell continues as its mirror image.
 *
 * @param field - heat field whose nodes hold the water
 * @param held - water at every node [kg/m]
 * @param width - of the strip [m], above 0
 * @returns amount [kg/m²] and middle [m]
 * Source: this project's rule (METHOD.md, The plane): water in a strip depends on its width, which is fixed.
 */
export function worstStrip(field: HeatField, held: Float64Array, width: number = STRIP_WIDTH): WorstStrip {
  requireField(field);
  requireOfNodes(held, "held", field.net.active.length);
  requireNumber(width, "width", "m", 1e-4, 100);
  const widths = widthsOf(field);
  const columns = widths.length;
  const begin = field.mesh.xs[0]!;
  const ends = new Float64Array(columns + 1);
  const upTo = new Float64Array(columns + 1);
  for (let column = 0; column < columns; column += 1) {
    let water = 0;
    for (let node = column; node < held.length; node += columns) water += held[node]!;
    ends[column + 1] = ends[column]! + widths[column]!;
    upTo[column + 1] = upTo[column]! + water;
  }
  const whole = ends[columns]!;
  const between = (from: number, to: number): number => valueUpTo(ends, upTo, to) - valueUpTo(ends, upTo, from);
  const mirrored = (from: number, to: number): number =>
    between(Math.max(from, 0), Math.min(to, whole)) + between(0, -from) + between(2 * whole - to, whole);
  let worst: WorstStrip = { amount: 0, middle: begin };
  for (let step = 0; step <= STEPS; step += 1) {
    const middle = (whole * step) / STEPS;
    const amount = mirrored(middle - width / 2, middle + width / 2) / width;
    if (amount > worst.amount) worst = { amount, middle: begin + middle };
  }
  return worst;
}

/** A running sum at a coordinate between its ends; 0 before the first, the total after the last. */
function valueUpTo(ends: Float64Array, upTo: Float64Array, along: number): number {
  if (!(along > 0)) return 0;
  let next = 1;
  while (next < ends.length && ends[next]! < along) next += 1;
  if (next === ends.length) return upTo[next - 1]!;
  const share = (along - ends[next - 1]!) / (ends[next]! - ends[next - 1]!);
  return upTo[next - 1]! + share * (upTo[next]! - upTo[next - 1]!);
}
