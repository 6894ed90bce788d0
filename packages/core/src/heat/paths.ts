import type { Framing } from "../project/types.ts";
import type { SectionId } from "../result/types.ts";
import type { CountedLayer, Path } from "./types.ts";

/**
 * Every distinct heat-flow path through the counted layers. Framing of one name is the same timber in every layer it
 * runs through; framings of different names cross, so their shares multiply.
 *
 * @param counted - counted layers
 * @param include - which framings make paths of their own (default all)
 * @returns paths with shares that add up to 1; the path between all framing first
 * Source: ISO 6946:2017 clause 6.7.2.3 (from memory).
 */
export function pathsThrough(
  counted: readonly CountedLayer[],
  include: (framing: Framing) => boolean = () => true,
): Path[] {
  const framings = distinctFramings(counted).filter(include);
  let paths: Path[] = [{ through: [], share: 1 }];
  for (const { name, share } of framings) {
    paths = [
      ...paths.map((path) => ({ through: path.through, share: path.share * (1 - share) })),
      ...paths.map((path) => ({ through: [...path.through, name], share: path.share * share })),
    ];
  }
  return paths.filter((path) => path.share > 0);
}

/** The framings of the counted layers: one entry for each name, in the order of the layers. */
export function distinctFramings(counted: readonly CountedLayer[]): Framing[] {
  const byName = new Map<string, Framing>();
  for (const { framing } of counted) if (framing !== null) byName.set(framing.name, framing);
  return [...byName.values()];
}

/**
 * Resistance of a counted layer along one heat-flow path.
 *
 * @param layer - counted layer
 * @param path - heat-flow path
 * @returns R [m²·K/W]
 */
export function resistanceAlong(layer: CountedLayer, path: Path): number {
  return layer.framing !== null && path.through.includes(layer.framing.name)
    ? layer.framingResistance
    : layer.resistance;
}

/**
 * The section that a heat-flow path makes.
 *
 * @param path - heat-flow path
 * @param anyFraming - whether the build-up has framing at all
 * @returns its kind, and the framings it runs through
 */
export function sectionOfPath({ through }: Path, anyFraming: boolean): SectionId {
  if (through.length > 0) return { kind: "through framing", through: [...through] };
  return { kind: anyFraming ? "between framing" : "whole", through: [] };
}

/**
 * The name of a section, as the result and the report use it.
 *
 * @param section - its kind and framings
 * @returns "whole", "between framing" or "through studs and battens"
 * @example sectionName({ kind: "through framing", through: ["studs"] }) // "through studs"
 */
export function sectionName({ kind, through }: SectionId): string {
  return kind === "through framing" ? `through ${through.join(" and ")}` : kind;
}
