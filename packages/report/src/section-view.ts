import type { BuildUpResult, NodeState, SectionMonth, SectionResult, WoodResult } from "@warmside/core";
import { sharesOfWhole } from "./numbers.ts";

/** One section of a build-up, with what many parts of the page need. */
export interface SectionView {
  buildUp: BuildUpResult;
  section: SectionResult;
  /** Its part of the area in per cent, as it is shown beside the parts of the other sections. */
  share: string;
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
  const section = buildUp.moisture?.governing;
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
  const all = buildUp.moisture?.sections ?? [section];
  const share = sharesOfWhole(all.map((one) => one.share))[section.index] ?? "";
  return { buildUp, section, share, deciding, waterYear, wetNodes: wetNodes.sort((one, other) => one - other) };
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

/**
 * The wood of one way through.
 *
 * @param view - a section of a build-up
 * @returns its wooden layers
 */
export function woodOfPath({ buildUp, section }: SectionView): WoodResult[] {
  return buildUp.wood.filter(({ sectionIndex }) => sectionIndex === section.index);
}
