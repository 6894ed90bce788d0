import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { channelCell } from "../field/channel-cell.ts";
import { type BoundedHeat, heatWithinBounds } from "../field/heat-within-bounds.ts";
import { lowestSurfaceFactor } from "../field/plane-heat.ts";
import type { CellSurfaces } from "../field/repeating-cell.ts";
import { SURFACE_RESISTANCE_FOR_HUMIDITY } from "../heat/temperature-factor.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { Framing } from "../project/types.ts";
import type { ChannelHeat } from "./types.ts";

/**
 * Heat through a build-up framed with metal channels, in the plane.
 *
 * @param heat - its heat figures from straight paths
 * @param framing - the channels
 * @returns U without corrections [W/(m²·K)] with its bounds, and fRsi [–]
 * Source: ISO 6946:2017 clause 6.7.2.1 refers metal through insulation to ISO 10211 (from memory).
 */
export function channelHeat(
  { counted, surfaceResistances, addedOutside }: HeatCalculation,
  framing: Framing,
): ChannelHeat {
  const { inside, outside, outsideForMoisture } = surfaceResistances;
  const solved = (surfaces: CellSurfaces): { heat: BoundedHeat; width: number } => {
    const { scene, width } = channelCell({ counted, framing, surfaces, sheets: false });
    return { heat: heatWithinBounds(scene), width };
  };
  const { heat, width } = solved({ inside, outside: outside + addedOutside });
  const humid = solved({ inside: SURFACE_RESISTANCE_FOR_HUMIDITY, outside: outsideForMoisture });
  return {
    heat,
    transmittance: heat.conductance / width,
    lower: heat.lower / width,
    upper: heat.upper / width,
    temperatureFactor: lowestSurfaceFactor(humid.heat.corners).factor,
    wholeTemperatureFactor: 1 - SURFACE_RESISTANCE_FOR_HUMIDITY * (humid.heat.conductance / width),
  };
}

/**
 * A calculation with U from the plane instead of U from straight paths.
 *
 * @param calculation - a build-up's figures
 * @param channel - heat in the plane; null changes nothing
 * @returns the figures; limits are the bounds of the plane
 */
export function withHeatOfChannels(calculation: BuildUpCalculation, channel: ChannelHeat | null): BuildUpCalculation {
  if (channel === null) return calculation;
  const { heat } = calculation;
  const { transmittance, lower, upper } = channel;
  const inPlane: HeatCalculation = {
    ...heat,
    resistance: 1 / transmittance,
    upperLimit: 1 / lower,
    lowerLimit: 1 / upper,
    limitsRatio: upper / lower,
    possibleError: (upper - lower) / (2 * transmittance),
    transmittance: transmittance + heat.correction,
    paths: heat.paths.filter(({ through }) => through.length === 0),
  };
  return { ...calculation, heat: inPlane };
}
