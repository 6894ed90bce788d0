import type { AirLayer, BuildUp } from "../project/types.ts";
import type { HeatFlowDirection } from "../result/types.ts";
import { combinedResistance } from "./combined-resistance.ts";
import { heatCorrections, SMALLEST_CORRECTION_SHARE } from "./corrections.ts";
import { countedLayers } from "./counted-layers.ts";
import {
  type GroundTransmittance,
  resistanceOfGround,
  slabTransmittance,
  suspendedFloorTransmittance,
} from "./ground-floor.ts";
import { rainCorrections } from "./inverted-roof.ts";
import { pathsThrough } from "./paths.ts";
import { ROOF_SPACE_RESISTANCE, unheatedSpaceResistance } from "./space-resistance.ts";
import { sumOfResistances } from "./sum-of-resistances.ts";
import { type OuterEnd, surfaceResistances } from "./surface-resistance.ts";
import type { HeatCalculation, Path } from "./types.ts";

/**
 * Resistances and transmittance of a build-up, with framing and corrections.
 *
 * @param buildUp - the build-up; slightly ventilated air layers count as unventilated here (see `slight-ventilation.ts`)
 * @param direction - of the heat flow
 * @returns the figures of ISO 6946 (and ISO 13370 for floors on ground and over a void)
 * Source: ISO 6946:2017 clauses 6.7 to 7; ISO 13370:2017 clause 7 (from memory).
 */
export function calculateHeat(buildUp: BuildUp, direction: HeatFlowDirection): HeatCalculation {
  const { counted, endsAt } = countedLayers(buildUp, direction);
  const surfaces = surfaceResistances(direction, outerEndOf(buildUp, endsAt));
  const paths = pathsThrough(counted);
  const addedOutside = resistanceOutside(buildUp, endsAt);
  const outside = surfaces.outside + addedOutside;
  const combined = combinedResistance(counted, paths, surfaces.inside, outside);
  const clear = surfaces.inside + sumOfResistances(counted) + outside;
  const corrections = [...heatCorrections(counted, clear), ...rainCorrections(buildUp, counted, clear)];
  const wanted = corrections.reduce((sum, { value }) => sum + value, 0);
  const uncorrected = 1 / combined.resistance;
  const correctionsLeftOut = wanted > 0 && wanted < SMALLEST_CORRECTION_SHARE * uncorrected;
  const correction = correctionsLeftOut ? 0 : wanted;
  const bothSurfaces = surfaces.inside + surfaces.outside;
  const floor = floorOnGround(buildUp, combined.resistance - bothSurfaces);
  const clearFloor = floorOnGround(buildUp, clear - bothSurfaces);
  const groundResistance =
    floor === null || buildUp.ground === null
      ? null
      : resistanceOfGround(floor.transmittance, combined.resistance - bothSurfaces);
  return {
    // One by one: in so large an object, a leading spread takes Node 20 longer than all the rest of this function.
    upperLimit: combined.upperLimit,
    lowerLimit: combined.lowerLimit,
    resistance: combined.resistance,
    limitsRatio: combined.limitsRatio,
    possibleError: combined.possibleError,
    direction,
    surfaceResistances: { ...surfaces, outsideForMoisture: groundResistance ?? surfaces.outsideForMoisture },
    groundResistance,
    counted,
    endsAt,
    paths,
    corrections,
    correctionsLeftOut,
    correction,
    framingShare: 1 - shareBetweenFraming(paths),
    addedOutside,
    transmittance: (floor?.transmittance ?? uncorrected) + correction,
    clearTransmittance: clearFloor?.transmittance ?? 1 / clear,
    ground: floor?.working ?? null,
    slightVentilation: null,
  };
}

function floorOnGround(buildUp: BuildUp, floorResistance: number): GroundTransmittance | null {
  if (buildUp.ground !== null) return slabTransmittance(buildUp.ground, floorResistance);
  if (buildUp.void !== null) return suspendedFloorTransmittance(buildUp.void, floorResistance);
  return null;
}

function outerEndOf(buildUp: BuildUp, endsAt: number | null): OuterEnd {
  if (endsAt !== null && buildUp.faces === "outdoors") return "well-ventilated layer";
  return buildUp.faces === "outdoors" || buildUp.faces === "ground" ? "outdoor air" : "room or void";
}

/** Resistance outside the layers [m²·K/W]; a roof space beyond a well-ventilated layer does not count. */
function resistanceOutside(buildUp: BuildUp, endsAt: number | null): number {
  const roofSpace = buildUp.roofSpace === null || endsAt !== null ? 0 : ROOF_SPACE_RESISTANCE[buildUp.roofSpace];
  const space = buildUp.space === null ? 0 : unheatedSpaceResistance(buildUp.space);
  return roofSpace + space;
}

/** Share of the area without framing [–]. */
function shareBetweenFraming(paths: readonly Path[]): number {
  return paths.find((path) => path.through.length === 0)?.share ?? 0;
}

/** The innermost slightly ventilated air layer; null without one inside any well-ventilated layer. */
export function slightlyVentilatedLayer(buildUp: BuildUp): { index: number; layer: AirLayer } | null {
  for (const [index, layer] of buildUp.layers.entries()) {
    if (layer.type !== "air") continue;
    if (layer.ventilation === "well") return null;
    if (layer.ventilation === "slight") return { index, layer };
  }
  return null;
}
