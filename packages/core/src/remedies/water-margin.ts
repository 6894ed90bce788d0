import type { BuildUpCalculation, SectionCalculation } from "../calculate-build-up.ts";
import { amountLimits, TRACE } from "../findings/amount-limits.ts";
import { type WaterZone, waterZones } from "../findings/water-zones.ts";
import { materialAlong } from "../further-checks/section-nodes/material-of-slice.ts";

/**
 * Share of its limit that the water in a remedied build-up may reach [–] (this project's rule). The other half is left
 * for workmanship, for goods whose values vary, and for winters that differ.
 */
export const SHARE_OF_LIMIT = 0.5;

/**
 * Most water that a remedy may leave on gypsum board or paper [kg/m²]: wet gypsum softens, and paper feeds mould
 * (common practice).
 */
export const MOST_ON_GYPSUM_OR_PAPER = 0.2;

/**
 * Whether a remedied build-up keeps a margin: in every zone water is at most half of the limit, and little on gypsum
 * board or paper. A trace is always allowed.
 *
 * @param calculation - figures of the remedied build-up
 * @returns true when every zone of every section keeps the margin
 * Source: this project's rule; the limits are those of `amount-limits.ts`.
 */
export function keepsWaterMargin(calculation: BuildUpCalculation): boolean {
  return calculation.sections.every((section) =>
    waterZones(section, section.withinMonth).every(
      (zone) => zone.peak <= Math.max(TRACE, mostIn(zone, section, calculation)),
    ),
  );
}

/** Most water allowed in a zone [kg/m²]. */
function mostIn(zone: WaterZone, section: SectionCalculation, { buildUp }: BuildUpCalculation): number {
  const limit = amountLimits(zone, section, buildUp)[0]!.amount;
  const most = SHARE_OF_LIMIT * limit;
  return touchesGypsumOrPaper(zone, section, buildUp) ? Math.min(most, MOST_ON_GYPSUM_OR_PAPER) : most;
}

function touchesGypsumOrPaper(
  { layers }: WaterZone,
  { path }: SectionCalculation,
  buildUp: BuildUpCalculation["buildUp"],
): boolean {
  return layers.some((index) => {
    const layer = buildUp.layers[index];
    const material = layer === undefined ? null : materialAlong(layer, path);
    return material !== null && (material.kind === "paper" || /gypsum/.test(material.name));
  });
}
