import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { bridgedLayerResistance, resistanceOfPath } from "../heat/combined-resistance.ts";
import { pathName, resistanceAlong } from "../heat/paths.ts";
import { lowestFactor } from "../heat/surface.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { AirMonths } from "../project/types.ts";
import type { HeatResult, SurfaceResult } from "../result/types.ts";
import { heatOverTheYear } from "./heat-over-the-year.ts";

/**
 * The heat side of a calculation in the shape of the result.
 *
 * @param calculation - the build-up's figures
 * @param surface - its inside surface
 * @param outdoor - twelve months of outdoor air
 * @returns heat figures with their working
 */
export function heatResult(calculation: BuildUpCalculation, surface: SurfaceResult, outdoor: AirMonths): HeatResult {
  const { heat } = calculation;
  const framed = heat.counted.some(({ framing }) => framing !== null);
  const outside = heat.surfaceResistances.outside + heat.addedOutside;
  return {
    resistance: heat.resistance,
    upperLimit: heat.upperLimit,
    lowerLimit: heat.lowerLimit,
    transmittance: heat.transmittance,
    clearTransmittance: heat.clearTransmittance,
    correction: heat.correction,
    framingShare: heat.framingShare,
    temperatureFactor: lowestFactor(surface).factor,
    requiredTemperatureFactor: surface.critical.mould?.factor ?? null,
    criticalMonth: surface.critical.mould?.month ?? null,
    direction: heat.direction,
    surfaceResistanceInside: heat.surfaceResistances.inside,
    surfaceResistanceOutside: heat.surfaceResistances.outside,
    surfaceResistanceOutsideMoisture: heat.surfaceResistances.outsideForMoisture,
    limitsRatio: heat.limitsRatio,
    possibleError: heat.possibleError,
    paths: heat.paths.map((path) => ({
      name: pathName(path, framed),
      share: path.share,
      resistance: heat.surfaceResistances.inside + resistanceOfPath(heat.counted, path) + outside,
      layerResistances: heat.counted.map((layer) => resistanceAlong(layer, path)),
    })),
    lowerLimitLayers: lowerLimitLayers(heat),
    corrections: heat.corrections.map(({ name, layer, value, formula }) => ({ name, layer, value, formula })),
    correctionsLeftOut: heat.correctionsLeftOut,
    ground: heat.ground === null ? null : heat.ground.map((value) => ({ ...value })),
    slightVentilation: heat.slightVentilation ?? null,
    ...heatOverTheYear(calculation, outdoor),
  };
}

function lowerLimitLayers(heat: HeatCalculation): HeatResult["lowerLimitLayers"] {
  return [
    { layer: null, name: "surface, room side (Rsi)", resistance: heat.surfaceResistances.inside },
    ...heat.counted.map((layer) => ({
      layer: layer.index,
      name: layer.layer.name,
      resistance: bridgedLayerResistance(layer),
    })),
    ...(heat.addedOutside > 0
      ? [{ layer: null, name: "space outside the layers", resistance: heat.addedOutside }]
      : []),
    { layer: null, name: "surface, far side (Rse)", resistance: heat.surfaceResistances.outside },
  ];
}
