import type { BuildUpCalculation } from "../calculate-build-up.ts";
import { bridgedLayerResistance, resistanceOfPath } from "../heat/combined-resistance.ts";
import {
  FLOOR_SURFACE_INSIDE,
  FLOOR_SURFACE_OUTSIDE,
  SOIL_CONDUCTIVITY,
  WIND_SHIELDING,
} from "../heat/ground-floor.ts";
import { type EndOfHeat, heatOverTheYear } from "../heat/heat-over-the-year.ts";
import { resistanceAlong, sectionName, sectionOfPath } from "../heat/paths.ts";
import { lowestFactor } from "../heat/surface.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { AirMonths, UnderfloorVoid } from "../project/types.ts";
import type { FloorBasis, HeatResult, SurfaceResult } from "../result/types.ts";

/**
 * The heat side of a calculation in the shape of the result.
 *
 * @param calculation - the build-up's figures
 * @param surface - its inside surface
 * @param outdoor - twelve months of outdoor air
 * @returns heat figures with their working
 */
export function heatResult(calculation: BuildUpCalculation, surface: SurfaceResult, outdoor: AirMonths): HeatResult {
  const { buildUp, heat, inside, farSide } = calculation;
  const { counted, paths, surfaceResistances, addedOutside, endsAt: _, ...figures } = heat;
  const overTheYear = heatOverTheYear(buildUp, heat, { inside, farSide: farSide.months, outdoor });
  const framed = counted.some(({ framing }) => framing !== null);
  const outside = surfaceResistances.outside + addedOutside;
  return {
    ...figures,
    temperatureFactor: lowestFactor(surface).factor,
    requiredTemperatureFactor: surface.critical.mould?.factor ?? null,
    criticalMonth: surface.critical.mould?.month ?? null,
    surfaceResistanceInside: surfaceResistances.inside,
    surfaceResistanceOutside: surfaceResistances.outside,
    surfaceResistanceOutsideMoisture: surfaceResistances.outsideForMoisture,
    paths: paths.map((path) => ({
      id: sectionOfPath(path, framed),
      name: sectionName(sectionOfPath(path, framed)),
      share: path.share,
      resistance: surfaceResistances.inside + resistanceOfPath(counted, path) + outside,
      layerResistances: counted.map((layer) => resistanceAlong(layer, path)),
    })),
    lowerLimitLayers: lowerLimitLayers(heat),
    groundBasis: floorBasis(calculation),
    heatPerYear: overTheYear?.amount ?? null,
    heatPerYearNote: overTheYear === null ? null : NOTES_ON_HEAT[overTheYear.to],
  };
}

/** The note beside every figure of heat loss over the year. */
const NO_HEATING_LIMIT = "from monthly means without a heating limit, which overstates the cost";

const NOTES_ON_HEAT: Readonly<Record<EndOfHeat, string>> = {
  "far side": NO_HEATING_LIMIT,
  "outdoors past the void": `from the room to outdoors, as U is, by way of the void; ${NO_HEATING_LIMIT}`,
  "stated void": `from the floor alone to the void's stated temperature, ${NO_HEATING_LIMIT}`,
};

function floorBasis({ buildUp, heat }: BuildUpCalculation): FloorBasis | null {
  const base = buildUp.ground ?? buildUp.void;
  if (base === null || heat.ground === null) return null;
  const { area, perimeter, wallThickness, soil } = base;
  const { inside, outside } = heat.surfaceResistances;
  return {
    area,
    perimeter,
    wallThickness,
    soil,
    soilConductivity: SOIL_CONDUCTIVITY[soil],
    floorResistance: heat.resistance - inside - outside,
    surfaceResistanceInside: FLOOR_SURFACE_INSIDE,
    surfaceResistanceOutside: FLOOR_SURFACE_OUTSIDE,
    edgeInsulation: buildUp.ground?.edgeInsulation ?? null,
    void:
      buildUp.ground === null && buildUp.void !== null ? voidBasis(buildUp.void, buildUp.voidClimate !== null) : null,
  };
}

function voidBasis(space: UnderfloorVoid, isAirStated: boolean): FloorBasis["void"] {
  const { height, wallTransmittance, openings, windSpeed, shelter, groundInsulation } = space;
  const windShielding = WIND_SHIELDING[shelter];
  return { height, wallTransmittance, openings, windSpeed, shelter, groundInsulation, windShielding, isAirStated };
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
    { layer: null, name: "surface, outer side (Rse)", resistance: heat.surfaceResistances.outside },
  ];
}
