import type { RoofSpace, UnheatedSpace } from "../project/types.ts";

/** R of a ventilated space and pitched roof above it [m²·K/W]. Source: ISO 6946:2017 Table 9 (from memory). */
export const ROOF_SPACE_RESISTANCE: Readonly<Record<RoofSpace, number>> = {
  "tiles without underlay": 0.06,
  "felt or boards": 0.2,
  "felt or boards, low emissivity": 0.3,
};

/** Heat capacity of air by volume, for unheated spaces [Wh/(m³·K)]. Source: ISO 6946:2017 clause 6.10 (from memory). */
const HEAT_CAPACITY_OF_AIR_BY_VOLUME = 0.33;

/**
 * Resistance of an unheated space between a build-up and the open air.
 *
 * @param space - Ai of the build-up [m²], the space's external areas [m²] with transmittances [W/(m²·K)], air changes
 *   [1/h], volume [m³]
 * @returns Ru [m²·K/W]
 * Source: ISO 6946:2017 clause 6.10.3 (from memory).
 * @example unheatedSpaceResistance({ area: 24, external: [{ area: 30, transmittance: 0.5 }], airChanges: 1, volume: 60 }) // 0.6897
 */
export function unheatedSpaceResistance(space: UnheatedSpace): number {
  const throughFabric = space.external.reduce((sum, { area, transmittance }) => sum + area * transmittance, 0);
  const byAirChange = HEAT_CAPACITY_OF_AIR_BY_VOLUME * space.airChanges * space.volume;
  return space.area / (throughFabric + byAirChange);
}
