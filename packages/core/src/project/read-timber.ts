import type { Layer, Material } from "./types.ts";

/** The timber that a moisture meter reads in a layer: the layer itself, or the framing that runs through it. */
export interface ReadTimber {
  part: "own" | "framing";
  /** [kg/m³] */
  density: number;
}

/**
 * The timber that a moisture-meter reading of a layer refers to, and which then holds the water.
 *
 * @param layer - any
 * @returns the layer's own wood or wood-based board if its density is known; otherwise its wooden framing if the
 *   framing's density is known; null where there is neither
 * Source: this project's rule; reading the file, the amount of water and the choice of heat-flow path all follow it.
 */
export function readTimber(layer: Layer): ReadTimber | null {
  const own = layer.type === "material" ? layer.material : null;
  if (isTimber(own) && own.density !== null) return { part: "own", density: own.density };
  const framing = layer.framing?.material ?? null;
  if (framing?.kind === "wood" && framing.density !== null) return { part: "framing", density: framing.density };
  return null;
}

/**
 * Whether a layer contains timber at all, known density or not.
 *
 * @param layer - any
 * @returns true for wood and wood-based board, and for wooden framing
 */
export function hasTimber(layer: Layer): boolean {
  return (layer.type === "material" && isTimber(layer.material)) || layer.framing?.material.kind === "wood";
}

function isTimber(material: Material | null): material is Material {
  return material?.kind === "wood" || material?.kind === "board";
}
