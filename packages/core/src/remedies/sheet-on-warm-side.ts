import { holdsRain } from "../findings/rain-on-wall.ts";
import type { BuildUp, Material } from "../project/types.ts";
import { TIGHT } from "../vapour/tight.ts";
import { insertLayers, replaceLayer } from "./edit-layers.ts";
import { sheetLayer } from "./new-layers.ts";
import { betweenLayers, endOfCounted, isVapourSheet, layersBySide, sdOf, warmFace } from "./places.ts";
import { namedSheet, WARM_SIDE_SHEETS } from "./stock.ts";
import { type Change, type ChangeStep, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/** The next tighter membrane is no more work than the one before it. */
const CLOSE_MEMBRANES = 1;

/** In pairs, two membranes are tried: the tightest, and the most open from this sd on, which traps less water [m]. */
const PROBE_SD = 5;

/**
 * Puts a vapour layer on the warm side of all insulation: a new one, or a tighter one in place of an existing sheet.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change, with the common membranes that are tighter than the existing layers, most open first
 */
export function sheetOnWarmSide(situation: Situation): Change[] {
  const { buildUp } = situation;
  const at = warmFace(situation);
  if (at === null || holdsRain(buildUp)) return [];
  const { warm } = layersBySide(situation);
  const tightest = Math.max(0, ...warm.map((index) => sdOf(buildUp.layers[index]!)));
  const there = warm.find((index) => isSpareVapourSheet(buildUp, index)) ?? null;
  const most = hasSpareTightSheet(situation) ? TIGHT : Number.POSITIVE_INFINITY;
  const sheets = WARM_SIDE_SHEETS.filter((sheet) => sdOfSheet(sheet) > tightest && sdOfSheet(sheet) < most);
  const steps = sheets.map((sheet): ChangeStep => {
    const layer = { ...sheetLayer(sheet), purpose: "vapour layer" as const };
    return {
      does: [
        there === null
          ? { kind: "sheet added", sheet: namedSheet(sheet), place: betweenLayers(buildUp, at) }
          : { kind: "sheet exchanged", sheet: namedSheet(sheet), for: buildUp.layers[there]!.name },
      ],
      buildUp: there === null ? insertLayers(buildUp, at, layer) : replaceLayer(buildUp, there, layer),
      surroundings: null,
      thicknessInside: 0,
      thicknessOutside: 0,
    };
  });
  const probe = sheets.findIndex((sheet) => sdOfSheet(sheet) >= PROBE_SD);
  return changeOf({
    key: "sheet on the warm side",
    effort: EFFORT.sheetOnWarmSide,
    steps,
    closeSteps: CLOSE_MEMBRANES,
    probes: [...new Set([steps.length - 1, Math.max(0, probe)])],
  });
}

/** Whether a tight sheet lies elsewhere without need: it should be moved, and no second tight one added. */
function hasSpareTightSheet(situation: Situation): boolean {
  const { buildUp } = situation;
  const { warm } = layersBySide(situation);
  return buildUp.layers
    .slice(0, endOfCounted(buildUp))
    .some(
      (layer, index) =>
        layer.type === "sheet" && sdOf(layer) >= TIGHT && !warm.includes(index) && !mustStay(buildUp, index),
    );
}

function sdOfSheet(sheet: Material): number {
  return sheet.equivalentAirLayerThickness!;
}

/** Whether a layer is a sheet that holds vapour back and may be exchanged. */
function isSpareVapourSheet(buildUp: BuildUp, index: number): boolean {
  const layer = buildUp.layers[index]!;
  const isCoating = layer.type === "sheet" && layer.material.group === "coating";
  return isVapourSheet(layer) && !isCoating && !mustStay(buildUp, index);
}
