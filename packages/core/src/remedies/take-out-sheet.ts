import type { Layer } from "../project/types.ts";
import { holdsStatedWater, removeLayer } from "./edit-layers.ts";
import { endOfCounted, insulationExtent, nameWithCount, sdOf } from "./places.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/** A layer with at least this sd is worth removing [m] (this project's rule, as for candidates). */
export const WORTH_TAKING_OUT = 0.5;

/** Finishes up to this thickness can be removed [m] (this project's rule). */
const THICKEST_FINISH = 0.005;

/**
 * Leaves out a sheet or a tight finish: for example a vapour layer on the cold side of a cooled building, a vinyl
 * wallpaper, or one of two tight layers. An outer sheet that keeps wind and rain out is exchanged instead
 * (`open-cold-side.ts`).
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for each such layer, in one size
 */
export function takeOutSheet({ buildUp }: Situation): Change[] {
  const extent = insulationExtent(buildUp);
  const isAllThereIs = endOfCounted(buildUp) === 1;
  if (isAllThereIs) return [];
  return buildUp.layers.slice(0, endOfCounted(buildUp)).flatMap((layer, index) => {
    const isOuterSheet = index > (extent?.last ?? 0);
    if (isOuterSheet || !comesOff(layer) || mustStay(buildUp, index) || holdsStatedWater(buildUp, index)) return [];
    const step = {
      does: [{ kind: "left out" as const, layer: layer.name }],
      buildUp: removeLayer(buildUp, index),
      surroundings: null,
      thicknessInside: 0,
      thicknessOutside: 0,
    };
    return changeOf({ key: `left out: ${nameWithCount(buildUp, index)}`, effort: EFFORT.takeOut, steps: [step] });
  });
}

function comesOff(layer: Layer): boolean {
  if (layer.type === "air" || sdOf(layer) < WORTH_TAKING_OUT) return false;
  return layer.type === "sheet" || (layer.thickness <= THICKEST_FINISH && layer.framing === null);
}
