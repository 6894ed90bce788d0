import type { BuildUp, Layer, LayerPurpose } from "../../project/types.ts";
import type { DryingChange } from "../../result/types.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import { sdOfLayer, withSd } from "../section-nodes/what-if-section.ts";

/** Divisor for the sd of a more open vapour layer [–] (this project's rule, METHOD.md, Sensitivity). */
export const MORE_OPEN = 10;

/** sd of a breather membrane [m] (common practice). */
export const SD_OF_BREATHER = 0.2;

/** μ of vapour-open wood fibre board [–]. Source: ISO 10456:2007 Table 3, fibreboard (from memory). */
export const FACTOR_OF_OPEN_BOARD = 5;

/** sd from which a sheet is worth replacing [m] (this project's rule, as for a vapour layer). */
const WORTH_EXCHANGING = 0.5;

/** A change that might let a section dry faster, with the changed slices. */
export interface DryingVariant {
  by: DryingChange;
  slices: Slice[];
}

/**
 * Changes that might let a layer dry faster, each as a whole section: the vapour layer left out or more open, a tight
 * sheet further out replaced by a breather membrane, a board further out by a vapour-open one. Required layers stay.
 *
 * @param slices - the section's slices
 * @param wet - index of the layer that holds the water
 * @param vapourLayer - indices of the vapour layer's layers
 * @param buildUp - its build-up
 * @returns the changes that apply to this section
 */
export function dryingVariants(
  slices: readonly Slice[],
  wet: number,
  vapourLayer: readonly number[],
  buildUp: BuildUp,
): DryingVariant[] {
  const changeable = crossedLayers(slices, wet, buildUp);
  const slowing = changeable.filter((layer) => vapourLayer.includes(layer));
  const outside = changeable.filter((layer) => layer > wet && !vapourLayer.includes(layer));
  return [...openedVapourLayer(slices, slowing), ...openedOutside(slices, outside, buildUp)];
}

/** Layers other than the wet one that the section crosses outside framing and that may change. */
function crossedLayers(slices: readonly Slice[], wet: number, buildUp: BuildUp): number[] {
  const weatherSide = buildUp.faces === "outdoors" ? buildUp.layers.length - 1 : -1;
  return buildUp.layers.flatMap((layer, index) => {
    if (index === wet || index === weatherSide || layer.type === "air" || isRequired(layer.purpose)) return [];
    return slices.some((slice) => slice.layer === index && slice.part === "whole") ? [index] : [];
  });
}

/** Purposes for which a tight layer must stay. */
function isRequired(purpose: LayerPurpose | null): boolean {
  return purpose !== null && purpose !== "vapour layer";
}

function openedVapourLayer(slices: readonly Slice[], layers: readonly number[]): DryingVariant[] {
  if (layers.length === 0) return [];
  const change = (factor: number): Slice[] =>
    layers.reduce((changed, layer) => withSd(changed, layer, sdOfLayer(slices, layer) * factor), [...slices]);
  return [
    { by: { kind: "no vapour layer", layers }, slices: change(0) },
    { by: { kind: "vapour layer more open", layers }, slices: change(1 / MORE_OPEN) },
  ];
}

function openedOutside(slices: readonly Slice[], layers: readonly number[], buildUp: BuildUp): DryingVariant[] {
  return layers.flatMap((index) => {
    const sd = sdOfLayer(slices, index);
    const opened = openedLayer(buildUp.layers[index]!, index, sd);
    return opened === null || !(opened.sd < sd) ? [] : [{ by: opened.by, slices: withSd(slices, index, opened.sd) }];
  });
}

function openedLayer(layer: Layer, index: number, sd: number): { by: DryingChange; sd: number } | null {
  if (layer.type === "sheet" && sd >= WORTH_EXCHANGING) {
    return { by: { kind: "breather membrane", layer: index, sd: SD_OF_BREATHER }, sd: SD_OF_BREATHER };
  }
  if (layer.type === "material" && layer.material.kind === "board") {
    return { by: { kind: "open wood fibre board", layer: index }, sd: FACTOR_OF_OPEN_BOARD * layer.thickness };
  }
  return null;
}
