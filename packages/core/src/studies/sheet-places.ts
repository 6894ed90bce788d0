import { judgeBuildUp } from "../assess-build-up.ts";
import { checkBuildUp } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkSurroundings } from "../given/surroundings.ts";
import type { BuildUp, SolidLayer } from "../project/types.ts";
import { insertLayers, removeLayer } from "../remedies/edit-layers.ts";
import { sheetLayer } from "../remedies/new-layers.ts";
import { bestInsulation, betweenLayers, endOfCounted, sdOf } from "../remedies/places.ts";
import { betweenInWords } from "../remedies/remedy-in-words.ts";
import type { SheetPlace, SheetPlaces } from "../result/types.ts";
import type { Surroundings } from "../surroundings/surroundings.ts";
import { ORDINARY_SHEET, ownSheet } from "./own-sheet.ts";

/**
 * Tries the vapour sheet in every place between the layers, and left out: the build-up's own sheet, or an ordinary one
 * if it has none. Each place is judged as by `assessBuildUp`.
 *
 * @param buildUp - the build-up
 * @param surroundings - outdoor air and rooms, as returned by `surroundingsOf`
 * @returns the places from the room outwards; null if there is no insulation for a sheet to lie at, or if the build-up
 *   lies on the ground
 * @throws RangeError when a value is out of range
 * Source: this project's rule: places end at well-ventilated air, and an outer face exposed to the weather is not one.
 */
export function sheetPlaces(buildUp: BuildUp, surroundings: Surroundings): SheetPlaces | null {
  refuseFaults([...checkBuildUp(buildUp, ["buildUp"]), ...checkSurroundings(surroundings, ["surroundings"])]);
  if (bestInsulation(buildUp) === null || buildUp.faces === "ground") return null;
  const own = ownSheet(buildUp);
  const added: SolidLayer = { ...sheetLayer(ORDINARY_SHEET), purpose: "vapour layer" };
  const sheet = own === null ? added : (buildUp.layers[own] as SolidLayer);
  const bare = own === null ? buildUp : removeLayer(buildUp, own);
  const gaps = Array.from({ length: lastGap(bare, own) + 1 }, (_, at) => at);
  const placeAt = (at: number | null): SheetPlace => {
    const changed = at === null ? bare : insertLayers(bare, at, sheet);
    const { judgement, evidence } = judgeBuildUp(changed, surroundings, "what the judgement depends on");
    const { withinMonth } = evidence.calculation.governing;
    const isBeyond = judgement.word === "beyond this method";
    return {
      at,
      isDrawn: at === own,
      words: at === null ? "left out" : betweenInWords(betweenLayers(bare, at)),
      judgement: judgement.word,
      verdict: isBeyond ? null : withinMonth.verdict,
      peak: isBeyond ? 0 : withinMonth.peak,
    };
  };
  return { own, name: sheet.name, sd: sdOf(sheet), places: [null, ...gaps].map(placeAt) };
}

/** The last place: before well-ventilated air; the outer face counts only if the sheet already lies there. */
function lastGap(bare: BuildUp, own: number | null): number {
  const end = endOfCounted(bare);
  return end < bare.layers.length || own === end ? end : end - 1;
}
