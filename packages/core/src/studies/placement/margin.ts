import type { Evidence } from "../../findings/types.ts";
import { betweenFraming } from "../../vapour-layer/assess-vapour-layer.ts";
import { type DewPointMargin, dewPointMargin } from "../../vapour-layer/dew-point-margin.ts";

/**
 * How far a sheet stays above the dew point of the air on the warm side, on the path between framing.
 *
 * @param evidence - figures and vapour layer of the assessed build-up
 * @param sheet - index of the sheet
 * @returns the least margin over the year [K]; null if the sheet does not count or nothing drives vapour
 * Source: this project's rule (METHOD.md, Vapour layer): the margin decides.
 */
export function layerMargin(
  { calculation, vapourLayer }: Pick<Evidence, "calculation" | "vapourLayer">,
  sheet: number,
): DewPointMargin | null {
  if (vapourLayer.warmSide === "neither") return null;
  const section = betweenFraming(calculation);
  const slice = section.slices.findIndex(({ layer }) => layer === sheet);
  if (slice < 0) return null;
  const warm = vapourLayer.warmSide;
  const air = warm === "inside" ? calculation.inside : calculation.farSide.months;
  return dewPointMargin(section, { first: slice, last: slice, warm }, air);
}
