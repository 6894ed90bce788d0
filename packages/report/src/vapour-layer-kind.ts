import type { VapourLayerResult } from "@warmside/core";

/**
 * What the tightest layer counts as: the vapour layer on the warm side, a tight layer on the cold one,
 * a tight layer that nothing drives vapour through, or nothing.
 */
export type VapourLayerKind = "vapour layer" | "on the cold side" | "nothing drives vapour" | "none";

/**
 * What the layer in the section on the vapour layer counts as.
 *
 * @param found - the vapour layer of a build-up; null where it was not looked for
 * @returns only a layer on the warm side is a vapour layer
 */
export function vapourLayerKind(found: VapourLayerResult | null): VapourLayerKind {
  if (!found?.present) return "none";
  if (found.onWarmSide === null) return "nothing drives vapour";
  return found.onWarmSide ? "vapour layer" : "on the cold side";
}
