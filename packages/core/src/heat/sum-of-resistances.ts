import type { CountedLayer } from "./types.ts";

/**
 * Resistance of layers in series, without framing.
 *
 * @param layers - counted layers
 * @returns ΣR [m²·K/W]
 * Source: definition.
 */
export function sumOfResistances(layers: readonly Pick<CountedLayer, "resistance">[]): number {
  return layers.reduce((sum, { resistance }) => sum + resistance, 0);
}
