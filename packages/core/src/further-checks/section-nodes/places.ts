import type { PartOfLayer, Place } from "../../result/types.ts";
import type { NodeLine } from "../../vapour/node-line.ts";
import type { Slice } from "../../vapour/section-slices.ts";

/** The nodes at the two faces of a slice. */
export interface Faces {
  inner: number;
  outer: number;
}

/**
 * The nodes at the inner and outer faces of every slice of a section.
 *
 * @param line - the section's nodes
 * @param slices - the slices they were made from, in the same order
 * @returns two node numbers for each slice; the same twice where a thin sheet shares its node with a neighbour
 */
export function facesOfSlices(line: NodeLine, slices: readonly Slice[]): Faces[] {
  let sd = 0;
  return slices.map((slice) => {
    const inner = nodeAt(line, sd);
    const outer = nodeAt(line, sd + slice.sd);
    sd += slice.sd;
    return { inner, outer };
  });
}

/** Index [–] of the last node at or before an sd [m] from the room surface; a group has the sd of its first member. */
export function nodeAt(line: NodeLine, sd: number): number {
  let node = line.count - 1;
  while (node > 0 && line.sd[node]! > sd) node -= 1;
  return node;
}

/** The slices that touch a node: one slice twice where the node lies inside it; null at a surface. */
export interface Touching {
  inner: Slice | null;
  outer: Slice | null;
}

/**
 * The slices on either side of a node.
 *
 * @param slices - the section's slices
 * @param faces - their nodes, from `facesOfSlices`
 * @param node - node number
 * @returns the slice that ends at or continues through the node, and the one that begins or continues there
 */
export function slicesTouching(slices: readonly Slice[], faces: readonly Faces[], node: number): Touching {
  const innerIndex = faces.findLastIndex(({ inner, outer }) => inner < node && outer >= node);
  const outerIndex = faces.findIndex(({ inner, outer }) => inner <= node && outer > node);
  return { inner: slices[innerIndex] ?? null, outer: slices[outerIndex] ?? null };
}

/** The place of a node: the parts that end and begin there. */
export function placeOf({ inner, outer }: Touching): Place {
  return { extent: "node", inner: partOf(inner), outer: partOf(outer) };
}

/** A slice as a part of its layer; null at a surface. */
export function partOf(slice: Slice | null): PartOfLayer | null {
  return slice === null ? null : { layer: slice.layer, part: slice.part, material: slice.material };
}
