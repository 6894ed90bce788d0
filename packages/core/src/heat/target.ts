import { requireFinite } from "../require.ts";
/** Decimals to which U is compared with its target. Source: this project's rule (METHOD.md, Targets and rounding). */
export const TARGET_DECIMALS = 2;

/**
 * Whether a transmittance meets its target, both rounded to two decimals as they are quoted.
 *
 * @param transmittance - U with framing and corrections [W/(m²·K)], ≥ 0
 * @param target - the target [W/(m²·K)], above 0
 * @returns true when met
 * Source: this project's rule: the figures compared are those shown.
 * @example meetsTarget(0.301, 0.3) // true
 */
export function meetsTarget(transmittance: number, target: number): boolean {
  requireFinite(transmittance, "transmittance", "W/(m²·K)");
  requireFinite(target, "target", "W/(m²·K)");
  const rounded = (value: number): number => Math.round(value * 10 ** TARGET_DECIMALS);
  return rounded(transmittance) <= rounded(target);
}
