import type { BuildUpCalculation } from "../../calculate-build-up.ts";
import { type NodeLine, nodeLine } from "../../vapour/node-line.ts";
import { sectionClimate } from "../../vapour/section-climate.ts";
import type { Slice } from "../../vapour/section-slices.ts";
import type { DrivenSection } from "../../year/month-balance.ts";
import { sectionYear } from "../../year/section-year.ts";
import type { SectionYear } from "../../year/types.ts";
import { yearFromDry } from "../../year/wet-months.ts";
import { type Faces, facesOfSlices } from "./places.ts";

/** A section with other slices and the same air on both sides. */
export interface WhatIfSection extends DrivenSection {
  slices: readonly Slice[];
  line: NodeLine;
  faces: readonly Faces[];
}

/**
 * A section of a calculated build-up with other slices; the air on both sides and the surface resistances are kept.
 *
 * @param calculation - the build-up's figures
 * @param slices - slices from the room outwards
 * @returns nodes and their boundary conditions by month
 */
export function whatIfSection(calculation: BuildUpCalculation, slices: readonly Slice[]): WhatIfSection {
  const line = nodeLine(slices);
  const { inside, outsideForMoisture } = calculation.heat.surfaceResistances;
  const { inside: room, farSide, skyOffset } = calculation;
  const climate = sectionClimate(line, room, farSide.months, inside, outsideForMoisture, skyOffset);
  return { slices, line, sd: line.sd, climate, faces: facesOfSlices(line, slices) };
}

/** The standard's year of a section. */
export function standardYear(section: DrivenSection): SectionYear {
  return sectionYear(section, yearFromDry(section), "standard");
}

/**
 * The slices with another sd for one layer, facings included.
 *
 * @param slices - the section's slices
 * @param layer - index of the layer
 * @param sd - of the whole layer in this section [m], ≥ 0
 * @returns new slices; one that has neither resistance nor sd left is dropped
 */
export function withSd(slices: readonly Slice[], layer: number, sd: number): Slice[] {
  const whole = sdOfLayer(slices, layer);
  if (!(whole > 0)) return [...slices];
  const scaled = slices.map((slice) => (slice.layer === layer ? { ...slice, sd: (slice.sd * sd) / whole } : slice));
  return scaled.filter((slice) => slice.resistance > 0 || slice.sd > 0);
}

/** sd of a layer along the section [m], with facings; 0 where the section does not cross it. */
export function sdOfLayer(slices: readonly Slice[], layer: number): number {
  return slices.reduce((sum, slice) => sum + (slice.layer === layer ? slice.sd : 0), 0);
}
