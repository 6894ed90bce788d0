import type { SectionCalculation } from "../calculate-build-up.ts";
import type { BuildUp } from "../project/types.ts";
import { sumOf } from "../year/section-year.ts";
import type { SectionYear } from "../year/types.ts";

/** A run of neighbouring wet nodes, with its greatest month-end total and what it sits on. */
export interface WaterZone {
  /** First and last node. */
  first: number;
  last: number;
  /** Greatest month-end sum [kg/m²] and its month. */
  peak: number;
  month: number;
  /** Left at the end of the run year [kg/m²]. */
  left: number;
  /** Where it is, in words: "between mineral wool slab and oriented strand board", "inside mineral wool slab". */
  where: string;
  /** Layer indices whose faces or inside it touches. */
  layers: number[];
}

/** Water under this is not shown as a zone [kg/m²]. */
const NO_WATER = 1e-6;

/**
 * The zones of a section's year: neighbouring wet nodes are one zone, limits apply to its sum.
 *
 * @param section - a calculated section
 * @param year - the standard's year or the one with drying inside the month
 * @param buildUp - for the names of its layers
 * @returns zones, most water first; none when dry
 * Source: this project's rule (METHOD.md, Zones of water).
 */
export function waterZones(section: SectionCalculation, year: SectionYear, buildUp: BuildUp): WaterZone[] {
  if (year.startMonth === null) return [];
  const { count } = section.line;
  const everWet = Array.from({ length: count }, (_, node) => year.held.some((held) => held[node]! > NO_WATER));
  const lastMonth = (year.startMonth + 11) % 12;
  const zones: WaterZone[] = [];
  for (let first = 0; first < count; first += 1) {
    if (!everWet[first]) continue;
    let last = first;
    while (last + 1 < count && everWet[last + 1]) last += 1;
    const totals = year.held.map((held) => sumOf(held.subarray(first, last + 1)));
    const peak = Math.max(...totals);
    zones.push({
      first,
      last,
      peak,
      month: totals.indexOf(peak),
      left: totals[lastMonth]!,
      ...placeOfZone(section, first, last, buildUp),
    });
    first = last;
  }
  return zones.sort((a, b) => b.peak - a.peak);
}

function placeOfZone(
  section: SectionCalculation,
  first: number,
  last: number,
  buildUp: BuildUp,
): Pick<WaterZone, "where" | "layers"> {
  const inner = layerEndingAt(section, first);
  const outer = layerBeginningAt(section, last);
  const within = layersBetween(section, first, last);
  const layers = [...new Set([inner, ...within, outer])].filter((layer) => layer >= 0);
  const name = (layer: number): string => buildUp.layers[layer]?.name ?? "the surface";
  if (first === last && inner === outer) return { where: whereInside(section, first, inner, name(inner)), layers };
  if (first === last) return { where: `between ${name(inner)} and ${name(outer)}`, layers };
  if (inner === outer) return { where: `in a zone inside ${name(inner)}`, layers };
  return { where: `in a zone from ${name(inner)} to ${name(outer)}`, layers };
}

/** Inside a layer, or at the facing of a faced board. */
function whereInside(section: SectionCalculation, node: number, layer: number, name: string): string {
  const { line } = section;
  const facings = section.slices.filter((slice) => slice.layer === layer && slice.part.endsWith("facing"));
  const depthBefore = line.depth[node - 1]!;
  const depthAfter = line.depth[node + 1]!;
  const depth = line.depth[node]!;
  if (facings.some(({ part }) => part === "outer facing") && depth === depthAfter)
    return `behind the outer facing of ${name}`;
  if (facings.some(({ part }) => part === "inner facing") && depth === depthBefore)
    return `behind the inner facing of ${name}`;
  return `inside ${name}`;
}

function layerEndingAt(section: SectionCalculation, node: number): number {
  return section.line.layer[node]!;
}

function layerBeginningAt(section: SectionCalculation, node: number): number {
  return section.line.layer[Math.min(node + 1, section.line.count - 1)]!;
}

function layersBetween(section: SectionCalculation, first: number, last: number): number[] {
  return Array.from({ length: last - first }, (_, step) => section.line.layer[first + 1 + step]!);
}
