import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { MONTHS_PER_YEAR } from "../constants.ts";
import { channelCell } from "../field/channel-cell.ts";
import type { MeshRule } from "../field/graded-lines.ts";
import { meshWithin } from "../field/mesh.ts";
import { type HeatField, heatField } from "../field/plane-heat.ts";
import { type PlaneYear, planeYear } from "../field/plane-vapour.ts";
import { type Cell, type CellQuestion, type Joint, repeatingCell } from "../field/repeating-cell.ts";
import { worstStrip } from "../field/strips.ts";
import type { Framing, Taping } from "../project/types.ts";
import { sumOf } from "../year/section-year.ts";
import type { DepthInCell, PlaneRun, StripWater } from "./types.ts";

/**
 * Mesh for a year of vapour. With foil-faced boards between studs, the water over the whole cell is within 5 % of that
 * on a mesh with seven times the nodes, and the water of the worst strip within 8 %.
 */
export const VAPOUR_MESH: MeshRule = { first: 0.004, growth: 2.2, greatest: 0.1, leastSteps: 1 };

/** Most nodes of a mesh: with more, a year of vapour takes too long. */
const MOST_NODES = 1500;

/** sd of foil tape for joints of foil-faced boards [m]: metal counts as at least 1500 m (METHOD.md, Materials). */
const SD_OF_TAPE = 1500;

/** How the joints of interrupted layers are drawn, all alike. */
export interface JointCase {
  /** [m], from 0 */
  gap: number;
  taped: Taping;
}

/**
 * A year of vapour in the repeating cell of a build-up.
 *
 * @param calculation - its figures
 * @param framing - the framing that is drawn
 * @param jointOf - the joint of an interrupted layer, by the layer's index; null for other layers
 * @param told - the case under which the run is reported
 * @returns water month by month, over the cell and in its worst strip
 */
export function planeRun(
  calculation: BuildUpCalculation,
  framing: Framing,
  jointOf: (layer: number) => JointCase | null,
  told: JointCase,
): PlaneRun {
  const { heat, inside, farSide, skyOffset } = calculation;
  const surfaces = { inside: heat.surfaceResistances.inside, outside: heat.surfaceResistances.outsideForMoisture };
  const question: CellQuestion = { counted: heat.counted, framing, surfaces, sheets: true };
  const cell =
    framing.origin.kind === "channel"
      ? channelCell(question)
      : repeatingCell({ ...question, jointOf: (layer) => jointDrawn(jointOf(layer)) });
  const field = heatField(cell.scene, meshWithin(cell.scene, VAPOUR_MESH, MOST_NODES));
  const year = planeYear(field, [inside, farSide.months], skyOffset);
  const months = year.held.map((held) => monthOf(field, cell, held));
  const strip = year.startMonth === null ? null : stripOf(field, year, months);
  return { ...told, cell, field, year, months, strip, place: strip === null ? null : wettestDepth(field, cell, year) };
}

function jointDrawn(joint: JointCase | null): Joint {
  if (joint === null) return { gap: 0, tape: null };
  const { gap, taped } = joint;
  if (taped.kind === "no") return { gap, tape: null };
  const ontoFraming = taped.kind === "over the framing" ? Number.POSITIVE_INFINITY : taped.reach;
  return { gap, tape: { sd: SD_OF_TAPE, ontoFraming } };
}

function monthOf(field: HeatField, { width }: Cell, held: Float64Array): { mean: number; strip: number } {
  const water = sumOf(held);
  return { mean: water / width, strip: water > 0 ? worstStrip(field, held).amount : 0 };
}

function stripOf(field: HeatField, year: PlaneYear, months: PlaneRun["months"]): StripWater {
  const month = months.reduce(
    (most, { strip }, index) => (strip > months[most]!.strip ? index : most),
    year.peakMonth!,
  );
  const left = months[(year.startMonth! + MONTHS_PER_YEAR - 1) % MONTHS_PER_YEAR]!.strip;
  const later = year.yearLater === null ? left : worstStrip(field, year.yearLater).amount;
  const { amount, middle } = worstStrip(field, year.held[month]!);
  return { amount, month, middle, left, growthPerYear: later - left };
}

/** The depth with most water in the month of maximum accumulation. */
function wettestDepth({ mesh, net }: HeatField, { rows }: Cell, { held, peakMonth }: PlaneYear): DepthInCell {
  const byLine = new Float64Array(net.rows);
  for (const [node, amount] of held[peakMonth!]!.entries()) byLine[Math.floor(node / net.columns)]! += amount;
  const wettest = byLine.reduce((most, amount, line) => (amount > byLine[most]! ? line : most), 0);
  const y = mesh.ys[wettest]!;
  const inner = rows.findLast(({ y0 }) => y0 < y - SAME_DEPTH) ?? null;
  const outer = rows.find(({ y1 }) => y1 > y + SAME_DEPTH) ?? null;
  return { inner, outer };
}

/** Depths closer than this are the same [m]. */
const SAME_DEPTH = 1e-7;
