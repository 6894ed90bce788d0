import type { BuildUp, Material } from "../project/types.ts";
import { holdsStatedWater } from "../remedies/edit-layers.ts";
import { endOfCounted, isVapourSheet, sdOf } from "../remedies/places.ts";
import { WARM_SIDE_SHEETS } from "../remedies/stock.ts";
import { mustStay } from "../remedies/what-must-stay.ts";

/** The sheet that a study adds if the build-up has none of its own. */
export const ORDINARY_SHEET: Material = WARM_SIDE_SHEETS.find(({ name }) => name === "polyethylene sheet 0.15 mm")!;

/**
 * The build-up's own vapour layer: its tightest sheet that may lie elsewhere.
 *
 * @param buildUp - the build-up
 * @returns index of the layer, or null without one
 * Source: this project's rule (METHOD.md, Remedies).
 */
export function ownSheet(buildUp: BuildUp): number | null {
  let tightest: number | null = null;
  for (let index = 0; index < endOfCounted(buildUp); index += 1) {
    if (!mayLieElsewhere(buildUp, index)) continue;
    if (tightest === null || sdOf(buildUp.layers[index]!) > sdOf(buildUp.layers[tightest]!)) tightest = index;
  }
  return tightest;
}

function mayLieElsewhere(buildUp: BuildUp, index: number): boolean {
  const layer = buildUp.layers[index]!;
  if (!isVapourSheet(layer) || layer.material.group === "coating") return false;
  return !mustStay(buildUp, index) && !holdsStatedWater(buildUp, index);
}
