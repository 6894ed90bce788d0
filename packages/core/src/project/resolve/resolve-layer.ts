import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenLayer } from "../schema/schema-layer.ts";
import type { WrittenFraming } from "../schema/schema-material.ts";
import type { Element, Framing, Layer } from "../types.ts";
import { textAt } from "../value-at.ts";
import { resolveAirLayer } from "./resolve-air-layer.ts";
import { checkFramingNames, type Framings, resolveFraming } from "./resolve-framing.ts";
import { findMaterial } from "./resolve-material.ts";
import { resolveSolidLayer } from "./resolve-solid-layer.ts";

/** What a layer must know about its build-up. */
export interface LayerSurroundings {
  element: Element;
  /** True if it stands upright: openings are then given per metre of length. */
  isUpright: boolean;
  framings: Framings;
}

/**
 * Reads one layer.
 *
 * @param path - where it stands
 * @param surroundings - what it must know about its build-up
 * @param context - data, tables and problems
 * @returns the layer, or null when it has problems (those of its shape are reported elsewhere)
 */
export function resolveLayer(
  path: ProblemPath,
  surroundings: LayerSurroundings,
  context: ReadingContext,
): Layer | null {
  const written = context.shape.at<WrittenLayer>(path);
  if (written === null) {
    checkNames(path, surroundings, context);
    return null;
  }
  return resolveWrittenLayer(written, path, surroundings, context);
}

/**
 * Makes a layer from its keys.
 *
 * @param written - its keys, of the right shape
 * @param path - where they stand; their problems point there
 * @param surroundings - what it must know about its build-up
 * @param context - tables and problems
 * @returns the layer, or null after adding a problem
 */
export function resolveWrittenLayer(
  written: WrittenLayer,
  path: ProblemPath,
  surroundings: LayerSurroundings,
  context: ReadingContext,
): Layer | null {
  const framing = framingOf(written.framing, [...path, "framing"], surroundings, context);
  const layer =
    written.air === undefined
      ? resolveSolidLayer(written, path, context)
      : resolveAirLayer(written, path, surroundings.isUpright, context);
  if (layer === null || framing === "faulty") return null;
  return { ...layer, framing };
}

function framingOf(
  written: WrittenLayer["framing"],
  path: ProblemPath,
  surroundings: LayerSurroundings,
  context: ReadingContext,
): Framing | null | "faulty" {
  if (written === undefined) return null;
  if (typeof written === "string") return namedFraming(written, path, surroundings, context);
  return framingOfOneLayer(written, path, surroundings, context) ?? "faulty";
}

/** Makes a framing written inside a layer, which is named after its material. */
function framingOfOneLayer(
  written: WrittenFraming,
  path: ProblemPath,
  { element }: LayerSurroundings,
  context: ReadingContext,
): Framing | null {
  const name = typeof written.material === "string" ? written.material : written.material.name;
  return resolveFraming(name, written, element, path, true, context);
}

function namedFraming(
  name: string,
  path: ProblemPath,
  { framings }: LayerSurroundings,
  context: ReadingContext,
): Framing | "faulty" {
  if (framings.has(name)) return framings.get(name) ?? "faulty";
  context.collector.add("framing-unknown", path, {
    name,
    near: context.nearNames(name, framings.keys()),
    known: [...framings.keys()],
  });
  return "faulty";
}

/** Checks the names in a layer that has other problems. */
function checkNames(path: ProblemPath, surroundings: LayerSurroundings, context: ReadingContext): void {
  const material = textAt(context.file.data, [...path, "material"]);
  if (material !== null) findMaterial(material, [...path, "material"], context);
  const framing = textAt(context.file.data, [...path, "framing"]);
  if (framing !== null) namedFraming(framing, [...path, "framing"], surroundings, context);
  else checkFramingNames([...path, "framing"], context);
}
