import { bondedFoam } from "../findings/bonded-foam-place.ts";
import { holdsRain } from "../findings/rain-on-wall.ts";
import { isRoof } from "../project/is-roof.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, BuildUp, Layer, SolidLayer } from "../project/types.ts";
import { TIGHT } from "../vapour/tight.ts";
import { bestInsulation, endOfCounted, insulationExtent, isVapourSheet, sdOf } from "./places.ts";
import type { Situation, WarmSide } from "./types.ts";

/**
 * Whether a layer has another purpose than vapour control, so that no remedy removes, exchanges or opens it: decks,
 * damp-proof, radon and gas membranes, weather skins, tanking, metal, and whatever keeps the weather out of a roof.
 *
 * @param buildUp - the build-up
 * @param index - index of the layer
 * @returns true when it must stay as it is
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function mustStay(buildUp: BuildUp, index: number): boolean {
  const layer = buildUp.layers[index];
  if (layer === undefined || layer.type === "air") return false;
  if (layer.purpose !== null && layer.purpose !== "vapour layer") return true;
  const { kind, group, name } = layer.material;
  if (kind === "metal" || group === "roofing" || group === "ground") return true;
  if (/damp-proof|radon|gas membrane|tanking/.test(name)) return true;
  return isGroundSheet(buildUp, index, layer) || isRoofSkin(buildUp, index, layer);
}

function isGroundSheet(buildUp: BuildUp, index: number, layer: SolidLayer): boolean {
  const extent = insulationExtent(buildUp);
  return buildUp.faces === "ground" && layer.type === "sheet" && index > (extent?.last ?? -1);
}

/** Whether a layer is tight and lies outside a roof's insulation, without ventilated air and a covering outside it. */
function isRoofSkin(buildUp: BuildUp, index: number, layer: Layer): boolean {
  const extent = insulationExtent(buildUp);
  if (!isRoof(buildUp) || isUpright(buildUp) || sdOf(layer) < TIGHT || index <= (extent?.last ?? -1)) return false;
  return endOfCounted(buildUp) >= buildUp.layers.length - 1;
}

/**
 * Makes a check of what must stay: every required layer, every ventilation opening, and foam on the skin to which it is
 * bonded. A change must also not add a tight layer on the cold side, a sheet towards a damp void, or a tighter sheet to
 * masonry or logs that rain may wet. Every remedy must pass, whatever kind of change made it.
 *
 * @param before - the situation before the change
 * @returns a function that is true for a changed build-up that may be proposed
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function leavesAloneWhatMustStay({ buildUp, warmSide }: Situation): (after: BuildUp) => boolean {
  const required = buildUp.layers.filter((_, index) => mustStay(buildUp, index));
  const openings = ventilatedLayers(buildUp);
  const tight = tightOnColdSide(buildUp, warmSide);
  return (after) =>
    required.every((layer) => after.layers.includes(layer)) &&
    stayOpen(openings, after) &&
    staysBonded(buildUp, after) &&
    !holdsRainIn(buildUp, after) &&
    sheetsTowardsVoid(after) <= sheetsTowardsVoid(buildUp) &&
    tightOnColdSide(after, warmSide) <= tight;
}

function ventilatedLayers({ layers }: BuildUp): AirLayer[] {
  return layers.filter((layer): layer is AirLayer => layer.type === "air" && layer.ventilation !== "none");
}

function stayOpen(openings: readonly AirLayer[], after: BuildUp): boolean {
  const left = ventilatedLayers(after);
  return openings.every((opening) => {
    const match = left.findIndex((other) => isAtLeastAsOpen(other, opening));
    if (match === -1) return false;
    left.splice(match, 1);
    return true;
  });
}

function isAtLeastAsOpen(air: AirLayer, than: AirLayer): boolean {
  return (
    (air.ventilation === "well" || than.ventilation === "slight") &&
    air.thickness >= than.thickness &&
    (air.ventilationArea ?? Number.POSITIVE_INFINITY) >= (than.ventilationArea ?? 0) &&
    (air.open === than.open || air.open === "both ends")
  );
}

/** Number of tight counted layers on the cold side of the main insulation. */
function tightOnColdSide(buildUp: BuildUp, warmSide: WarmSide): number {
  const main = bestInsulation(buildUp);
  if (main === null || warmSide === "neither") return 0;
  const cold = buildUp.layers
    .slice(0, endOfCounted(buildUp))
    .filter((_, index) => (warmSide === "room" ? index > main : index < main));
  return cold.filter((layer) => sdOf(layer) >= TIGHT).length;
}

/** Whether nothing comes between bonded foam and its skin; a change may remove the foam altogether. */
function staysBonded({ layers }: BuildUp, after: BuildUp): boolean {
  const foam = bondedFoam(layers);
  if (foam === null) return true;
  const at = after.layers.indexOf(layers[foam]!);
  return at === -1 || after.layers[at + 1] === layers[foam + 1];
}

/** Whether the change adds a tighter sheet to a wall that rain may wet, and that then no longer dries to its room. */
function holdsRainIn(before: BuildUp, after: BuildUp): boolean {
  return holdsRain(after) && tightestSheet(after) > tightestSheet(before);
}

function tightestSheet({ layers }: BuildUp): number {
  return Math.max(0, ...layers.filter(isVapourSheet).map(sdOf));
}

/** Number of vapour sheets between a floor's insulation and the void below it, where water from the ground collects. */
function sheetsTowardsVoid(buildUp: BuildUp): number {
  const last = buildUp.faces === "void" ? insulationExtent(buildUp)?.last : undefined;
  if (last === undefined) return 0;
  return buildUp.layers.filter((layer, index) => index > last && isVapourSheet(layer)).length;
}
