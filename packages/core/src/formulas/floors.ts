import { refuseFaults } from "../given/faults.ts";
import { checkGround, checkVoid } from "../given/floors.ts";
import { slabTransmittance, suspendedFloorTransmittance } from "../heat/ground-floor.ts";
import type { Ground, UnderfloorVoid } from "../project/types.ts";
import { requireNumber } from "../require.ts";

/**
 * Transmittance of a slab on ground.
 *
 * @param ground - area [m²], exposed perimeter [m], wall thickness [m], soil, edge insulation
 * @param floorResistance - Rf of the floor's layers [m²·K/W], 0 to 50
 * @returns U [W/(m²·K)]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13370:2017 clauses 7.1 and 7.2, Annex D (from memory).
 * @example slabOnGround({ area: 100, perimeter: 40, wallThickness: 0.3, soil: "clay or silt", edgeInsulation: null, membrane: true }, 0) // 0.6026
 */
export function slabOnGround(ground: Ground, floorResistance: number): number {
  refuseFaults(checkGround(ground, ["ground"]));
  requireNumber(floorResistance, "floorResistance", "m²·K/W", 0, 50);
  return slabTransmittance(ground, floorResistance).transmittance;
}

/**
 * Transmittance of a suspended floor over a ventilated void.
 *
 * @param space - the void: area [m²], perimeter [m], height [m], wall transmittance [W/(m²·K)], openings [m²/m], wind [m/s]
 * @param floorResistance - Rf of the floor's layers [m²·K/W], 0 to 50
 * @returns U [W/(m²·K)]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 13370:2017 clause 7.3 (from memory).
 */
export function suspendedFloor(space: UnderfloorVoid, floorResistance: number): number {
  refuseFaults(checkVoid(space, ["space"]));
  requireNumber(floorResistance, "floorResistance", "m²·K/W", 0, 50);
  return suspendedFloorTransmittance(space, floorResistance).transmittance;
}
