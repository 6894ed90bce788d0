import { type BuildUpResult, meetsTarget } from "@warmside/core";
import { fixed } from "./numbers.ts";

/** Heat figures and the target they are held against. */
type HeldAgainst = Pick<BuildUpResult, "heat" | "target">;

/**
 * How a transmittance stands to its target, compared at two decimals.
 *
 * @param buildUp - a build-up of the result
 * @returns such as ", target 0.25: met"; empty without a target
 */
export function targetWords({ heat, target }: HeldAgainst): string {
  if (!heat || target === null) return "";
  const met = meetsTarget(heat.transmittance, target);
  return `, target ${fixed(target, 2)}: ${met ? "met" : "not met"}`;
}
