import { THICKEST_STILL_AIR } from "../../constants.ts";
import { comparable, nearNames } from "../../problems/near-names.ts";
import { inSpeech } from "../../problems/wording.ts";
import type { BuildUp, Layer, Project } from "../../project/types.ts";
import { requireFinite, requireObject, requireText } from "../../require.ts";
import type { VariationQuestion } from "./types.ts";

/** The layer that is meant, or the reason why there is none, in sentences. */
export type VariationLayer = Pick<VariationQuestion, "buildUp" | "layer"> | { refused: string };

/**
 * Finds the layer to vary.
 *
 * @param project - the project
 * @param layerName - a layer's name, or its material
 * @param buildUpName - the build-up's name; null for the only build-up that has such a layer
 * @param thickest - the greatest thickness asked for [m]
 * @returns indices of build-up and layer, or what is wrong and what to write
 */
export function findVariationLayer(
  project: Pick<Project, "buildUps">,
  layerName: string,
  buildUpName: string | null,
  thickest: number,
): VariationLayer {
  requireObject(project, "project", ["buildUps"]);
  requireText(layerName, "layer");
  if (buildUpName !== null) requireText(buildUpName, "build-up");
  requireFinite(thickest, "thickest", "m");
  const all = project.buildUps.map((buildUp, index) => ({ buildUp, index }));
  const asked = all.filter(({ buildUp }) => buildUpName === null || isCalled(buildUp.name, buildUpName));
  if (asked.length === 0)
    return {
      refused: unknown(
        "build-up",
        buildUpName!,
        all.map(({ buildUp }) => buildUp.name),
      ),
    };
  const found = asked.flatMap(({ buildUp, index }) =>
    layersCalled(layerName, buildUp).map((layer) => ({ buildUp: index, layer })),
  );
  const [only] = found;
  if (only === undefined) {
    const names = asked.flatMap(({ buildUp }) => buildUp.layers.map(({ name }) => name));
    return { refused: unknown("layer", layerName, [...new Set(names)]) };
  }
  if (found.length > 1)
    return {
      refused: severalAre(
        layerName,
        found.map((one) => project.buildUps[one.buildUp]!),
      ),
    };
  const refused = whyNotVaried(project.buildUps[only.buildUp]!.layers[only.layer]!, thickest);
  return refused === null ? only : { refused };
}

/** Layers of that name; if there are none, layers of that material. */
function layersCalled(name: string, { layers }: BuildUp): number[] {
  const indices = (nameOf: (layer: Layer) => string): number[] =>
    layers.flatMap((layer, index) => (isCalled(nameOf(layer), name) ? [index] : []));
  const byName = indices((layer) => layer.name);
  return byName.length > 0 ? byName : indices((layer) => (layer.type === "air" ? layer.name : layer.material.name));
}

function whyNotVaried(layer: Layer, thickest: number): string | null {
  if (layer.type === "sheet") return `${layer.name} is a sheet and has no thickness to vary.`;
  const isStill = layer.type === "air" && layer.ventilation !== "well" && layer.resistance === null;
  if (isStill && thickest > THICKEST_STILL_AIR)
    return "The formula for still air ends at 300 mm. Give a range up to 300 mm.";
  return null;
}

function severalAre(name: string, buildUps: readonly BuildUp[]): string {
  const names = [...new Set(buildUps.map((buildUp) => `"${buildUp.name}"`))];
  return names.length > 1
    ? `Several build-ups have a layer called ${name}: ${inSpeech(names, "and")}. Name the build-up too.`
    : `Several layers of ${names[0]} are called ${name}. Give the one you mean its own name in the file.`;
}

function unknown(what: string, name: string, known: readonly string[]): string {
  const near = nearNames(name, known);
  const offer = near.length > 0 ? `Perhaps you mean ${inSpeech(near, "or")}.` : `There are ${inSpeech(known, "and")}.`;
  return `No ${what} is called ${name}. ${offer}`;
}

function isCalled(name: string, wanted: string): boolean {
  return comparable(name) === comparable(wanted);
}
