import { bondedFoam } from "../findings/bonded-foam-place.ts";
import { OPENINGS_OF_ROOF, VENTILATED_HEIGHT } from "../findings/cold-flat-roof.ts";
import { isLog } from "../findings/rain-on-wall.ts";
import { roofDeck } from "../findings/roof-deck.ts";
import { isRoof } from "../project/is-roof.ts";
import { isUpright } from "../project/is-upright.ts";
import type { AirLayer, BuildUp, Layer } from "../project/types.ts";
import { insertLayers, replaceLayer } from "./edit-layers.ts";
import { sheetLayer, ventilatedAir } from "./new-layers.ts";
import { isSheathing } from "./open-cold-side.ts";
import { bestInsulation, betweenLayers, endOfCounted, insulationExtent, isInsulating, sdOf } from "./places.ts";
import { BREATHER_SHEETS } from "./stock.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";

/** A ventilated cavity behind cladding [m] (common practice). */
const CAVITY = 0.025;

/** A layer with at least this sd is worth a ventilated cavity in front of it [m] (this project's rule). */
const WORTH_VENTILATING = 0.5;

/** Insulation with a μ below this lets wind through and gets a breather membrane [–] (this project's rule). */
const WIND_GOES_THROUGH = 5;

/**
 * Makes well-ventilated air on the cold side: inside the tight outer layer of a wall or pitched roof, or 50 mm, open at
 * both ends, over the insulation of a cold flat roof.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change in one size, if vapour comes from the room and the build-up faces outdoors
 */
export function ventilate(situation: Situation): Change[] {
  const { buildUp, warmSide } = situation;
  if (warmSide !== "room" || buildUp.faces !== "outdoors" || buildUp.element === "floor") return [];
  if (bondedFoam(buildUp.layers) !== null || isWarmRoof(buildUp)) return [];
  const level = buildUp.element === "flat roof" && !isUpright(buildUp);
  const air = level ? airOverInsulation(buildUp) : null;
  return air === null ? cavityBeforeTightLayer(buildUp) : widened(buildUp, air.layer, air.index);
}

/** Whether a roof is warm: its skin lies on the insulation, and ventilated air between the two would only cool it. */
function isWarmRoof(buildUp: BuildUp): boolean {
  const main = bestInsulation(buildUp);
  if (main === null || !isRoof(buildUp) || isUpright(buildUp)) return false;
  const { isCold } = roofDeck(buildUp.layers, main);
  return buildUp.layers[main]!.framing === null && isCold !== true;
}

/** The air layer that a cold flat roof has above its insulation. */
function airOverInsulation(buildUp: BuildUp): { layer: AirLayer; index: number } | null {
  const main = bestInsulation(buildUp);
  if (main === null) return null;
  for (let index = main + 1; index < buildUp.layers.length; index += 1) {
    const layer = buildUp.layers[index]!;
    if (layer.type === "air") return { layer, index };
  }
  return null;
}

function widened(buildUp: BuildUp, air: AirLayer, index: number): Change[] {
  const thickness = Math.max(air.thickness, VENTILATED_HEIGHT);
  const area = air.ventilationArea === null ? null : Math.max(air.ventilationArea, OPENINGS_OF_ROOF);
  const open: AirLayer = {
    ...air,
    thickness,
    ventilation: "well",
    open: "both ends",
    ventilationArea: area,
    resistance: null,
  };
  const step = {
    does: [{ kind: "air widened" as const, thickness }],
    buildUp: replaceLayer(buildUp, index, open),
    surroundings: null,
    thicknessInside: 0,
    thicknessOutside: thickness - air.thickness,
  };
  return changeOf({ key: "ventilated", effort: EFFORT.ventilate, steps: [step] });
}

function cavityBeforeTightLayer(buildUp: BuildUp): Change[] {
  const extent = insulationExtent(buildUp);
  const end = endOfCounted(buildUp);
  if (extent === null) return [];
  const at =
    buildUp.element === "flat roof" ? deckOver(buildUp, extent.last) : tightestBetween(buildUp, extent.last + 1, end);
  if (at === null) return [];
  if (isLog(buildUp.layers[at]!)) return [];
  const before = buildUp.layers[at - 1]!;
  const thickness = isRoof(buildUp) ? VENTILATED_HEIGHT : CAVITY;
  const framing = buildUp.element === "flat roof" ? before.framing : null;
  const needsSheet = isInsulating(before) && letsWindThrough(before);
  const layers: Layer[] = [...(needsSheet ? [sheetLayer(BREATHER_SHEETS[0]!)] : []), ventilatedAir(thickness, framing)];
  const step = {
    does: [
      {
        kind: "cavity" as const,
        thickness,
        place: betweenLayers(buildUp, at),
        withSheet: needsSheet,
        needsBracing: bracesFrame(buildUp, at),
      },
    ],
    buildUp: insertLayers(buildUp, at, ...layers),
    surroundings: null,
    thicknessInside: 0,
    thicknessOutside: thickness,
  };
  return changeOf({ key: "ventilated", effort: EFFORT.ventilate, steps: [step] });
}

/** Whether a layer is sheathing directly on framing, from which the air would separate it. */
function bracesFrame(buildUp: BuildUp, index: number): boolean {
  const board = buildUp.layers[index]!;
  return board.type !== "air" && isSheathing({ buildUp }, board) && buildUp.layers[index - 1]?.framing !== null;
}

/** Index of the tightest layer between two indices, if it is worth ventilating; otherwise null. */
function tightestBetween(buildUp: BuildUp, from: number, to: number): number | null {
  let tightest: number | null = null;
  for (let index = from; index < to; index += 1) {
    const sd = sdOf(buildUp.layers[index]!);
    if (sd >= WORTH_VENTILATING && (tightest === null || sd > sdOf(buildUp.layers[tightest]!))) tightest = index;
  }
  return tightest;
}

/** Index of a deck directly over the insulation of a flat roof, which can span over air, unlike a skin; or null. */
function deckOver(buildUp: BuildUp, insulation: number): number | null {
  const layer = buildUp.layers[insulation + 1];
  if (layer?.type !== "material") return null;
  const { kind } = layer.material;
  return kind === "wood" || kind === "board" || kind === "metal" ? insulation + 1 : null;
}

function letsWindThrough(layer: Layer): boolean {
  return layer.type === "material" && layer.material.vapourResistanceFactorDry! < WIND_GOES_THROUGH;
}
