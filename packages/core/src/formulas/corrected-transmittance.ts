import { SMALLEST_CORRECTION_SHARE } from "../heat/corrections.ts";
import { requireList, requireNumber } from "../require.ts";

/**
 * Transmittance corrected for air gaps, fasteners and rain; corrections under 3 % in all are left out.
 *
 * @param transmittance - U without corrections [W/(m²·K)], 0.001 to 100
 * @param corrections - ΔU of each [W/(m²·K)], 0 to 10
 * @returns U [W/(m²·K)]
 * @throws TypeError or RangeError when an input is not a number or is out of range
 * Source: ISO 6946:2017 clause 7 and Annex F (from memory).
 * @example correctedTransmittance(0.3, [0.01, 0.004]) // 0.314
 */
export function correctedTransmittance(transmittance: number, corrections: readonly number[]): number {
  requireNumber(transmittance, "transmittance", "W/(m²·K)", 0.001, 100);
  requireList(corrections, "corrections");
  for (const correction of corrections) requireNumber(correction, "each of corrections", "W/(m²·K)", 0, 10);
  const together = corrections.reduce((sum, correction) => sum + correction, 0);
  return together < SMALLEST_CORRECTION_SHARE * transmittance ? transmittance : transmittance + together;
}
