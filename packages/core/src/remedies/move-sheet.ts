import { holdsStatedWater, insertLayers, removeLayer, replaceLayer } from "./edit-layers.ts";
import { sheetLayer } from "./new-layers.ts";
import { betweenLayers, endOfCounted, layersBySide, nameWithCount, sdOf, warmFace } from "./places.ts";
import { BREATHER_SHEETS } from "./stock.ts";
import { WORTH_TAKING_OUT } from "./take-out-sheet.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/**
 * Moves a sheet to the warm side of all insulation, if nothing as tight is there yet. An outer sheet is replaced by a
 * breather membrane.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for each such sheet, in one size
 */
export function moveSheet(situation: Situation): Change[] {
  const { buildUp } = situation;
  const at = warmFace(situation);
  if (at === null) return [];
  const { warm, cold } = layersBySide(situation);
  return buildUp.layers.slice(0, endOfCounted(buildUp)).flatMap((layer, index) => {
    const isThere = warm.some((other) => other === index || sdOf(buildUp.layers[other]!) >= sdOf(layer));
    const moves = layer.type === "sheet" && layer.material.group !== "coating" && sdOf(layer) >= WORTH_TAKING_OUT;
    if (isThere || !moves || mustStay(buildUp, index) || holdsStatedWater(buildUp, index)) return [];
    const breather = situation.warmSide === "room" && cold.includes(index) ? sheetLayer(BREATHER_SHEETS[0]!) : null;
    const left = breather === null ? removeLayer(buildUp, index) : replaceLayer(buildUp, index, breather);
    const to = breather === null && index < at ? at - 1 : at;
    const step = {
      does: [
        {
          kind: "sheet moved" as const,
          layer: layer.name,
          place: betweenLayers(left, to),
          leaves: breather?.name ?? null,
        },
      ],
      buildUp: insertLayers(left, to, layer),
      surroundings: null,
      thicknessInside: 0,
      thicknessOutside: 0,
    };
    return changeOf({ key: `moved: ${nameWithCount(buildUp, index)}`, effort: EFFORT.moveSheet, steps: [step] });
  });
}
