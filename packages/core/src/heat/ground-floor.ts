import { logarithm } from "../arithmetic/exponential.ts";
import { characteristicDimension } from "../project/characteristic-dimension.ts";
import type { EdgeInsulation, Ground, Soil, UnderfloorVoid } from "../project/types.ts";
import type { WorkingValue } from "../result/types.ts";

/** λg by soil [W/(m·K)]. Source: ISO 13370:2017 Table 7 (from memory). */
export const SOIL_CONDUCTIVITY: Readonly<Record<Soil, number>> = {
  "clay or silt": 1.5,
  "sand or gravel": 2.0,
  rock: 3.5,
  unknown: 2.0,
};

/** Surface resistances of floors in ISO 13370:2017 [m²·K/W] (from memory). */
export const FLOOR_SURFACE_INSIDE = 0.17;
export const FLOOR_SURFACE_OUTSIDE = 0.04;

/**
 * Factor of the void's ventilation 1450·ε·v·fw/B; heat through its walls is 2·h·Uw/B.
 * Source: ISO 13370:2017 clause 7.3 (from memory).
 */
export const VOID_VENTILATION_FACTOR = 1450;

/** Wind shielding factor fw. Source: ISO 13370:2017 Table 8 (from memory). */
export const WIND_SHIELDING: Readonly<Record<UnderfloorVoid["shelter"], number>> = {
  sheltered: 0.02,
  average: 0.05,
  exposed: 0.1,
};

/** Factor of B in U0 of a well-insulated slab [–]. Source: ISO 13370:2017 equation 4 (from memory). */
export const WELL_INSULATED_SHAPE = 0.457;

/** A transmittance, with the named values it was calculated from. */
export interface GroundTransmittance {
  transmittance: number;
  working: WorkingValue[];
}

/**
 * Transmittance of a slab on ground, with edge insulation where there is any.
 *
 * @param ground - area, perimeter, wall thickness, soil, edge insulation
 * @param floorResistance - Rf of the floor's layers [m²·K/W], ≥ 0
 * @returns U [W/(m²·K)] and the working
 * Source: ISO 13370:2017 clauses 7.1 and 7.2, Annex D (from memory).
 */
export function slabTransmittance(ground: Ground, floorResistance: number): GroundTransmittance {
  const conductivity = SOIL_CONDUCTIVITY[ground.soil];
  const dimension = characteristicDimension(ground.area, ground.perimeter);
  const equivalentThickness =
    ground.wallThickness + conductivity * (FLOOR_SURFACE_INSIDE + floorResistance + FLOOR_SURFACE_OUTSIDE);
  const plain = basicTransmittance(dimension, equivalentThickness, conductivity);
  const edge = ground.edgeInsulation;
  const edgeFactor = edge === null ? 0 : edgeInsulationTransmittance(edge, equivalentThickness, conductivity);
  const transmittance = plain + (2 * edgeFactor) / dimension;
  return {
    transmittance,
    working: [
      { name: "characteristic dimension", symbol: "B", value: dimension, unit: "m" },
      { name: "conductivity of the ground", symbol: "λg", value: conductivity, unit: "W/(m·K)" },
      { name: "resistance of the floor", symbol: "Rf", value: floorResistance, unit: "m²·K/W" },
      { name: "equivalent thickness", symbol: "dt", value: equivalentThickness, unit: "m" },
      { name: "transmittance without edge insulation", symbol: "U0", value: plain, unit: "W/(m²·K)" },
      ...(edge === null ? [] : [{ name: "edge insulation", symbol: "Ψ", value: edgeFactor, unit: "W/(m·K)" }]),
      { name: "transmittance", symbol: "U", value: transmittance, unit: "W/(m²·K)" },
    ],
  };
}

/**
 * Resistance of the ground below a slab, chosen so that layers and ground together give the slab's transmittance.
 *
 * @param transmittance - U of the slab with edge insulation [W/(m²·K)], above 0
 * @param floorResistance - Rf of its layers [m²·K/W], ≥ 0
 * @returns Rg = 1/U − Rsi − Rf [m²·K/W]
 * Source: METHOD.md, Ground floors (this project's rule; ISO 13370:2017 has the same sum as a virtual layer, from memory).
 * @example resistanceOfGround(0.8214, 0) // 1.0474
 */
export function resistanceOfGround(transmittance: number, floorResistance: number): number {
  return 1 / transmittance - FLOOR_SURFACE_INSIDE - floorResistance;
}

/** U0 [W/(m²·K)] of a slab, or Ug of the ground below a void. Source: ISO 13370:2017 equations 3 and 4 (from memory). */
function basicTransmittance(dimension: number, equivalentThickness: number, conductivity: number): number {
  return equivalentThickness < dimension
    ? groundTransmittance(dimension, equivalentThickness, conductivity)
    : conductivity / (WELL_INSULATED_SHAPE * dimension + equivalentThickness);
}

function groundTransmittance(dimension: number, equivalentThickness: number, conductivity: number): number {
  const reach = Math.PI * dimension;
  return ((2 * conductivity) / (reach + equivalentThickness)) * logarithm(reach / equivalentThickness + 1);
}

/**
 * Linear transmittance of edge insulation, which lowers the loss.
 *
 * @param edge - Rn [m²·K/W], dn [m], extent D [m], vertical or horizontal
 * @param equivalentThickness - dt [m], above 0
 * @param conductivity - λg [W/(m·K)], above 0
 * @returns Ψ [W/(m·K)], negative
 * Source: ISO 13370:2017 Annex D, equations D.3 to D.5 (from memory).
 * @example edgeInsulationTransmittance({ resistance: 1.5, thickness: 0.05, extent: 1, upright: false }, 0.72, 2) // -0.401
 */
export function edgeInsulationTransmittance(
  edge: EdgeInsulation,
  equivalentThickness: number,
  conductivity: number,
): number {
  const addedThickness = (edge.resistance - edge.thickness / conductivity) * conductivity;
  const extent = edge.upright ? 2 * edge.extent : edge.extent;
  const bare = logarithm(extent / equivalentThickness + 1);
  const insulated = logarithm(extent / (equivalentThickness + addedThickness) + 1);
  return -(conductivity / Math.PI) * (bare - insulated);
}

/** The three heat-flow paths of a ventilated void [W/(m²·K)]. */
export interface VoidTransmittances {
  /** Uf, floor to void */
  floor: number;
  /** Ug, void to ground */
  ground: number;
  /** Ux, void to outdoors through walls and by ventilation */
  outdoors: number;
}

/**
 * Transmittances of a suspended floor's void.
 *
 * @param space - the void: area, perimeter, height, wall transmittance, openings, wind, shelter
 * @param floorResistance - Rf of the floor's layers [m²·K/W], ≥ 0
 * @returns Uf, Ug, Ux [W/(m²·K)]
 * Source: ISO 13370:2017 clause 7.3 (from memory).
 */
export function voidTransmittances(space: UnderfloorVoid, floorResistance: number): VoidTransmittances {
  const conductivity = SOIL_CONDUCTIVITY[space.soil];
  const dimension = characteristicDimension(space.area, space.perimeter);
  const groundThickness =
    space.wallThickness + conductivity * (FLOOR_SURFACE_INSIDE + space.groundInsulation + FLOOR_SURFACE_OUTSIDE);
  const throughWalls = (2 * space.height * space.wallTransmittance) / dimension;
  const byVentilation =
    (VOID_VENTILATION_FACTOR * space.openings * space.windSpeed * WIND_SHIELDING[space.shelter]) / dimension;
  return {
    floor: 1 / (FLOOR_SURFACE_INSIDE + floorResistance + FLOOR_SURFACE_INSIDE),
    ground: groundTransmittance(dimension, groundThickness, conductivity),
    outdoors: throughWalls + byVentilation,
  };
}

/**
 * Transmittance of a suspended floor over a ventilated void.
 *
 * @param space - the void
 * @param floorResistance - Rf of the floor's layers [m²·K/W], ≥ 0
 * @returns U [W/(m²·K)] and the working
 * Source: ISO 13370:2017 equation 8 (from memory).
 */
export function suspendedFloorTransmittance(space: UnderfloorVoid, floorResistance: number): GroundTransmittance {
  const { floor, ground, outdoors } = voidTransmittances(space, floorResistance);
  const resistance = 1 / floor + 1 / (ground + outdoors);
  const transmittance = 1 / resistance;
  return {
    transmittance,
    working: [
      {
        name: "characteristic dimension",
        symbol: "B",
        value: characteristicDimension(space.area, space.perimeter),
        unit: "m",
      },
      { name: "conductivity of the ground", symbol: "λg", value: SOIL_CONDUCTIVITY[space.soil], unit: "W/(m·K)" },
      { name: "resistance of the floor", symbol: "Rf", value: floorResistance, unit: "m²·K/W" },
      { name: "floor to void", symbol: "Uf", value: floor, unit: "W/(m²·K)" },
      { name: "void to ground", symbol: "Ug", value: ground, unit: "W/(m²·K)" },
      { name: "void to outdoors", symbol: "Ux", value: outdoors, unit: "W/(m²·K)" },
      { name: "transmittance", symbol: "U", value: transmittance, unit: "W/(m²·K)" },
    ],
  };
}
