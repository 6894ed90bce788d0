import type { SectionResult } from "@warmside/core";
import { shorten } from "./escape.ts";
import { millimetres } from "./numbers.ts";
import type { SectionView } from "./section-view.ts";

/**
 * Where a node lies, in words.
 *
 * @param view - the section
 * @param node - number of the node, 0 at the room surface
 * @returns such as "between layer 3, mineral wool slab, and layer 4, oriented strand board"
 */
export function placeOf(view: SectionView, node: number): string {
  const { ends, begins, depth } = neighbours(view, node);
  if (ends === null) return "at the room surface";
  if (begins === null) return `at the outer face of ${layerWords(view, ends.layer)}`;
  if (ends === begins) return `inside ${layerWords(view, ends.layer)}, ${millimetres(depth)} mm from the room`;
  if (ends.layer === begins.layer)
    return `inside layer ${ends.layer + 1}, between ${name(view, ends)} and ${name(view, begins)}`;
  return `between ${layerWords(view, ends.layer)}, and ${layerWords(view, begins.layer)}`;
}

/**
 * Where a node lies, as short as a column head.
 *
 * @param view - the section
 * @param node - number of the node
 * @returns such as "3 | 4" for the face between layers 3 and 4, or "in 3 at 105 mm"
 */
export function shortPlaceOf(view: SectionView, node: number): string {
  const { ends, begins, depth } = neighbours(view, node);
  if (ends === null) return `room | ${(begins?.layer ?? 0) + 1}`;
  if (begins === null) return `${ends.layer + 1} | outside`;
  if (ends.layer === begins.layer) return `in ${ends.layer + 1} at ${millimetres(depth)} mm`;
  return `${ends.layer + 1} | ${begins.layer + 1}`;
}

/**
 * Whether a node is a cut inside a material rather than a face of one.
 *
 * @param view - the section
 * @param node - number of the node
 * @returns true for a cut
 */
export function isCut(view: SectionView, node: number): boolean {
  const { ends, begins } = neighbours(view, node);
  return ends !== null && ends === begins;
}

/**
 * Resistance from the room surface to a node: in a uniform material it grows with sd.
 *
 * @param view - the section
 * @param node - number of the node
 * @returns on the near side of the node, and beyond any layer without sd that lies there [m²·K/W]
 */
export function resistancesTo(view: SectionView, node: number): { near: number; far: number } {
  const at = view.deciding.nodes[node]!.sd;
  let sd = 0;
  let near = 0;
  let far = 0;
  for (const slice of view.section.layers) {
    const share = slice.sd > 0 ? Math.min(1, Math.max(0, (at - sd) / slice.sd)) : 0;
    const passed = at >= sd + slice.sd - CLOSEST ? 1 : share;
    if (sd + slice.sd < at - CLOSEST || share > 0) near += slice.resistance * passed;
    if (sd <= at + CLOSEST) far += slice.resistance * (slice.sd < CLOSEST ? 1 : passed);
    sd += slice.sd;
  }
  return { near, far };
}

type Slice = SectionResult["layers"][number];

/** Nodes closer than this in sd are one [m]. */
const CLOSEST = 1e-6;
const LONGEST_NAME = 56;

interface Neighbours {
  /** What ends at the node or is cut there; null at the room surface. */
  ends: Slice | null;
  /** What begins there; the same when cut; null at the last node. */
  begins: Slice | null;
  depth: number;
}

function neighbours(view: SectionView, node: number): Neighbours {
  const { nodes } = view.deciding;
  const here = nodes[node];
  const depth = here?.depth ?? 0;
  const slices = view.section.layers;
  if (node === 0 || !here) return { ends: null, begins: slices[0] ?? null, depth };
  let sd = 0;
  for (const [index, slice] of slices.entries()) {
    sd += slice.sd;
    if (here.sd > sd + CLOSEST) continue;
    if (here.sd < sd - CLOSEST) return { ends: slice, begins: slice, depth };
    return { ends: slice, begins: node === nodes.length - 1 ? null : (slices[index + 1] ?? null), depth };
  }
  return { ends: slices.at(-1) ?? null, begins: null, depth };
}

/** A layer by the material that makes most of it in this section. */
function layerWords(view: SectionView, layer: number): string {
  const own = view.section.layers.filter((slice) => slice.layer === layer);
  const main = own.reduce<Slice | undefined>(
    (most, slice) => (most && most.resistance >= slice.resistance ? most : slice),
    undefined,
  );
  return `layer ${layer + 1}, ${main ? name(view, main) : ""}`;
}

/** A slice as the layer table calls its layer; framing in a layer's place, and facings, are named as such. */
function name(view: SectionView, { layer, name: own, part }: Slice): string {
  const inWords = {
    whole: own,
    framing: `${view.buildUp.layers[layer]?.framing ?? "framing"} in ${own}`,
    "inner facing": `the inner facing of ${own}`,
    "outer facing": `the outer facing of ${own}`,
  };
  return shorten(inWords[part], LONGEST_NAME);
}

/**
 * The layer on which, or inside which, water at a node gathers.
 *
 * @param view - the section
 * @param node - number of the node
 * @returns the name of the layer on the outer side of a face, of the cut layer inside one
 */
export function governingLayerName(view: SectionView, node: number): { layer: string; isInside: boolean } {
  const { ends, begins } = neighbours(view, node);
  if (ends !== null && ends === begins) return { layer: name(view, ends), isInside: true };
  const slice = begins ?? ends;
  return { layer: slice === null ? "the surface" : name(view, slice), isInside: false };
}

/**
 * Resistance from the room surface to a node.
 *
 * @param view - the section
 * @param node - number of the node
 * @returns where a group of layers is one node, on the side that gave its temperature [m²·K/W]
 */
export function resistanceTo(view: SectionView, node: number): number {
  const { near, far } = resistancesTo(view, node);
  const { indoor, outdoor } = view.deciding;
  return indoor.temperature >= outdoor.temperature ? far : near;
}
