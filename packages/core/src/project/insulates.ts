import type { Layer } from "./types.ts";

/** The conductivity of insulation is below this [W/(m·K)] (common practice). */
export const INSULATION_CONDUCTS_UNDER = 0.065;

/** Whether a layer insulates by its material, whatever its thickness. */
export function insulates(layer: Layer): boolean {
  const conductivity = layer.type === "material" ? layer.material.conductivity : null;
  return conductivity !== null && conductivity < INSULATION_CONDUCTS_UNDER;
}
