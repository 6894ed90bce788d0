import type { Path } from "../../heat/types.ts";
import type { BuildUp, Material } from "../../project/types.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import { materialOfSlice } from "../section-nodes/material-of-slice.ts";
import type { Touching } from "../section-nodes/places.ts";
import { MOST_CONDENSATE, MOST_CONDENSATE_ON_TIGHT, MOST_IN_BOARD, MOST_IN_TIMBER } from "../water-limits.ts";

/**
 * The largest amount of condensate accepted at a plane, from the two materials that touch it.
 *
 * @param touching - the slices on either side
 * @param buildUp - the build-up
 * @param path - the heat-flow path
 * @returns the least of the limits that apply [kg/m²]
 * Source: DIN 4108-3 (from memory). A material of unknown kind counts as taking up no water.
 */
export function limitAtPlane({ inner, outer }: Touching, buildUp: BuildUp, path: Path): number {
  const limits = [inner, outer].flatMap((slice) => (slice === null ? [] : limitsOf(slice, buildUp, path)));
  return Math.min(MOST_CONDENSATE, ...limits);
}

function limitsOf(slice: Slice, buildUp: BuildUp, path: Path): number[] {
  const material = materialOfSlice(slice, buildUp, path);
  const limits = material !== null && takesUpWater(material) ? [] : [MOST_CONDENSATE_ON_TIGHT];
  if (material === null || material.density === null) return limits;
  const dryMass = material.density * slice.thickness;
  if (!(dryMass > 0)) return limits;
  if (material.kind === "wood") limits.push(MOST_IN_TIMBER * dryMass);
  if (material.kind === "board") limits.push(MOST_IN_BOARD * dryMass);
  return limits;
}

/** Timber, board, paper and masonry take up water; foam, foil, metal, glass, mineral wool and air do not. */
function takesUpWater(material: Material): boolean {
  if (material.kind === "mineral") return material.group !== "insulation" && material.group !== "glass";
  return material.kind === "wood" || material.kind === "board" || material.kind === "paper";
}
