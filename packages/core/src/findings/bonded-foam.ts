import { dewPoint } from "../air/dew-point.ts";
import { facesOfSlices } from "../further-checks/section-nodes/places.ts";
import { betweenFraming } from "../vapour-layer/assess-vapour-layer.ts";
import { bondedFoam } from "./bonded-foam-place.ts";
import { BEYOND, found, NOTE } from "./found.ts";
import type { Evidence, RuledFinding } from "./types.ts";

/**
 * Closed-cell foam bonded to a skin: the margin of its inner face above the room's dew point, and growing water.
 * Source: METHOD.md, Foam bonded to a skin (this project's rule on common practice).
 */
export function bondedFoamFindings(evidence: Evidence): RuledFinding[] {
  const { buildUp, water } = evidence;
  const layer = bondedFoam(buildUp.layers);
  if (layer === null) return [];
  const margin = marginOfInnerFace(evidence, layer);
  const grows = water.find(
    ({ level, zone, growthPerYear }) => level === "stays" && zone!.layers.includes(layer) && (growthPerYear ?? 0) > 0,
  );
  return [
    ...(grows === undefined
      ? []
      : [found("bonded-foam-grows", BEYOND, { layer, growthPerYear: grows.growthPerYear! })]),
    found("bonded-foam", NOTE, { layer, margin }),
  ];
}

/** The smallest margin of the foam's inner face above the room's dew point over the year [K]. */
function marginOfInnerFace({ calculation }: Evidence, layer: number): number {
  const { slices, line, climate } = betweenFraming(calculation);
  const at = slices.findIndex((slice) => slice.layer === layer);
  const node = facesOfSlices(line, slices)[at]?.inner ?? 0;
  return Math.min(
    ...calculation.inside.vapourPressure.map(
      (pressure, month) => climate.temperature[month]![node]! - dewPoint(pressure),
    ),
  );
}
