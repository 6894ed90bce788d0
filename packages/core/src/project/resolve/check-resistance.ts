import type { ProblemPath } from "../../problems/types.ts";
import { quantityOf } from "../../quantities/vocabulary.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { Layer } from "../types.ts";

/**
 * Checks that the layers of a build-up together do not have more thermal resistance than can be built. The number of
 * nodes in the calculation grows with it: a slip in λ or thickness would keep the user waiting for minutes.
 *
 * @param layers - the layers of a build-up or of a variant; null for those with problems of their own
 * @param path - where they stand
 * @param context - problems
 */
export function checkResistance(layers: readonly (Layer | null)[], path: ProblemPath, context: ReadingContext): void {
  const { high, reason } = quantityOf("thermal resistance").possible!;
  const resistance = layers.reduce((sum, layer) => sum + (layer === null ? 0 : greatestResistance(layer)), 0);
  if (resistance <= high) return;
  const greatest = layers.filter((layer) => layer !== null).reduce((one, other) => larger(one, other));
  context.collector.add("resists-too-much", path, {
    resistance: `${Math.round(resistance)} m2 K/W`,
    most: `${high} m2 K/W`,
    reason,
    layer: greatest.name,
  });
}

/**
 * R of a layer beside its framing or through the framing, whichever is greater; 0 for air.
 *
 * @param layer - a layer of a build-up
 * @returns R [m²·K/W]
 */
export function greatestResistance(layer: Layer): number {
  if (layer.type === "air") return 0;
  const conductivities = [layer.material, layer.framing?.material].flatMap((material) => material?.conductivity ?? []);
  return conductivities.length === 0 ? 0 : layer.thickness / Math.min(...conductivities);
}

function larger(one: Layer, other: Layer): Layer {
  return greatestResistance(other) > greatestResistance(one) ? other : one;
}
