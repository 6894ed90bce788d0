import { comparable } from "../../problems/near-names.ts";
import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenLayer } from "../schema/schema-layer.ts";
import type { Layer } from "../types.ts";

/** A layer while a variant is being made. */
export interface DraftLayer {
  /** Its index in the build-up that the variant belongs to; null for a layer that a change added. */
  base: number | null;
  /** Its keys as the file has them, with quantities read; null if they have problems. */
  written: WrittenLayer | null;
  /** The layer itself; null if it has problems. */
  layer: Layer | null;
}

/**
 * The layers of a build-up, ready to be changed.
 *
 * @param path - where the build-up stands
 * @param layers - its layers; null for those with problems
 * @param context - data
 * @returns one entry for each layer
 */
export function draftOf(
  path: ProblemPath,
  layers: readonly (Layer | null)[],
  context: ReadingContext,
): readonly DraftLayer[] {
  return layers.map((layer, index) => {
    const written = context.shape.at<WrittenLayer>([...path, "layers", index]);
    return { base: index, written, layer };
  });
}

/**
 * Finds the layer that a change names: one of the original build-up, or else one that an earlier change added.
 *
 * @param wanted - its name, or its material where that occurs once
 * @param path - where it is named
 * @param draft - the layers as changed so far
 * @param original - the layers of the build-up
 * @param context - problems
 * @returns its index among the layers as changed so far; null after adding a problem, or if a layer has problems itself
 */
export function findInDraft(
  wanted: string,
  path: ProblemPath,
  draft: readonly DraftLayer[],
  original: readonly DraftLayer[],
  context: ReadingContext,
): number | null {
  const own = called(wanted, original);
  const putIn = draft.filter(({ base, layer }) => base === null || layer !== original[base]!.layer);
  const found = own.length > 0 ? own : called(wanted, putIn);
  const [only] = found;
  if (found.length > 1) {
    const numbers = found.map((layer) => String((own.length > 0 ? original : draft).indexOf(layer) + 1));
    context.collector.add("change-layer-not-one", path, { name: wanted, numbers });
    return null;
  }
  if (only === undefined) {
    if (original.some(({ layer }) => layer === null)) return null;
    const known = [...new Set([...original, ...putIn].map(({ layer }) => layer!.name))];
    context.collector.add("change-layer-unknown", path, {
      name: wanted,
      near: context.nearNames(wanted, known),
      known,
    });
    return null;
  }
  const at = draft.findIndex((layer) => (only.base === null ? layer === only : layer.base === only.base));
  if (at === -1) context.collector.add("change-layer-gone", path, { name: wanted });
  return at === -1 ? null : at;
}

/** Layers of that name; if there are none, layers of that material. */
function called(wanted: string, layers: readonly DraftLayer[]): DraftLayer[] {
  const named = layers.filter(({ layer }) => layer !== null && hasOwnName(layer) && isCalled(layer.name, wanted));
  if (named.length > 0) return named;
  return layers.filter(({ layer }) => layer !== null && isCalled(materialName(layer), wanted));
}

function hasOwnName(layer: Layer): boolean {
  return layer.name !== materialName(layer);
}

function materialName(layer: Layer): string {
  return layer.type === "air" ? layer.name : layer.material.name;
}

function isCalled(name: string, wanted: string): boolean {
  return comparable(name) === comparable(wanted);
}
