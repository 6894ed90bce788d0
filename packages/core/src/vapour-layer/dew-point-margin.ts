import { dewPoint } from "../air/dew-point.ts";
import type { SectionCalculation } from "../calculate-build-up.ts";
import { MONTH_NAMES } from "../constants.ts";
import { facesOfSlices } from "../further-checks/section-nodes/places.ts";
import type { AirMonths } from "../project/types.ts";
import type { MonthName, Side } from "../result/types.ts";

/** The smallest margin of a face above the dew point of the air on the warm side [K], and its month. */
export interface DewPointMargin {
  margin: number;
  month: MonthName;
}

/** Adjacent slices of a section, by their indices from the room outwards, and the side that vapour comes from. */
export interface WarmFace {
  first: number;
  last: number;
  warm: Side;
}

/**
 * How far the warm face of a tight layer stays above the dew point of the air on that side. The temperatures are those
 * of the section's nodes and include clear-sky cooling.
 *
 * @param section - the section
 * @param face - the slices of the layer, and the warm side
 * @param air - the air on that side [°C, Pa]
 * @returns the least difference over the year [K], negative where water can condense, and its month
 * Source: this project's rule (METHOD.md, Vapour layer): the margin decides.
 */
export function dewPointMargin(
  { line, slices, climate }: Pick<SectionCalculation, "line" | "slices" | "climate">,
  { first, last, warm }: WarmFace,
  air: AirMonths,
): DewPointMargin {
  const faces = facesOfSlices(line, slices);
  const node = warm === "inside" ? faces[first]!.inner : faces[last]!.outer;
  let least: DewPointMargin = { margin: Number.POSITIVE_INFINITY, month: MONTH_NAMES[0] };
  MONTH_NAMES.forEach((month, index) => {
    const margin = climate.temperature[index]![node]! - dewPoint(air.vapourPressure[index]!);
    if (margin < least.margin) least = { margin, month };
  });
  return least;
}
