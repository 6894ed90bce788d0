import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { Framing, Layer } from "../types.ts";

/** Most straight paths through one build-up: as many as six crossing framings give. Rule of this project. */
export const MOST_WAYS = 64;

/**
 * Checks that a build-up does not have more straight paths than can be worked out: each framing doubles their number.
 *
 * @param layers - the layers of a build-up or of a variant, framings told apart; null for those with problems
 * @param path - where they stand
 * @param context - problems
 */
export function checkWays(layers: readonly (Layer | null)[], path: ProblemPath, context: ReadingContext): void {
  const end = layers.findIndex((layer) => layer?.type === "air" && layer.ventilation === "well");
  const counted = end === -1 ? layers : layers.slice(0, end);
  const framings = new Map<string, FramingAt>();
  for (const [index, layer] of counted.entries()) {
    const framing = layer?.framing ?? null;
    if (framing !== null && !framings.has(framing.name)) framings.set(framing.name, { framing, layer: index + 1 });
  }
  if (2 ** framings.size <= MOST_WAYS) return;
  const alike = mostAlike([...framings.values()]);
  context.collector.add("too-many-ways", path, {
    framings: framings.size,
    most: MOST_WAYS,
    alike: alike.length > 1 ? alike.map(({ layer }) => String(layer)) : [],
    material: alike[0]!.framing.material.name,
  });
}

interface FramingAt {
  framing: Framing;
  /** Its first layer, counted from 1. */
  layer: number;
}

/** The largest group of framings with the same material and share. */
function mostAlike(framings: readonly FramingAt[]): readonly FramingAt[] {
  const isLike = ({ framing: one }: FramingAt, { framing: other }: FramingAt): boolean =>
    one.material.name === other.material.name && one.share === other.share;
  return framings
    .map((one) => framings.filter((other) => isLike(one, other)))
    .reduce((one, other) => (other.length > one.length ? other : one));
}
