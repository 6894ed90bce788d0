import { dewPoint } from "../../air/dew-point.ts";
import type { BuildUpResult, SectionResult } from "../../result/types.ts";

/** The least distance of a layer from the dew point of the air on the warm side [K], and its month. */
export interface LayerMargin {
  margin: number;
  month: string;
}

/**
 * How far a sheet stays above the dew point of the air on the warm side, in the way between framing.
 *
 * @param result - the assessed build-up
 * @param sheet - index of the sheet
 * @returns the least over the year; null where moisture was not worked out or nothing drives vapour
 * Source: this project's rule (method.md 6): what decides is the margin.
 */
export function layerMargin(result: BuildUpResult, sheet: number): LayerMargin | null {
  const side = result.vapourLayer?.warmSide ?? "neither";
  if (result.moisture === null || side === "neither") return null;
  let least: LayerMargin | null = null;
  for (const { month, indoor, outdoor, nodes } of betweenFraming(result.moisture.sections).months) {
    const face = nodes.find(({ layer }) => layer === sheet);
    if (face === undefined) return null;
    const air = side === result.room ? indoor : outdoor;
    const margin = face.temperature - dewPoint(air.vapourPressure);
    if (least === null || margin < least.margin) least = { margin, month };
  }
  return least;
}

function betweenFraming(sections: readonly SectionResult[]): SectionResult {
  return sections.find(({ name }) => name === "between framing") ?? sections[0]!;
}
