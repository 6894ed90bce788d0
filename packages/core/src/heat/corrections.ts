import type { Fasteners, InsulationFit } from "../project/types.ts";
import { formatNumber } from "../quantities/format-quantity.ts";
import type { HeatCorrection } from "../result/types.ts";
import type { CountedLayer } from "./types.ts";

/** ΔU″ by level [W/(m²·K)]. Source: ISO 6946:2017 Table F.1 (from memory). */
export const AIR_GAP_CORRECTION: Readonly<Record<InsulationFit, number>> = {
  continuous: 0,
  gaps: 0.01,
  "gaps and air behind": 0.04,
};

/** α for a fastener that passes right through the layer [–]. Source: ISO 6946:2017 clause F.3.2 (from memory). */
export const FASTENER_FACTOR = 0.8;

/** Corrections that together are under this share of U are left out. Source: ISO 6946:2017 clause 7 (from memory). */
export const SMALLEST_CORRECTION_SHARE = 0.03;

/**
 * Corrections to the transmittance for air gaps in the insulation and for fasteners through it.
 *
 * @param counted - counted layers
 * @param totalWithoutBridging - RT,h [m²·K/W], above 0
 * @returns each correction, ΔU [W/(m²·K)], before the 3 % rule
 * Source: ISO 6946:2017 Annex F (from memory).
 */
export function heatCorrections(counted: readonly CountedLayer[], totalWithoutBridging: number): HeatCorrection[] {
  const corrections: HeatCorrection[] = [];
  for (const { index, layer, resistance } of counted) {
    if (layer.type !== "material") continue;
    if (AIR_GAP_CORRECTION[layer.fit] > 0) {
      corrections.push({
        name: `air gaps (${layer.fit}) in ${layer.name}`,
        layer: index,
        value: airGapCorrection(layer.fit, resistance, totalWithoutBridging),
        formula: `${AIR_GAP_CORRECTION[layer.fit]} × (${formatNumber(resistance, 3)} / ${formatNumber(totalWithoutBridging, 3)})²`,
      });
    }
    if (layer.fasteners !== null) {
      corrections.push({
        name: `fasteners through ${layer.name}`,
        layer: index,
        value: fastenerCorrection(layer.fasteners, layer.thickness, resistance, totalWithoutBridging),
        formula: fastenerWorking(layer.fasteners, layer.thickness, resistance, totalWithoutBridging),
      });
    }
  }
  return corrections;
}

/**
 * Correction for air gaps in an insulation layer.
 *
 * @param fit - level of air gaps, in words
 * @param layerResistance - R1 [m²·K/W], ≥ 0
 * @param total - RT,h without bridging [m²·K/W], above 0
 * @returns ΔUg [W/(m²·K)]
 * Source: ISO 6946:2017 equation F.2 (from memory).
 * @example airGapCorrection("gaps", 2.5, 3.032) // 0.006799
 */
export function airGapCorrection(fit: InsulationFit, layerResistance: number, total: number): number {
  const shareOfResistance = layerResistance / total;
  return AIR_GAP_CORRECTION[fit] * shareOfResistance ** 2;
}

/**
 * Correction for fasteners through an insulation layer, recessed or not: ΔUf = α·λf·Af·nf/d1·(R1/RT,h)², where d1 is
 * the length of the fastener in the layer, α = 0.8·d1/d0, and R1 = R·d1/d0 is the resistance of the layer over d1.
 *
 * Without a recess, d1 equals d0 and ΔUf is 0.8·λf·Af·nf/d0·(R/RT,h)². With a recess, the metal bridges less of the
 * insulation. The d1 in α and in 1/d1 cancel; the one in R1 remains, so the correction falls with (d1/d0)², to 0 for a
 * fastener that does not reach the layer.
 *
 * @param fasteners - number per area [1/m²], diameter [m], λf [W/(m·K)], recess [m]
 * @param thickness - d0 of the layer [m], above 0
 * @param layerResistance - R of the whole layer [m²·K/W]
 * @param total - RT,h without bridging [m²·K/W], above 0
 * @returns ΔUf [W/(m²·K)]; 0 where the recess is as deep as the layer or deeper
 * Source: ISO 6946:2017 clause F.3.2 and equation F.3 (from memory).
 * @example fastenerCorrection({ perArea: 2.5, diameter: 0.004, conductivity: 17, recess: 0 }, 0.1, 2.5, 3.032) // 0.002905
 */
export function fastenerCorrection(
  fasteners: Fasteners,
  thickness: number,
  layerResistance: number,
  total: number,
): number {
  const { length, share } = penetration(fasteners, thickness);
  if (!(length > 0)) return 0;
  const crossSection = crossSectionOf(fasteners);
  const shareOfResistance = (share * layerResistance) / total;
  return (
    ((FASTENER_FACTOR * share * fasteners.conductivity * crossSection * fasteners.perArea) / length) *
    shareOfResistance ** 2
  );
}

/** Length of a fastener in its layer: d1 [m] and d1/d0 [–]. */
function penetration({ recess }: Fasteners, thickness: number): { length: number; share: number } {
  const length = Math.max(0, thickness - recess);
  return { length, share: length / thickness };
}

/** Cross-section of a fastener Af [m²]. */
function crossSectionOf({ diameter }: Fasteners): number {
  return (Math.PI / 4) * diameter ** 2;
}

function fastenerWorking(fasteners: Fasteners, thickness: number, resistance: number, total: number): string {
  const { length, share } = penetration(fasteners, thickness);
  if (!(length > 0)) return "0: they do not reach the layer";
  const crossSection = crossSectionOf(fasteners).toExponential(3);
  const recessed = fasteners.recess > 0 ? ` × ${formatNumber(length, 3)} / ${formatNumber(thickness, 3)}` : "";
  return (
    `${FASTENER_FACTOR}${recessed} × ${fasteners.conductivity} × ${crossSection} × ${fasteners.perArea} / ${formatNumber(length, 3)}` +
    ` × (${formatNumber(share * resistance, 3)} / ${formatNumber(total, 3)})²`
  );
}
