import { insulates } from "../project/insulates.ts";
import type { Layer } from "../project/types.ts";
import { layerSd } from "../vapour/layer-sd.ts";
import { TIGHT } from "../vapour/tight.ts";

/** Range of thickness of roof deck boards [m] (common practice). */
const THINNEST_DECK = 0.009;
const THICKEST_DECK = 0.06;
/** Least thickness of a slab that carries insulation; least depth of air between joists [m] (common practice). */
const THINNEST_SLAB = 0.04;
const LEAST_JOIST_SPACE = 0.05;

/** The deck of a roof, and whether its place makes the roof a cold roof, null where the deck alone does not decide. */
export interface RoofDeck {
  index: number | null;
  isCold: boolean | null;
}

/**
 * The deck of a flat roof: the layer stated to be the deck, else the board that the main insulation lies on. A board
 * above insulation that rests on another layer is an overlay. Insulation between joists has its deck above it. A
 * boarded ceiling, an insulating board and decking over the weather skin are not decks.
 *
 * @param layers - from the room outwards
 * @param insulation - index of the main insulation
 * @returns its index, null without a deck, and whether the roof is cold
 * Source: METHOD.md, Roofs (common practice).
 */
export function roofDeck(layers: readonly Layer[], insulation: number): RoofDeck {
  const said = layers.findIndex((layer) => layer.type !== "air" && layer.purpose === "deck");
  if (said !== -1) return { index: said, isCold: said > insulation };
  const skin = layers.findIndex((layer, index) => index > insulation && !isDeckBoard(layer) && isTight(layer));
  const above = layers.findIndex(
    (layer, index) => index > insulation && (skin === -1 || index < skin) && isDeckBoard(layer),
  );
  const below = layers.findLastIndex((layer, index) => index < insulation && isDeckBoard(layer));
  const isBetweenJoists = layers[insulation]!.framing !== null;
  if (isBetweenJoists) return { index: above === -1 ? indexOrNull(below) : above, isCold: null };
  if (below !== -1 || liesOnSomething(layers, insulation)) return { index: indexOrNull(below), isCold: null };
  return above === -1 ? { index: null, isCold: null } : { index: above, isCold: true };
}

function indexOrNull(index: number): number | null {
  return index === -1 ? null : index;
}

/** Whether insulation rests on metal or a slab, or is foam board over the space between joists. */
function liesOnSomething(layers: readonly Layer[], insulation: number): boolean {
  const isFoam = layers[insulation]!.type === "material" && kindOf(layers[insulation]!) === "plastic";
  return layers.slice(0, insulation).some((layer) => {
    if (layer.type === "air") return isFoam && layer.ventilation === "none" && layer.thickness >= LEAST_JOIST_SPACE;
    const kind = kindOf(layer);
    return kind === "metal" || (kind === "mineral" && !insulates(layer) && layer.thickness >= THINNEST_SLAB);
  });
}

function kindOf(layer: Layer): string | null {
  return layer.type === "air" ? null : layer.material.kind;
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
