import { INSULATION_CONDUCTS_UNDER } from "./insulates.ts";
import type { Material } from "./types.ts";

/** Thinner than this nothing of a group is made or laid [m] (common practice, with room to spare). */
const LEAST_BY_GROUP: Readonly<Record<string, number>> = {
  insulation: 0.003,
  masonry: 0.003,
  stone: 0.003,
  ground: 0.003,
  "wood-based board": 0.001,
  timber: 0.0005,
  lining: 0.0005,
};

/** What is told on the spot and insulates [m] (common practice). */
const LEAST_INSULATION_ON_THE_SPOT = 0.001;

/** What a slip of unit is taken for: metres written as millimetres. */
const METRES_AS_MILLIMETRES = 1000;

/** The thickest layer that a slip may have meant [m] (this project's rule). */
const THICKEST_MEANT = 1.5;

/**
 * The least thickness of a material by its kind.
 *
 * @param material - of the table, or given on the spot
 * @returns [m]; 0 where nothing is known: coatings, foils, metals, sheets of plastic
 * Source: common practice.
 */
export function leastThickness({ group, conductivity }: Pick<Material, "group" | "conductivity">): number {
  if (group !== null) return LEAST_BY_GROUP[group] ?? 0;
  return conductivity !== null && conductivity < INSULATION_CONDUCTS_UNDER ? LEAST_INSULATION_ON_THE_SPOT : 0;
}

/**
 * The thickness that was likely meant where a layer is far too thin: figures in metres with the unit of millimetres.
 *
 * @param thickness - as written [m]
 * @returns [m]; null where that is no likely slip
 * @example thicknessMeant(0.000095) // 0.095
 */
export function thicknessMeant(thickness: number): number | null {
  const meant = thickness * METRES_AS_MILLIMETRES;
  return meant <= THICKEST_MEANT ? meant : null;
}
