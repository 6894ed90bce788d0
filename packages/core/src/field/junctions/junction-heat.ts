import { SURFACE_RESISTANCE_FOR_HUMIDITY } from "../../heat/temperature-factor.ts";
import { type BoundedHeat, heatWithinBounds } from "../heat-within-bounds.ts";
import { lowestSurfaceFactor } from "../plane-heat.ts";
import type { JunctionCell, JunctionSurfaces } from "./junction-cell.ts";
import { clearTransmittanceOf, type Side } from "./side.ts";

/** Heat figures of a junction, with the field behind them. */
export interface JunctionHeat {
  /** Linear thermal transmittance by outer dimensions [W/(m·K)], beside the U between the framing of both sides. */
  linearTransmittance: number;
  /** Heat through the whole drawing [W/(m·K)], and the bounds it lies between. */
  conductance: number;
  lower: number;
  upper: number;
  /** Lowest fRsi of the room's surfaces [–], and where it is [m]. */
  temperatureFactor: number;
  place: { x: number; y: number };
  /** The drawing with the surface resistances for humidity, and its heat. */
  cell: JunctionCell;
  field: BoundedHeat;
}

/** Draws a junction with given surface resistances. */
export type JunctionDrawing = (surfaces: JunctionSurfaces) => JunctionCell;

/**
 * ψ and the lowest temperature factor of a junction.
 *
 * @param draw - the junction, for the surface resistances of U and for those of the surface's humidity
 * @param level - the side along x
 * @param upright - the side along y; null where the drawing has but one
 * @returns ψ = L2D − Σ U·l [W/(m·K)] and fRsi [–]
 * Source: ISO 10211:2017 clauses 9 and 10; Rsi 0.25 by ISO 13788:2012 Table 2 (from memory).
 */
export function junctionHeat(draw: JunctionDrawing, level: Side, upright: Side | null): JunctionHeat {
  const other = upright ?? level;
  const forTransmittance = draw({
    inside: { level: level.inside, upright: other.inside },
    outside: { level: level.outside, upright: other.outside },
  });
  const humid = SURFACE_RESISTANCE_FOR_HUMIDITY;
  const cell = draw({
    inside: { level: humid, upright: humid },
    outside: { level: level.outsideForMoisture, upright: other.outsideForMoisture },
  });
  const { conductance, lower, upper } = heatWithinBounds(forTransmittance.scene);
  const field = heatWithinBounds(cell.scene);
  const { factor, x, y } = lowestSurfaceFactor(field.corners);
  const alongLevel = clearTransmittanceOf(level) * forTransmittance.levelLength;
  const alongUpright = upright === null ? 0 : clearTransmittanceOf(upright) * forTransmittance.uprightLength;
  const linearTransmittance = conductance - alongLevel - alongUpright;
  return { linearTransmittance, conductance, lower, upper, temperatureFactor: factor, place: { x, y }, cell, field };
}
