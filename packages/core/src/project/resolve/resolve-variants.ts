import { comparable } from "../../problems/near-names.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { readTimber } from "../read-timber.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenChange } from "../schema/schema-variant.ts";
import { makeSlug } from "../slug.ts";
import type { BuildUp, Layer, TrappedWater, Variant } from "../types.ts";
import { listAt, textAt } from "../value-at.ts";
import { checkResistance } from "./check-resistance.ts";
import { checkWays } from "./check-ways.ts";
import { type DraftLayer, draftOf } from "./draft-layers.ts";
import { framingsApart } from "./framings-apart.ts";
import { applyChange } from "./resolve-change.ts";
import type { LayerSurroundings } from "./resolve-layer.ts";
import { stuffBesideGaps } from "./stuff-beside-gaps.ts";

/** A variant's layers, each with the index that it has in the original build-up. */
export interface ChangedLayers {
  name: string;
  /** The changes in words. */
  changes: string[];
  layers: readonly DraftLayer[];
}

/**
 * Reads the variants of a build-up, applying their changes one after another.
 *
 * @param path - where the build-up stands
 * @param layers - its layers; null for those with problems
 * @param surroundings - what a layer must know about its build-up
 * @param context - data, tables and problems
 * @returns the variants; those with problems are left out
 */
export function resolveVariants(
  path: ProblemPath,
  layers: readonly (Layer | null)[],
  surroundings: LayerSurroundings,
  context: ReadingContext,
): ChangedLayers[] {
  const names = new Set<string>();
  return listAt(context.file.data, [...path, "variants"]).flatMap((_, index) => {
    const variantPath = [...path, "variants", index];
    checkName(variantPath, names, context);
    const variant = resolveVariant(variantPath, draftOf(path, layers, context), surroundings, context);
    return variant === null ? [] : [variant];
  });
}

/** Checks that no other variant has the same name. */
function checkName(path: ProblemPath, names: Set<string>, context: ReadingContext): void {
  const name = textAt(context.file.data, [...path, "name"]);
  if (name === null) return;
  if (names.has(comparable(name))) context.collector.add("variant-twice", [...path, "name"], { name });
  names.add(comparable(name));
}

function resolveVariant(
  path: ProblemPath,
  draft: readonly DraftLayer[],
  surroundings: LayerSurroundings,
  context: ReadingContext,
): ChangedLayers | null {
  const { data } = context.file;
  const before = context.collector.problems.length;
  const changes: string[] = [];
  let layers = draft;
  for (const index of listAt(data, [...path, "changes"]).keys()) {
    const changePath = [...path, "changes", index];
    const change = context.shape.at<WrittenChange>(changePath);
    const applied = change && applyChange(change, changePath, layers, draft, surroundings, context);
    if (applied === null) continue;
    layers = applied.layers;
    changes.push(applied.words);
  }
  if (context.collector.problems.length === before && layers.length === 0)
    context.collector.add("variant-nothing-left", [...path, "changes"]);
  const changed = layers.map(({ layer }) => layer);
  checkResistance(changed, [...path, "changes"], context);
  if (changed.every((layer) => layer !== null)) checkWays(framingsApart(changed), [...path, "changes"], context);
  return context.collector.problems.length > before
    ? null
    : { name: textAt(data, [...path, "name"]) ?? "", changes, layers };
}

/**
 * Makes a variant into a complete build-up.
 *
 * @param buildUp - the build-up it belongs to
 * @param changed - its layers
 * @param slugs - slugs used so far
 * @returns the variant; water stated for a layer moves with the layer, or is dropped with it, and the words say so
 */
export function variantOf(buildUp: BuildUp, changed: ChangedLayers, slugs: Set<string>): Variant {
  const { name } = changed;
  const layers = stuffBesideGaps(framingsApart(changed.layers.map(({ layer }) => layer!)));
  const trappedWater = buildUp.trappedWater.flatMap((water) => waterIn(water, changed.layers));
  const gone = buildUp.trappedWater.length - trappedWater.length;
  return {
    name,
    changes: gone === 0 ? changed.changes : [...changed.changes, "the water stated for it goes with the layer"],
    buildUp: {
      ...buildUp,
      name: `${buildUp.name}: ${name}`,
      slug: makeSlug(`${buildUp.slug} ${name}`, slugs),
      layers,
      trappedWater,
      variants: [],
    },
  };
}

/** Stated water at the layer's new index; none if the layer is gone or can hold none. */
function waterIn(water: TrappedWater, layers: readonly DraftLayer[]): TrappedWater[] {
  const at = layers.findIndex(({ base }) => base === water.layer);
  const layer = layers[at]?.layer;
  if (layer?.type !== "material" || (water.reading !== null && readTimber(layer) === null)) return [];
  return [{ ...water, layer: at }];
}
