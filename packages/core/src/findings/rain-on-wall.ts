import { cooledMonths } from "../climate/cooled-months.ts";
import { insulates } from "../project/insulates.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp, Layer } from "../project/types.ts";
import type { CladdingKind } from "../result/types.ts";
import { BEYOND, CONDITION, found } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/** Largest thickness of boarding; anything thicker is a plank or a log [m] (common practice). */
const THICKEST_BOARDING = 0.03;
/** Thickness from which masonry supports itself; thinner mineral layers are render or plaster [m] (common practice). */
const THINNEST_LEAF = 0.05;
/** Least ventilated gap that drains behind boarding, and behind masonry and render [m] (common practice). */
export const GAP_BEHIND_BOARDING = 0.02;
export const GAP_BEHIND_MASONRY = 0.025;
/** Tolerance for rounding of a stated thickness [m]. */
const ROUNDING = 1e-9;

/**
 * Rain on a wall whose outside takes it up: the method does not include rain, so the file must say if rain wets it.
 * Source: METHOD.md, Rain (this project's rule on common practice).
 */
export function rainFindings(evidence: Evidence): RuledFinding[] {
  const { buildUp } = evidence;
  const cladding = absorbentCladding(buildUp);
  if (cladding === null) return [];
  const { index, kind } = cladding;
  const inside = buildUp.layers.slice(0, index);
  const sun = isCooled(evidence) ? sunDriven(buildUp, cladding) : [];
  if (isDrained(inside, kind) || !inside.some(suffersFromRain)) return sun;
  if (hasInnerLeaf(inside)) return [...leafDrains(inside, index, kind), ...sun];
  const figures = { layer: index, kind };
  switch (buildUp.wettedByRain) {
    case "yes":
      return [found("rain-wetted-masonry", BEYOND, figures), ...sun];
    case "no":
    case "sheltered":
      return [found("rain-kept-off", CONDITION, { ...figures, said: buildUp.wettedByRain })];
    case null:
      return [found("rain-not-said", kind === "boarding" ? CONDITION : BEYOND, figures), ...sun];
  }
}

/**
 * The outermost layer of a wall that faces outdoors, if it takes up rain; paint and other coatings on it do not count.
 *
 * @param buildUp - the build-up
 * @returns its index and kind; null for every other build-up, and where metal, tiles, glass, stone, plastic, insulation
 *   or a sheet lies outermost
 */
export function absorbentCladding(buildUp: BuildUp): { index: number; kind: CladdingKind } | null {
  if (!isUpright(buildUp) || buildUp.element === "partition" || buildUp.faces !== "outdoors") return null;
  const index = buildUp.layers.findLastIndex((layer) => layer.type !== "sheet" || layer.material.group !== "coating");
  const layer = buildUp.layers[index];
  if (layer?.type !== "material" || insulates(layer)) return null;
  const { kind, group } = layer.material;
  if (kind === "wood" || kind === "board") return { index, kind: isLog(layer) ? "log" : "boarding" };
  if (kind !== "mineral" || group === "roofing" || group === "glass" || group === "stone") return null;
  return { index, kind: layer.thickness >= THINNEST_LEAF ? "masonry" : "render" };
}

/**
 * Whether a layer is a log or a thick panel: the wall itself, not a cladding with air behind it.
 *
 * @param layer - any layer
 * @returns true for wood and boards thicker than boarding
 * Source: common practice.
 */
export function isLog(layer: Layer): boolean {
  if (layer.type === "air" || (layer.material.kind !== "wood" && layer.material.kind !== "board")) return false;
  return layer.thickness > THICKEST_BOARDING + ROUNDING;
}

/**
 * Whether the outermost layer is masonry or logs that rain may wet: they also dry to the room, and a tighter layer
 * there would hold the rain in. Rain is assumed where the file does not mention it.
 *
 * @param buildUp - the build-up
 * @returns true unless the file says that rain is kept off
 * Source: METHOD.md, Rain (common practice).
 */
export function holdsRain(buildUp: BuildUp): boolean {
  if (buildUp.wettedByRain === "no" || buildUp.wettedByRain === "sheltered") return false;
  const cladding = absorbentCladding(buildUp);
  if (cladding === null || (cladding.kind !== "masonry" && cladding.kind !== "log")) return false;
  return !isDrained(buildUp.layers.slice(0, cladding.index), cladding.kind);
}

/** Whether rain damages a layer: insulation, and any layer of timber or with timber in it. */
function suffersFromRain(layer: Layer): boolean {
  if (insulates(layer) || layer.framing?.material.kind === "wood") return true;
  return layer.type === "material" && (layer.material.kind === "wood" || layer.material.kind === "board");
}

/** Whether a ventilated gap is wide enough, with nothing that rain damages between it and the cladding. */
function isDrained(inside: readonly Layer[], kind: CladdingKind): boolean {
  const least = kind === "boarding" || kind === "log" ? GAP_BEHIND_BOARDING : GAP_BEHIND_MASONRY;
  const gap = inside.findLastIndex(
    (layer) => layer.type === "air" && layer.ventilation !== "none" && layer.thickness >= least - ROUNDING,
  );
  return gap !== -1 && !inside.slice(gap + 1).some(suffersFromRain);
}

/** Whether nothing outside an inner masonry leaf could be damaged by rain, mineral and foam insulation excepted. */
function hasInnerLeaf(inside: readonly Layer[]): boolean {
  const leaf = inside.findLastIndex(isLeaf);
  return leaf !== -1 && !inside.slice(leaf + 1).some((layer) => suffersFromRain(layer) && !isMineralOrFoam(layer));
}

/**
 * Whether a wall that faces outdoors is masonry or render over a masonry inner leaf, with no timber between or outside.
 *
 * @param buildUp - the build-up
 * @returns false for every other build-up
 */
export function isMasonryThroughout(buildUp: BuildUp): boolean {
  const cladding = absorbentCladding(buildUp);
  if (cladding === null || cladding.kind === "log" || cladding.kind === "boarding") return false;
  return hasInnerLeaf(buildUp.layers.slice(0, cladding.index));
}

function isLeaf(layer: Layer): boolean {
  return (
    layer.type === "material" &&
    layer.material.kind === "mineral" &&
    !insulates(layer) &&
    layer.thickness >= THINNEST_LEAF &&
    layer.framing?.material.kind !== "wood"
  );
}

function isMineralOrFoam(layer: Layer): boolean {
  if (layer.type === "air" || layer.framing?.material.kind === "wood") return false;
  return layer.material.kind === "mineral" || layer.material.kind === "plastic";
}

/** The outer leaf of a cavity wall must drain; render on insulation on masonry needs no drainage. */
function leafDrains(inside: readonly Layer[], layer: number, kind: CladdingKind): RuledFinding[] {
  const leaf = inside.findLastIndex(isLeaf);
  const isCavity = kind === "masonry" && inside.slice(leaf + 1).some((each) => each.type === "air" || insulates(each));
  return isCavity ? [found("outer-leaf-drains", CONDITION, { layer })] : [];
}

function isCooled({ room, site, vapourLayer }: Evidence): boolean {
  const fromOutdoors = vapourLayer.warmSide === "outside" && vapourLayer.warmSideName === "outdoors";
  return cooledMonths(room, site.outdoor.temperature).length > 0 || fromOutdoors;
}

/** Sun on wet masonry drives vapour inwards, even across a narrow cavity; not where rain is kept off. */
function sunDriven({ wettedByRain }: BuildUp, { index, kind }: { index: number; kind: CladdingKind }): RuledFinding[] {
  if (wettedByRain === "no" || wettedByRain === "sheltered" || kind === "boarding") return [];
  const isSure = wettedByRain === "yes";
  return [found("sun-driven-moisture", isSure ? BEYOND : CONDITION, { layer: index, isSure })];
}
