import { MONTHS_PER_YEAR } from "../../constants.ts";
import type { ProblemPath } from "../../problems/types.ts";
import { formatQuantity } from "../../quantities/format-quantity.ts";
import { characteristicDimension } from "../characteristic-dimension.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenBuildUp, WrittenGround, WrittenVoid } from "../schema/schema-build-up.ts";
import type { ReadValue } from "../schema/schema-values.ts";
import type { Ground, StatedMonths, UnderfloorVoid, UnheatedSpace } from "../types.ts";

/** Thickness of the walls around a floor unless stated [m]. Source: ISO 13370:2017 (from memory). */
export const USUAL_WALL_THICKNESS = 0.3;
/** Height of a void's floor above the ground outside unless stated [m]. Source: ISO 13370:2017 (from memory). */
export const USUAL_VOID_HEIGHT = 0.3;
/** Transmittance of the walls of a void unless stated [W/(m²·K)]. Source: ISO 13370:2017 (from memory). */
export const USUAL_VOID_WALL_TRANSMITTANCE = 1.5;
/** Openings of a void unless stated [m²/m]. Source: ISO 13370:2017 (from memory). */
export const USUAL_VOID_OPENINGS = 0.0015;
/** Mean wind at 10 m height unless stated [m/s]. Source: ISO 13370:2017 (from memory). */
export const USUAL_WIND_SPEED = 4;

/** Slab on the ground; unless stated, the soil is "unknown" and there is no ground membrane. */
export function resolveGround(written: WrittenGround | undefined): Ground | null {
  if (written === undefined) return null;
  const edge = written["edge insulation"];
  return {
    area: written.area.value,
    perimeter: written.perimeter.value,
    wallThickness: written["wall thickness"]?.value ?? USUAL_WALL_THICKNESS,
    soil: written.soil ?? "unknown",
    edgeInsulation:
      edge === undefined
        ? null
        : {
            resistance: edge.resistance.value,
            thickness: edge.thickness.value,
            extent: (edge.width ?? edge.depth)!.value,
            upright: edge.depth !== undefined,
          },
    membrane: written.membrane ?? false,
  };
}

/**
 * Checks that edge insulation does not reach past the middle of the floor. Its saving is at the edge alone; with more
 * extent the formula would subtract more heat flow than there is.
 */
export function checkEdgeInsulation(written: WrittenBuildUp, path: ProblemPath, context: ReadingContext): void {
  const ground = resolveGround(written.ground);
  if (ground?.edgeInsulation == null) return;
  const { extent, upright } = ground.edgeInsulation;
  const furthest = characteristicDimension(ground.area, ground.perimeter) / (upright ? 4 : 2);
  if (extent <= furthest) return;
  const key = upright ? "depth" : "width";
  context.collector.add("edge-too-far", [...path, "ground", "edge insulation", key], {
    key,
    furthest: formatQuantity(furthest, "length"),
  });
}

/** Void under a suspended floor; null without an area and a perimeter, when its climate is given instead. */
export function resolveVoid(written: WrittenVoid | undefined): UnderfloorVoid | null {
  if (written?.area === undefined || written.perimeter === undefined) return null;
  return {
    area: written.area.value,
    perimeter: written.perimeter.value,
    wallThickness: written["wall thickness"]?.value ?? USUAL_WALL_THICKNESS,
    soil: written.soil ?? "unknown",
    height: written.height?.value ?? USUAL_VOID_HEIGHT,
    wallTransmittance: written["wall transmittance"]?.value ?? USUAL_VOID_WALL_TRANSMITTANCE,
    openings: written.openings?.value ?? USUAL_VOID_OPENINGS,
    windSpeed: written.wind?.value ?? USUAL_WIND_SPEED,
    shelter: written.shelter ?? "average",
    groundInsulation: written["ground insulation"]?.value ?? 0,
  };
}

/** The void's own climate, where the file states it. */
export function resolveVoidClimate(written: WrittenVoid | undefined): StatedMonths | null {
  if (written?.temperature === undefined || written.humidity === undefined) return null;
  return { temperature: twelveOf(written.temperature), relativeHumidity: twelveOf(written.humidity) };
}

/** An adjoining unheated space, counted as a resistance. */
export function resolveSpace(written: WrittenBuildUp["space"]): UnheatedSpace | null {
  if (written === undefined) return null;
  return {
    area: written.area.value,
    external: written.external.map(({ area, transmittance }) => ({
      area: area.value,
      transmittance: transmittance.value,
    })),
    airChanges: written["air changes"].value * SECONDS_PER_HOUR,
    volume: written.volume.value,
  };
}

/** One value for every month, or the twelve given. */
export function twelveOf(written: ReadValue | readonly ReadValue[]): number[] {
  if (Array.isArray(written)) return written.map(({ value }: ReadValue) => value);
  return Array.from({ length: MONTHS_PER_YEAR }, () => (written as ReadValue).value);
}

/** Source: definition. */
const SECONDS_PER_HOUR = 3600;
