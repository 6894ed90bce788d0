import type { ProblemPath } from "../../problems/types.ts";
import { plainDigits } from "../../quantities/format-quantity.ts";
import type { FileData } from "../text/file-data.ts";
import type { Layer } from "../types.ts";
import { textAt, valueAt } from "../value-at.ts";

/**
 * Describes a layer by its name, thickness and framing.
 *
 * @param layer - the layer
 * @returns for example "mineral wool slab, 140 mm, with studs"
 */
export function layerInWords(layer: Layer): string {
  const thickness = layer.type === "material" ? [`${plainDigits(layer.thickness * 1000)} mm`] : [];
  const framing = layer.framing === null ? [] : [`with ${layer.framing.name}`];
  return [layer.name, ...thickness, ...framing].join(", ");
}

/**
 * Describes what a change sets, in the words of the file.
 *
 * @param name - name of the layer before the change
 * @param keys - the keys that it sets
 * @param path - where the change stands
 * @param file - data and the texts as written
 * @returns for example "mineral wool slab: thickness 200 mm"
 */
export function changeInWords(name: string, keys: readonly string[], path: ProblemPath, file: FileData): string {
  const said = keys.map((key) => {
    const at = [...path, key];
    const isThing = typeof valueAt(file.data, at) === "object";
    const value = isThing ? textAt(file.data, [...at, "name"]) : (file.source.writtenAt(at) ?? "");
    return value === null ? `${key} as stated` : `${key} ${value}`;
  });
  return `${name}: ${said.join(", ")}`;
}
