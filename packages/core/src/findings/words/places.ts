import type { PartOfLayer, Place, SectionId } from "../../result/types.ts";
import { joined } from "../figures-in-words.ts";
import type { Named } from "./wording.ts";

/**
 * A place, by the parts that meet there: layers by name, framing by its material.
 *
 * @param place - at one node, or over several
 * @param buildUp - for the names of its layers
 * @returns such as "between sheathing and softwood timber", "inside mineral wool slab", "behind the outer facing of board"
 */
export function placeInWords({ extent, inner, outer }: Place, { layers }: Pick<Named, "layers">): string {
  const name = ({ layer, part, material }: PartOfLayer): string =>
    part === "framing" ? material : (layers[layer]?.name ?? material);
  const [one, other] = [inner ?? outer, outer ?? inner];
  if (one === null || other === null) return "at the face of the build-up";
  if (inner === null || outer === null) return `at the face of ${name(one)}`;
  const isOneLayer = inner.layer === outer.layer;
  if (extent === "zone")
    return isOneLayer ? `in a zone inside ${name(inner)}` : `in a zone from ${name(inner)} to ${name(outer)}`;
  if (!isOneLayer) return `between ${name(inner)} and ${name(outer)}`;
  if (outer.part === "outer facing") return `behind the outer facing of ${name(outer)}`;
  if (inner.part === "inner facing") return `behind the inner facing of ${name(inner)}`;
  return `inside ${name(inner)}`;
}

/**
 * A heat-flow path in words that can follow the name of a place.
 *
 * @param section - which path
 * @returns such as "between the framing", "at the studs"; "in the whole build-up" where there is one path only
 * @example sectionInWords({ kind: "through framing", through: ["studs"] }) // "at the studs"
 */
export function sectionInWords({ kind, through }: SectionId): string {
  if (kind === "whole") return "in the whole build-up";
  return kind === "through framing" ? `at the ${joined(through)}` : "between the framing";
}

/** The same in brackets, with a space before it; nothing where there is one path only. */
export function sectionPhrase(section: SectionId): string {
  return section.kind === "whole" ? "" : ` (${sectionInWords(section)})`;
}
