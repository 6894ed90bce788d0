import type { Slice } from "../../vapour/section-slices.ts";
import { isBody } from "../section-nodes/material-of-slice.ts";

/** Slices with one layer cut in two equal halves, and where the cut lies. */
export interface CutSlices {
  slices: Slice[];
  /** sd from the room surface to the cut [m]. */
  sd: number;
}

/**
 * Cuts a layer so that a node lies in its middle.
 *
 * @param slices - the section's slices
 * @param layer - index of the layer
 * @returns the cut slices; null where the section does not cross the layer with any sd
 * Source: ISO 13788:2012 clause 7 (from memory): the water lies in the middle of the layer.
 */
export function cutInTheMiddle(slices: readonly Slice[], layer: number): CutSlices | null {
  const index = slices.findIndex((slice) => slice.layer === layer && slice.sd > 0 && isBody(slice));
  if (index === -1) return null;
  const whole = slices[index]!;
  const half: Slice = { ...whole, thickness: whole.thickness / 2, resistance: whole.resistance / 2, sd: whole.sd / 2 };
  const before = slices.slice(0, index).reduce((sum, { sd }) => sum + sd, 0);
  return { slices: [...slices.slice(0, index), half, half, ...slices.slice(index + 1)], sd: before + half.sd };
}
