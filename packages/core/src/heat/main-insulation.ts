import type { CountedLayer } from "./types.ts";

/**
 * The main insulation: the counted layer with the largest resistance.
 *
 * @param counted - counted layers, at least one
 * @returns the layer, or null where none has any resistance
 * Source: this project's rule (METHOD.md, Vapour resistance of layers).
 */
export function mainInsulation(counted: readonly CountedLayer[]): CountedLayer | null {
  let main: CountedLayer | null = null;
  for (const layer of counted) {
    if (layer.resistance > 0 && (main === null || layer.resistance > main.resistance)) main = layer;
  }
  return main;
}
