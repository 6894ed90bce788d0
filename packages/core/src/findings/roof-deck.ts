import { insulates } from "../project/insulates.ts";
import type { Layer } from "../project/types.ts";
import { layerSd } from "../vapour/layer-sd.ts";
import { TIGHT } from "../vapour/tight.ts";

/** A board that roofs are decked with is this thick [m] (common practice). */
const THINNEST_DECK = 0.009;
const THICKEST_DECK = 0.06;

/**
 * The deck of a flat roof: the board over the insulation, below the weather skin; else the board that the insulation
 * lies on. A boarded ceiling, an insulating board and decking over the weather skin are none.
 *
 * @param layers - from the room outwards
 * @param insulation - index of the main insulation
 * @returns its index; null without a board
 * Source: this project's rule on common practice.
 */
export function roofDeck(layers: readonly Layer[], insulation: number): number | null {
  const skin = layers.findIndex((layer, index) => index > insulation && !isDeckBoard(layer) && isTight(layer));
  const above = layers.findIndex(
    (layer, index) => index > insulation && (skin === -1 || index < skin) && isDeckBoard(layer),
  );
  if (above !== -1) return above;
  const below = layers.findLastIndex((layer, index) => index < insulation && isDeckBoard(layer));
  return below === -1 ? null : below;
}

function isDeckBoard(layer: Layer): boolean {
  if (layer.type !== "material" || layer.framing !== null || insulates(layer)) return false;
  const { kind } = layer.material;
  const thick = layer.thickness >= THINNEST_DECK && layer.thickness <= THICKEST_DECK;
  return thick && (kind === "board" || kind === "wood");
}

function isTight(layer: Layer): boolean {
  return layer.type !== "air" && layerSd(layer, "dry") >= TIGHT;
}
