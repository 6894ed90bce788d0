import { INSULATION_CONDUCTS_UNDER } from "./insulates.ts";
import type { Material } from "./types.ts";

/** Nothing in these groups is made or laid thinner than this [m] (common practice, with a margin). */
const LEAST_BY_GROUP: Readonly<Record<string, number>> = {
  insulation: 0.003,
  masonry: 0.003,
  stone: 0.003,
  ground: 0.003,
  "wood-based board": 0.001,
  timber: 0.0005,
  lining: 0.0005,
};

/** The least for insulation whose values stand in the project file itself [m] (common practice). */
const LEAST_INSULATION_ON_THE_SPOT = 0.001;

/** The likely slip of unit: a figure in metres written as millimetres. */
const METRES_AS_MILLIMETRES = 1000;

/** Above this thickness, no slip is assumed [m] (this project's rule). */
const THICKEST_MEANT = 1.5;

/**
 * The least thickness of a material by its kind.
 *
 * @param material - from the table, or given by its values in the project file
 * @returns [m]; 0 where no least thickness is known: coatings, foils, metals, sheets of plastic
 * Source: common practice.
 */
export function leastThickness({ group, conductivity }: Pick<Material, "group" | "conductivity">): number {
  if (group !== null) return LEAST_BY_GROUP[group] ?? 0;
  return conductivity !== null && conductivity < INSULATION_CONDUCTS_UNDER ? LEAST_INSULATION_ON_THE_SPOT : 0;
}

/**
 * The thickness probably meant where a layer is far too thin: a figure in metres written with the unit mm.
 *
 * @param thickness - as written [m]
 * @returns [m]; null where such a slip is unlikely
 * @example thicknessMeant(0.000095) // 0.095
 */
export function thicknessMeant(thickness: number): number | null {
  const meant = thickness * METRES_AS_MILLIMETRES;
  return meant <= THICKEST_MEANT ? meant : null;
}
