import { type BuildUpCalculation, figuresOfBuildUp } from "../../calculate-build-up.ts";
import type { BuildUp, SolidLayer } from "../../project/types.ts";
import type { GapsData, GapsYear } from "../../result/types.ts";
import type { Site } from "../../surroundings/far-side-months.ts";
import { layerSd, sdWithGaps, wholeSd } from "../../vapour/layer-sd.ts";
import type { SdOverrides } from "../../vapour/section-slices.ts";
import { vapourDrive } from "../../vapour/warm-side.ts";
import { peakOfYear } from "../section-nodes/peak-of-year.ts";
import { framedPart } from "./framed-part.ts";

/**
 * Share of a vapour layer assumed missing where the file states no gaps [–] (this project's rule, METHOD.md, Gaps in
 * the vapour layer).
 */
export const USUAL_SHARE_OF_GAPS = 0.001;

/**
 * Gaps: the effect of stated gaps, the effect of gaps over a thousandth of a vapour layer without stated gaps, and the
 * framed part without a vapour layer in front of it.
 *
 * @param calculation - the build-up's figures, stated gaps counted
 * @param site - outdoor air and rooms
 * @param vapourLayer - indices of the vapour layer's layers; empty without
 * @returns one entry for each layer, then the framed part; the entry of a layer without stated gaps is an example
 * Source: METHOD.md, Gaps in the vapour layer.
 */
export function gaps(calculation: BuildUpCalculation, site: Site, vapourLayer: readonly number[]): GapsData[] {
  const layers = calculation.buildUp.layers.slice(0, calculation.heat.counted.length);
  const stated = layers.flatMap((layer, index) =>
    layer.type !== "air" && layer.gaps !== null ? [statedGaps(calculation, site, layer, index)] : [],
  );
  const tightest = tightestOf(calculation, vapourLayer);
  if (tightest === null || !canHaveGaps(tightest.layer)) return stated;
  const { layer, index } = tightest;
  const usual = layer.gaps === null ? [usualGaps(calculation, site, layer, index)] : [];
  return [...stated, ...usual, ...framedPart(calculation, layer, index)];
}

/** The tightest of the vapour layer's layers: gaps through adjacent layers seldom line up. */
function tightestOf(
  calculation: BuildUpCalculation,
  vapourLayer: readonly number[],
): { layer: SolidLayer; index: number } | null {
  let tightest: { layer: SolidLayer; index: number } | null = null;
  for (const index of vapourLayer) {
    const layer = calculation.buildUp.layers[index]!;
    if (layer.type === "air") continue;
    if (tightest === null || layerSd(layer, "dry") > layerSd(tightest.layer, "dry")) tightest = { layer, index };
  }
  return tightest;
}

/** Sheets and faced boards have laps and joints; plain board or solid timber is as tight at its joints as elsewhere. */
export function canHaveGaps(layer: SolidLayer): boolean {
  return layer.type === "sheet" || layer.facingInner > 0 || layer.facingOuter > 0;
}

function statedGaps(calculation: BuildUpCalculation, site: Site, layer: SolidLayer, index: number): GapsData {
  const { share, laps, holes = null } = layer.gaps!;
  const sdWhole = wholeSd(layer, "dry");
  const sdEffective = layerSd(layer, "dry");
  const whole = yearWith(calculation.buildUp, site, new Map([[index, sdWhole]]));
  const { verdict } = calculation.governing.year;
  const peak = peakOfYear(calculation.governing.year);
  const figures = { share, laps, holes, sdWhole, sdEffective, verdict, peak, whole, framedPart: null };
  return { kind: "stated", layer: index, ...figures };
}

function usualGaps(calculation: BuildUpCalculation, site: Site, layer: SolidLayer, index: number): GapsData {
  const share = USUAL_SHARE_OF_GAPS;
  const facing = warmFacing(calculation, layer);
  const sdWhole = facing === null ? layerSd(layer, "dry") : layer[facing];
  const sdEffective = sdWithGaps(sdWhole, share);
  const { verdict, peak } =
    facing === null
      ? yearWith(calculation.buildUp, site, new Map([[index, sdEffective]]))
      : yearWith(withLayer(calculation.buildUp, index, { ...layer, [facing]: sdEffective }), site);
  const { year } = calculation.governing;
  const whole = { verdict: year.verdict, peak: peakOfYear(year) };
  const figures = { share, laps: null, holes: null, sdWhole, sdEffective, verdict, peak, whole, framedPart: null };
  return { kind: "usual", layer: index, ...figures };
}

/** The facing on the warm side of a faced board, its vapour layer; null for a layer without a facing there. */
function warmFacing(calculation: BuildUpCalculation, layer: SolidLayer): "facingInner" | "facingOuter" | null {
  const { year } = vapourDrive(calculation.inside, calculation.farSide.months);
  const facing = year === "outside" ? "facingOuter" : "facingInner";
  return layer[facing] > 0 ? facing : null;
}

function withLayer(buildUp: BuildUp, index: number, layer: SolidLayer): BuildUp {
  return { ...buildUp, layers: buildUp.layers.map((other, at) => (at === index ? layer : other)) };
}

function yearWith(buildUp: BuildUp, site: Site, sdOverrides?: SdOverrides): GapsYear {
  const { year } = figuresOfBuildUp(buildUp, site, { sdOverrides, runOn: false }).governing;
  return { verdict: year.verdict, peak: peakOfYear(year) };
}
