import type { ProblemPath } from "../../problems/types.ts";
import { insulates } from "../insulates.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenBuildUp } from "../schema/schema-build-up.ts";
import type { Layer } from "../types.ts";

/**
 * Notes likely oversights: layers listed from outside to inside, and framing that no layer uses.
 *
 * @param layers - the build-up's layers, as read
 * @param written - the build-up
 * @param path - where it stands
 * @param context - where notes go
 */
export function noteLayersOverlooked(
  layers: readonly Layer[],
  written: WrittenBuildUp,
  path: ProblemPath,
  context: ReadingContext,
): void {
  if (looksTurnedRound(layers)) {
    const sentence =
      "all the insulation lies outside a well-ventilated air layer, where it does not count; layers run from the room outwards, and these look written from outside: reverse the list";
    context.note("layers-from-outside", [...path, "layers"], sentence);
  }
  const used = new Set(layers.map(({ framing }) => framing?.name));
  for (const name of Object.keys(written.framings ?? {})) {
    if (used.has(name)) continue;
    const sentence = `no layer uses it; write \`framing: ${name}\` at each layer that it runs through`;
    context.note("framing-unused", [...path, "framings", name], sentence);
  }
}

/** Whether all insulation lies outside a well-ventilated air layer, and none on its room side. */
export function looksTurnedRound(layers: readonly Layer[]): boolean {
  const air = layers.findIndex((layer) => layer.type === "air" && layer.ventilation === "well");
  return air !== -1 && !layers.slice(0, air).some(insulates) && layers.slice(air + 1).some(insulates);
}
