import type { SectionCalculation } from "../calculate-build-up.ts";
import type { PartOfLayer, Place, SlicePart } from "../result/types.ts";
import { sumOf } from "../year/section-year.ts";
import type { SectionYear } from "../year/types.ts";

/** A group of adjacent wet nodes, with its maximum accumulation and the layers it lies on. */
export interface WaterZone {
  /** First and last node. */
  first: number;
  last: number;
  /** Maximum accumulation at a month's end [kg/m²] and its month. */
  peak: number;
  month: number;
  /** Residual moisture at the end of the year [kg/m²]. */
  left: number;
  place: Place;
  /** Indices of the layers it touches, at a face or inside. */
  layers: number[];
}

/** Least water that makes a zone [kg/m²]. */
const NO_WATER = 1e-6;

/**
 * The zones of a section's year: adjacent wet nodes form one zone, and limits apply to its total.
 *
 * @param section - a calculated section
 * @param year - the standard's year or the one with drying within the month
 * @returns zones, most water first; none when dry
 * Source: this project's rule (METHOD.md, Zones of water).
 */
export function waterZones(section: SectionCalculation, year: SectionYear): WaterZone[] {
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
      ...placeOfZone(section, first, last),
    });
    first = last;
  }
  return zones.sort((a, b) => b.peak - a.peak);
}

function placeOfZone(section: SectionCalculation, first: number, last: number): Pick<WaterZone, "place" | "layers"> {
  const inner = layerEndingAt(section, first);
  const outer = layerBeginningAt(section, last);
  const within = layersBetween(section, first, last);
  const layers = [...new Set([inner, ...within, outer])].filter((layer) => layer >= 0);
  const facing = first === last && inner === outer ? facingAt(section, first, inner) : null;
  const place: Place = {
    extent: first === last ? "node" : "zone",
    inner: partOf(section, inner, facing === "inner facing" ? facing : null),
    outer: partOf(section, outer, facing === "outer facing" ? facing : null),
  };
  return { place, layers };
}

/** The facing on whose inner side a node lies; null inside the layer itself. */
function facingAt({ line, slices }: SectionCalculation, node: number, layer: number): SlicePart | null {
  const has = (part: SlicePart): boolean => slices.some((slice) => slice.layer === layer && slice.part === part);
  const depth = line.depth[node]!;
  if (has("outer facing") && depth === line.depth[node + 1]!) return "outer facing";
  return has("inner facing") && depth === line.depth[node - 1]! ? "inner facing" : null;
}

/** A layer along the section, or a facing of it; null at a surface. */
function partOf({ slices }: SectionCalculation, layer: number, facing: SlicePart | null): PartOfLayer | null {
  const ofLayer = slices.filter((slice) => slice.layer === layer);
  const slice =
    ofLayer.find(({ part }) => (facing === null ? part === "whole" || part === "framing" : part === facing)) ??
    ofLayer[0];
  return slice === undefined ? null : { layer, part: slice.part, material: slice.material };
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
