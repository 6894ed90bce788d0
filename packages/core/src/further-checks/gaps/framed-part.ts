import { type BuildUpCalculation, compareSections, type SectionCalculation } from "../../calculate-build-up.ts";
import type { SolidLayer } from "../../project/types.ts";
import type { GapsData } from "../../result/types.ts";
import { layerSd } from "../../vapour/layer-sd.ts";
import type { SectionYear } from "../../year/types.ts";
import { isThroughFraming } from "../section-nodes/material-of-slice.ts";
import { peakOfYear } from "../section-nodes/peak-of-year.ts";
import { sdOfLayer, standardYear, whatIfSection, withSd } from "../section-nodes/what-if-section.ts";

/**
 * The framed part without a vapour layer in front of it: the actual case where the vapour layer stops at the framing, a
 * variant where the layer runs across it.
 *
 * @param calculation - the build-up's figures
 * @param layer - the vapour layer
 * @param index - its index
 * @returns one entry, for the worst section through framing; none without framing
 */
export function framedPart(calculation: BuildUpCalculation, layer: SolidLayer, index: number): GapsData[] {
  const framed = calculation.sections.filter(({ path }) => path.through.length > 0);
  if (framed.length === 0) return [];
  const parts = framed.map((section) => withoutVapourLayer(calculation, section, layer, index));
  const worst = parts.reduce((a, b) => (compareSections(b, a) > 0 ? b : a));
  const { section, year, stops } = worst;
  return [
    {
      kind: "framed part",
      layer: index,
      share: section.path.share,
      laps: null,
      holes: null,
      sdWhole: layerSd(layer, "dry"),
      sdEffective: stops ? sdOfLayer(section.slices, index) : 0,
      verdict: year.verdict,
      peak: peakOfYear(year),
      whole: null,
      framedPart: { section: section.id, stops },
    },
  ];
}

interface FramedPart {
  section: SectionCalculation;
  year: SectionYear;
  /** Whether the framing runs through the vapour layer itself, which then stops there. */
  stops: boolean;
}

function withoutVapourLayer(
  calculation: BuildUpCalculation,
  section: SectionCalculation,
  layer: SolidLayer,
  index: number,
): FramedPart {
  if (isThroughFraming(layer, section.path)) return { section, year: section.year, stops: true };
  const year = standardYear(whatIfSection(calculation, withSd(section.slices, index, 0)));
  return { section, year, stops: false };
}
