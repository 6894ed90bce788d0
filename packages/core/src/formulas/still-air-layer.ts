import { THICKEST_STILL_AIR, USUAL_EMISSIVITY } from "../constants.ts";
import { airLayerResistance } from "../heat/air-layer-resistance.ts";
import { requireNumber, requireOneOf } from "../require.ts";
import type { HeatFlowDirection } from "../result/types.ts";

/**
 * Thermal resistance of an unventilated air layer, wide or divided by framing.
 *
 * @param thickness - d [m], 0.0001 to 0.3
 * @param direction - of the heat flow: upward, horizontal or downward
 * @param emissivityInner - ε1 [–], 0.001 to 1 (default 0.9)
 * @param emissivityOuter - ε2 [–], 0.001 to 1 (default 0.9)
 * @param width - b between framing [m], 0.001 and more (default undivided)
 * @returns R [m²·K/W]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 6946:2017 Annex D.2 to D.4 (from memory), for temperature differences up to 5 K.
 * @example stillAirLayerResistance(0.025, "horizontal", 0.05) // 0.664
 */
export function stillAirLayerResistance(
  thickness: number,
  direction: HeatFlowDirection,
  emissivityInner: number = USUAL_EMISSIVITY,
  emissivityOuter: number = USUAL_EMISSIVITY,
  width = UNDIVIDED,
): number {
  requireNumber(thickness, "thickness", "m", 1e-4, THICKEST_STILL_AIR);
  requireOneOf(direction, "direction", ["upward", "horizontal", "downward"]);
  requireNumber(emissivityInner, "emissivityInner", "", 0.001, 1);
  requireNumber(emissivityOuter, "emissivityOuter", "", 0.001, 1);
  requireNumber(width, "width", "m", 0.001, UNDIVIDED);
  return airLayerResistance(thickness, direction, emissivityInner, emissivityOuter, width);
}

/** Width of an undivided layer, wider than any wall [m]. */
const UNDIVIDED = 1e6;
