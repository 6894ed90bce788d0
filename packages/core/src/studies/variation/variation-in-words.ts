import { formatInShownUnit, formatQuantity } from "../../quantities/format-quantity.ts";
import { requireFinite } from "../../require.ts";
import type { VariationStudy } from "../../result/types.ts";

/**
 * Sums up a variation in one or two sentences. Judgements stand in quotation marks, since a bare "change it" would read
 * as an order.
 *
 * @param study - its points and turns
 * @returns for example "mineral wool slab: “change it” under 40 mm, “sound” from 40 mm. U goes from 0.90 to 0.31 W/(m²·K)."
 */
export function variationInWords(study: Omit<VariationStudy, "message">): string {
  const { layer, points, turns, target, meetsTargetFrom } = study;
  const first = points[0]!;
  const last = points[points.length - 1]!;
  const parts =
    turns.length === 0
      ? [`“${first.judgement}” throughout, from ${millimetres(study.from)} to ${millimetres(study.to)}`]
      : [
          `“${first.judgement}” under ${fromThickness(turns[0]!.thickness)}`,
          ...turns.map(({ thickness, to }) => `“${to}” from ${fromThickness(thickness)}`),
        ];
  const ends =
    first.transmittance === null || last.transmittance === null
      ? ""
      : ` U falls from ${formatInShownUnit(first.transmittance, "transmittance")} to ${formatQuantity(last.transmittance, "transmittance")}`;
  return `${layer.name}: ${parts.join(", ")}.${ends === "" ? "" : `${ends}${targetInWords(target, meetsTargetFrom)}.`}`;
}

/**
 * A thickness from which something holds, rounded up to a whole millimetre, which can be built.
 *
 * @param thickness - [m]
 * @returns for example "19 mm" for 18.9 mm
 */
export function fromThickness(thickness: number): string {
  requireFinite(thickness, "thickness", "m");
  return `${Math.ceil(thickness * MILLIMETRES_PER_METRE - SMALLEST_PART)} mm`;
}

function targetInWords(target: number | null, meetsTargetFrom: number | null): string {
  if (target === null) return "";
  return meetsTargetFrom === null
    ? ` and never meets the target of ${formatInShownUnit(target, "transmittance")}`
    : ` and meets the target of ${formatInShownUnit(target, "transmittance")} from ${fromThickness(meetsTargetFrom)}`;
}

function millimetres(thickness: number): string {
  return formatQuantity(thickness, "thickness");
}
/** This much over a whole millimetre is binary noise [mm]. */
const SMALLEST_PART = 1e-6;
const MILLIMETRES_PER_METRE = 1000;
