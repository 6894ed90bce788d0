import {
  asTightAsMetal,
  isPolythene,
  sheetOfPolythene,
  THICKEST_POLYTHENE_SHEET,
} from "../../project/resolve/special-sheets.ts";
import type { BuildUp, Layer, SolidLayer } from "../../project/types.ts";

/**
 * A build-up with one layer in another thickness.
 *
 * @param buildUp - the build-up
 * @param at - index of the layer, which has a thickness
 * @param thickness - [m]; 0 takes the layer out, and water that was stated for it goes with it
 * @returns the build-up, without variants
 */
export function withThickness(buildUp: BuildUp, at: number, thickness: number): BuildUp {
  const { layers, trappedWater } = buildUp;
  if (thickness > 0) return { ...buildUp, layers: layers.with(at, inThickness(layers[at]!, thickness)), variants: [] };
  const stays = trappedWater
    .filter(({ layer }) => layer !== at)
    .map((water) => (water.layer > at ? { ...water, layer: water.layer - 1 } : water));
  return { ...buildUp, layers: layers.toSpliced(at, 1), trappedWater: stays, variants: [] };
}

/** Thin polythene is a sheet, and metal is as tight as a foil however thin: as the reader has it. */
function inThickness(layer: Layer, thickness: number): Layer {
  if (layer.type === "air") return { ...layer, thickness };
  const { material } = layer;
  if (isPolythene(material) && thickness < THICKEST_POLYTHENE_SHEET) {
    const sheet: SolidLayer = {
      ...layer,
      type: "sheet",
      material: sheetOfPolythene(material, thickness),
      thickness: 0,
    };
    return sheet;
  }
  return { ...layer, material: asTightAsMetal(material, thickness), thickness };
}
