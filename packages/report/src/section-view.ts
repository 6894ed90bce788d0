import type { BuildUpResult, NodeState, SectionMonth, SectionResult } from "@warmside/core";
import { shorten } from "./escape.ts";
import { millimetres } from "./numbers.ts";

/** One way through a build-up, with what the page asks of it again and again. */
export interface SectionView {
  buildUp: BuildUpResult;
  section: SectionResult;
  /** The month that decides: the greatest change, or when dry the least distance to saturation. */
  deciding: SectionMonth;
  /** The twelve months from the one the water year starts in. */
  waterYear: SectionMonth[];
  /** Nodes that hold or gain water in any month, from the room outwards. */
  wetNodes: number[];
}

/**
 * The governing section of a build-up.
 *
 * @param buildUp - a build-up of the result
 * @returns the view; null when moisture was not worked out
 */
export function governingView(buildUp: BuildUpResult): SectionView | null {
  const moisture = buildUp.moisture;
  const section = moisture?.sections.find(({ name }) => name === moisture.section);
  return section ? viewOf(buildUp, section) : null;
}

/**
 * A section with its deciding month, its months in the order of the water year and its wet nodes.
 *
 * @param buildUp - the build-up it belongs to
 * @param section - one of its sections
 * @returns the view
 */
export function viewOf(buildUp: BuildUpResult, section: SectionResult): SectionView {
  const first = Math.max(
    0,
    section.months.findIndex(({ month }) => month === section.startMonth),
  );
  const waterYear = [...section.months.slice(first), ...section.months.slice(0, first)];
  const deciding = section.months.find(({ month }) => month === section.decidingMonth) ?? section.months[0]!;
  const wetNodes = [...new Set(section.months.flatMap(({ planes }) => planes.map(({ node }) => node)))];
  return { buildUp, section, deciding, waterYear, wetNodes: wetNodes.sort((one, other) => one - other) };
}

/**
 * Where a node lies, in words.
 *
 * @param view - the section
 * @param node - number of the node, 0 at the room surface
 * @returns such as "between layer 3, mineral wool slab, and layer 4, oriented strand board"
 */
export function placeOf(view: SectionView, node: number): string {
  const { ends, begins, depth } = neighbours(view, node);
  if (ends === null) return "the room surface";
  if (begins === null) return `the outer face of ${layerWords(view, ends)}`;
  if (ends === begins) return `inside ${layerWords(view, ends)}, ${millimetres(depth)} mm from the room`;
  return `between ${layerWords(view, ends)}, and ${layerWords(view, begins)}`;
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
  if (ends === null) return `room | ${view.section.layers[0] ? view.section.layers[0].layer + 1 : 1}`;
  if (begins === null) return `${ends + 1} | outside`;
  if (ends === begins) return `in ${ends + 1} at ${millimetres(depth)} mm`;
  return `${ends + 1} | ${begins + 1}`;
}

/**
 * Nodes at faces of layers, without the cuts inside thick layers.
 *
 * @param month - any month of the section
 * @returns the nodes in order, room surface first
 */
export function faceNodes(month: SectionMonth): NodeState[] {
  return month.nodes.filter((node, index) => node.layer === null || node.layer !== month.nodes[index + 1]?.layer);
}

interface Neighbours {
  /** Layer that ends at or is cut by the node, from 0; null at the room surface. */
  ends: number | null;
  /** Layer that begins there; null at the last node. */
  begins: number | null;
  depth: number;
}

function neighbours(view: SectionView, node: number): Neighbours {
  const nodes = view.deciding.nodes;
  const here = nodes[node];
  return { ends: here?.layer ?? null, begins: nodes[node + 1]?.layer ?? null, depth: here?.depth ?? 0 };
}

function layerWords(view: SectionView, layer: number): string {
  const own = view.section.layers.find((entry) => entry.layer === layer);
  const name = own?.material ?? view.buildUp.layers[layer]?.name ?? "";
  return `layer ${layer + 1}, ${shorten(name, LONGEST_NAME_IN_A_SENTENCE)}`;
}

const LONGEST_NAME_IN_A_SENTENCE = 48;
