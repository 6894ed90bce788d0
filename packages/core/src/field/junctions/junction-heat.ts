import { SURFACE_RESISTANCE_FOR_HUMIDITY } from "../../heat/temperature-factor.ts";
import { requireFunction } from "../../require.ts";
import { requireResistances } from "../given.ts";
import { type BoundedHeat, heatWithinBounds } from "../heat-within-bounds.ts";
import { lowestSurfaceFactor } from "../plane-heat.ts";
import type { JunctionCell, JunctionSurfaces } from "./junction-cell.ts";
import { clearTransmittanceOf, type SideResistances } from "./side.ts";

/** The coldest place of a junction's surface, with the field behind it. */
export interface ColdestOfJunction {
  /** Lowest fRsi of the room's surfaces [–]. */
  temperatureFactor: number;
  /** Its place [m]. */
  place: { x: number; y: number };
  /** The drawing with the surface resistances for humidity, and its heat. */
  cell: JunctionCell;
  field: BoundedHeat;
}

/** Heat figures of a junction. */
export interface JunctionHeat extends ColdestOfJunction {
  /** Linear thermal transmittance for external dimensions and the U between framing of both sides [W/(m·K)]. */
  linearTransmittance: number;
  /** L2D of the whole drawing [W/(m·K)], and its bounds. */
  conductance: number;
  /** [W/(m·K)] */
  lower: number;
  /** [W/(m·K)] */
  upper: number;
}

/** Draws a junction with given surface resistances. */
export type JunctionDrawing = (surfaces: JunctionSurfaces) => JunctionCell;

/**
 * ψ and the lowest temperature factor of a junction.
 *
 * @param draw - draws the junction, for the surface resistances of U and for those for surface humidity
 * @param level - the side along x
 * @param upright - the side along y, or the frame of a window
 * @returns ψ = L2D − Σ U·l [W/(m·K)] and fRsi [–]
 * Source: ISO 10211:2017 clauses 9 and 10; Rsi 0.25 by ISO 13788:2012 Table 2 (from memory).
 */
export function junctionHeat(draw: JunctionDrawing, level: SideResistances, upright: SideResistances): JunctionHeat {
  requireFunction(draw, "draw");
  requireResistances(level, "level");
  requireResistances(upright, "upright");
  const forTransmittance = draw({
    inside: { level: level.inside, upright: upright.inside },
    outside: { level: level.outside, upright: upright.outside },
  });
  const { conductance, lower, upper } = heatWithinBounds(forTransmittance.scene);
  const alongLevel = clearTransmittanceOf(level) * forTransmittance.levelLength;
  const alongUpright = clearTransmittanceOf(upright) * forTransmittance.uprightLength;
  const linearTransmittance = conductance - alongLevel - alongUpright;
  return { ...coldestOfJunction(draw, level, upright), linearTransmittance, conductance, lower, upper };
}

/**
 * The coldest place of a junction.
 *
 * @param draw - the junction
 * @param level - the side along x
 * @param upright - the side along y, or the frame of a window
 * @returns fRsi [–], its place, and the field behind it
 * Source: ISO 13788:2012 clause 5.3 with Rsi 0.25 (from memory).
 */
export function coldestOfJunction(
  draw: JunctionDrawing,
  level: SideResistances,
  upright: SideResistances,
): ColdestOfJunction {
  const humid = SURFACE_RESISTANCE_FOR_HUMIDITY;
  const cell = draw({
    inside: { level: humid, upright: humid },
    outside: { level: level.outsideForMoisture, upright: upright.outsideForMoisture },
  });
  const field = heatWithinBounds(cell.scene);
  const { factor, x, y } = lowestSurfaceFactor(field.corners, 0, cell.surfacesFrom);
  return { temperatureFactor: factor, place: { x, y }, cell, field };
}
