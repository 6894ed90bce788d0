import { comparable } from "../../problems/near-names.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { hasTimber, readTimber } from "../read-timber.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenBuildUp, WrittenTrappedWater } from "../schema/schema-build-up.ts";
import type { Layer, TrappedWater } from "../types.ts";

/** Water trapped in the layer unless stated [kg/m²]. Source: ISO 13788:2012 clause 7 (from memory). */
export const USUAL_TRAPPED_WATER = 1;

/** Month in which drying starts unless stated: October. Source: ISO 13788:2012 clause 7 (from memory). */
export const USUAL_START_MONTH = 9;

/**
 * Finds the layers in which water is trapped.
 *
 * @param written - the build-up, of the right shape
 * @param layers - its layers; null for those with problems
 * @param path - where the build-up stands
 * @param context - problems
 * @returns one entry for each layer; those with problems are left out
 */
export function resolveTrappedWater(
  written: WrittenBuildUp,
  layers: readonly (Layer | null)[],
  path: ProblemPath,
  context: ReadingContext,
): TrappedWater[] {
  const given = written["trapped water"];
  if (given === undefined) return [];
  const isList = Array.isArray(given);
  const list = isList ? given : [given];
  const waterPath = [...path, "trapped water"];
  return list
    .map((water, index) => oneOf(water, layers, isList ? [...waterPath, index] : waterPath, context))
    .filter((water) => water !== null);
}

function oneOf(
  written: WrittenTrappedWater,
  layers: readonly (Layer | null)[],
  path: ProblemPath,
  context: ReadingContext,
): TrappedWater | null {
  const layer = findLayer(written.layer, layers, [...path, "layer"], context);
  if (layer === null) return null;
  const found = layers[layer];
  if (found === null || found === undefined) return null;
  if (found.type !== "material") {
    context.collector.add("trapped-water-nowhere", [...path, "layer"], { name: found.name });
    return null;
  }
  if (written.reading !== undefined && readTimber(found) === null) {
    const code = hasTimber(found) ? "reading-needs-density" : "reading-not-timber";
    context.collector.add(code, [...path, "reading"], { name: found.name });
    return null;
  }
  return {
    layer,
    amount: written.reading === undefined ? (written.amount?.value ?? USUAL_TRAPPED_WATER) : null,
    reading: written.reading?.value ?? null,
    startMonth: written.start ?? USUAL_START_MONTH,
  };
}

/** Finds a layer by its number from 1, by its name, or else by its material. */
function findLayer(
  wanted: string | number,
  layers: readonly (Layer | null)[],
  path: ProblemPath,
  context: ReadingContext,
): number | null {
  if (typeof wanted === "number") {
    if (wanted <= layers.length) return wanted - 1;
    context.collector.add("layer-not-there", path, { count: layers.length });
    return null;
  }
  for (const nameOf of [(layer: Layer) => layer.name, materialName]) {
    const matches = layers.flatMap((layer, index) =>
      layer !== null && comparable(nameOf(layer)) === comparable(wanted) ? [index] : [],
    );
    if (matches.length === 1) return matches[0]!;
    if (matches.length > 1) {
      context.collector.add("layer-not-one", path, {
        name: wanted,
        numbers: matches.map((index) => String(index + 1)),
      });
      return null;
    }
  }
  if (layers.some((layer) => layer === null)) return null;
  const names = layers.map((layer) => layer!.name);
  context.collector.add("layer-unknown", path, { name: wanted, near: context.nearNames(wanted, names), known: names });
  return null;
}

function materialName(layer: Layer): string {
  return layer.type === "air" ? layer.name : layer.material.name;
}
