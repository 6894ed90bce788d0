import { exponential, logarithm } from "../arithmetic/exponential.ts";
import { STEFAN_BOLTZMANN, THICKEST_STILL_AIR, ZERO_CELSIUS_IN_KELVIN } from "../constants.ts";
import type { HeatFlowDirection } from "../result/types.ts";

/** Mean temperature of an air layer Tm [K]: 10 °C. Source: ISO 6946:2017 Annex D (from memory). */
export const MEAN_TEMPERATURE_OF_AIR_LAYER: number = ZERO_CELSIUS_IN_KELVIN + 10;

/** Conductivity of still air, the lower bound of ha [W/(m·K)]. Source: ISO 6946:2017 Table D.1 (from memory). */
const STILL_AIR_CONDUCTIVITY = 0.025;

/** Convective coefficients ha [W/(m²·K)] for ΔT up to 5 K. Source: ISO 6946:2017 Table D.1 (from memory). */
const CONVECTION_HORIZONTAL = 1.25;
const CONVECTION_UPWARD = 1.95;
/** Downward: 0.12·d^−0.44. Source: ISO 6946:2017 Table D.1 (from memory). */
const CONVECTION_DOWNWARD_FACTOR = 0.12;
const CONVECTION_DOWNWARD_EXPONENT = -0.44;

/** Narrower than this many thicknesses, a layer is divided. Source: ISO 6946:2017 Annex D.4 (from memory). */
const DIVIDED_BELOW_WIDTH_RATIO = 10;

/**
 * Thermal resistance of an unventilated air layer, wide or divided by framing.
 *
 * @param thickness - d [m], above 0 and up to 0.3
 * @param direction - of the heat flow
 * @param emissivityInner - ε1 [–], above 0 up to 1
 * @param emissivityOuter - ε2 [–], above 0 up to 1
 * @param width - b, clear width between framing [m]; omitted or infinite for an undivided layer
 * @returns R [m²·K/W]
 * @throws RangeError when an input is out of range or not a number
 * Source: ISO 6946:2017 Annex D.2 to D.4 (from memory), for temperature differences up to 5 K.
 * @example airLayerResistance(0.025, "horizontal", 0.9, 0.9) // 0.1831
 */
export function airLayerResistance(
  thickness: number,
  direction: HeatFlowDirection,
  emissivityInner: number,
  emissivityOuter: number,
  width: number = Number.POSITIVE_INFINITY,
): number {
  if (!(thickness > 0 && thickness <= THICKEST_STILL_AIR)) {
    throw new RangeError(
      `an air layer's thickness must be over 0 and at most ${THICKEST_STILL_AIR} m, was ${thickness}`,
    );
  }
  for (const emissivity of [emissivityInner, emissivityOuter]) {
    if (!(emissivity > 0 && emissivity <= 1))
      throw new RangeError(`emissivity must be over 0 and at most 1, was ${emissivity}`);
  }
  if (!(width > 0)) throw new RangeError(`clear width must be over 0 m, was ${width}`);
  const convection = convectiveCoefficient(thickness, direction);
  const radiation = radiativeCoefficient(thickness, emissivityInner, emissivityOuter, width);
  return 1 / (convection + radiation);
}

function convectiveCoefficient(thickness: number, direction: HeatFlowDirection): number {
  const conduction = STILL_AIR_CONDUCTIVITY / thickness;
  const convection = {
    horizontal: CONVECTION_HORIZONTAL,
    upward: CONVECTION_UPWARD,
    downward: CONVECTION_DOWNWARD_FACTOR * exponential(CONVECTION_DOWNWARD_EXPONENT * logarithm(thickness)),
  }[direction];
  return Math.max(convection, conduction);
}

function radiativeCoefficient(thickness: number, inner: number, outer: number, width: number): number {
  const mean = MEAN_TEMPERATURE_OF_AIR_LAYER;
  const blackBody = 4 * STEFAN_BOLTZMANN * mean * mean * mean;
  const parallelPlanes = 1 / inner + 1 / outer - 1;
  if (!(width < DIVIDED_BELOW_WIDTH_RATIO * thickness)) return blackBody / parallelPlanes;
  const ratio = thickness / width;
  const viewFactorTerm = 2 / (1 + Math.sqrt(1 + ratio ** 2) - ratio);
  return blackBody / (1 / inner + 1 / outer - 2 + viewFactorTerm);
}
