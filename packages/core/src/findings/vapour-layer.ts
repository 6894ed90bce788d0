import { saturationPressure } from "../air/saturation-pressure.ts";
import { MOULD_HUMIDITY } from "../constants.ts";
import type { Side, TightLayerFigures } from "../result/types.ts";
import { betweenFraming } from "../vapour-layer/assess-vapour-layer.ts";
import type { TightLayer } from "../vapour-layer/candidates.ts";
import { CAUTION, found, REFUSED } from "./found.ts";
import { holdsRain } from "./rain-on-wall.ts";
import type { Evidence, RuledFinding } from "./types.ts";
import { isTooMuch, worstOf } from "./water-level.ts";

/** Humidity at the warm face from which a layer on the cold side matters [–] (this project's rule). */
export const DAMP_FACE: number = MOULD_HUMIDITY;
/** Months of that humidity from which it matters (this project's rule). */
export const DAMP_MONTHS = 2;

/**
 * Position of the vapour layer: on the cold side in damp air, or missing on the warm side while water condenses.
 * Source: common practice.
 */
export function vapourLayerFindings(evidence: Evidence): RuledFinding[] {
  const { tightLayer } = evidence;
  const { warmSide, onWarmSide } = evidence.vapourLayer;
  if (warmSide === "neither") return [];
  const findings: RuledFinding[] = [];
  const coldSide = layerOnColdSide(evidence);
  if (coldSide !== null && !isRequired(evidence, coldSide)) {
    const damp = dampMonths(evidence, coldSide);
    if (damp >= DAMP_MONTHS && isFinishOrSheet(evidence, coldSide))
      findings.push(coldSideLayer(coldSide, damp, warmSide));
  }
  const judged = worstOf(evidence.water);
  const tooMuch = isTooMuch(judged);
  const tooOpen = tightLayer !== null && tooMuch && isTooOpen(evidence, tightLayer) ? tightLayer : null;
  if (tooOpen !== null || (onWarmSide !== true && (tooMuch || judged.level === "some")))
    findings.push(
      found("no-vapour-layer-warm-side", CAUTION, {
        warmSide,
        tooOpen: tooOpen === null ? null : namesOf(tooOpen),
        holdsRain: holdsRain(evidence.buildUp),
      }),
    );
  return findings;
}

function namesOf({ name, layers, sd }: TightLayer): TightLayerFigures {
  return { name, layers, sd };
}

/**
 * The tight layer on the cold side: the vapour layer itself or, where vapour comes from the outer side, a skin towards
 * the room that is tighter than the layer on the warm side. A tight skin outside has its own rule.
 */
function layerOnColdSide({ vapourLayer, tightLayer, tightLayers }: Evidence): TightLayer | null {
  if (vapourLayer.onWarmSide === false) return tightLayer;
  const { outerSkin, warmSide } = vapourLayer;
  if (outerSkin === null || warmSide === "inside") return null;
  return tightLayers.find(({ layers }) => layers === outerSkin.layers) ?? null;
}

/** Whether a layer on the warm side is a board not meant as vapour layer, more open than any membrane sold as one. */
function isTooOpen(evidence: Evidence, layer: TightLayer): boolean {
  if (evidence.vapourLayer.onWarmSide !== true || layer.sd >= LEAST_VAPOUR_LAYER_SD) return false;
  return layer.parts.every(({ layer: index, part }) => {
    const found = evidence.buildUp.layers[index];
    return part === "whole" && found?.type === "material" && found.purpose !== "vapour layer";
  });
}

/** The most open membrane sold as a vapour control layer [m] (common practice). */
export const LEAST_VAPOUR_LAYER_SD = 2;

function coldSideLayer(layer: TightLayer, damp: number, warmSide: Side): RuledFinding {
  const figures = { ...namesOf(layer), warmSide, dampMonths: damp };
  return found("vapour-layer-cold-side", warmSide === "inside" ? CAUTION : REFUSED, figures);
}

/** Months with 80 % relative humidity or more at the layer's warm face, between framing. */
function dampMonths(evidence: Evidence, layer: TightLayer): number {
  const section = betweenFraming(evidence.calculation);
  const fromRoom = evidence.vapourLayer.warmSide === "inside";
  const { line, climate, year } = section;
  const face = fromRoom ? layer.resistanceBefore : layer.resistanceAfter;
  const nodes = Array.from({ length: line.count }, (_, node) => node).filter(
    (node) => line.resistanceFrom[node]! - 1e-9 <= face && face <= line.resistanceTo[node]! + 1e-9,
  );
  const node = fromRoom ? nodes[0] : nodes[nodes.length - 1];
  if (node === undefined) return 0;
  return year.pressure.filter((pressure, month) => {
    return pressure[node]! / saturationPressure(climate.temperature[month]![node]!) >= DAMP_FACE;
  }).length;
}

/** Whether the layer is a sheet, coating or facing, which can be left out, not board or masonry of the structure. */
function isFinishOrSheet(evidence: Evidence, layer: TightLayer): boolean {
  return layer.parts.some(({ layer: index, part }) => {
    const found = evidence.buildUp.layers[index];
    return part !== "whole" || found?.type === "sheet";
  });
}

/** Whether a tight layer is required for another purpose: then no finding objects to it and no remedy removes it. */
export function isRequired(evidence: Pick<Evidence, "buildUp">, layer: { layers: readonly number[] }): boolean {
  return layer.layers.some((index) => {
    const found = evidence.buildUp.layers[index];
    return found !== undefined && found.type !== "air" && found.purpose !== null && found.purpose !== "vapour layer";
  });
}
